package cornerbook.app.desk.year;

import cornerbook.app.book.order.OrderRow;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.year.CarNotSeen;
import cornerbook.app.book.year.DeclinedLine;
import cornerbook.app.book.year.MonthCount;
import cornerbook.app.picture.year.Lengths;
import cornerbook.app.request.Told;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The twelve months up to today, and what is known of the twelve ahead.
 *
 * @param visits by month, up to today
 * @param agreed days agreed with customers, from today on
 * @param setsAtRisk expected number of cars whose stored tyres do not hold, by the month in which they are due
 * @param tyres what to order of them
 * @param notSeen cars that were not here for longer than a change-over lies from the one before
 * @param calls what calls came to, by month
 * @param declined work of estimates that customers declined, the latest first
 */
public record YearPage(
        LocalDate today,
        List<MonthCount> visits,
        List<MonthCount> agreed,
        List<MonthCount> setsAtRisk,
        List<OrderRow> tyres,
        List<NotSeen> notSeen,
        Map<CallAnswer.Kind, List<MonthCount>> calls,
        List<Declined> declined) {
    static final int MONTHS = 12;
    private static final int MOST_SIZES = 12;
    private static final int MOST_NOT_SEEN = 100;
    private static final int MOST_DECLINED = 50;
    private static final int MONTHS_TOGETHER = 6;
    private static final int LONGEST_GONE = 24;

    public YearPage {
        visits = List.copyOf(visits);
        agreed = List.copyOf(agreed);
        setsAtRisk = List.copyOf(setsAtRisk);
        tyres = List.copyOf(tyres);
        notSeen = List.copyOf(notSeen);
        calls = Map.copyOf(calls);
        declined = List.copyOf(declined);
    }

    /** A car, and whether its customer may be called. */
    public record NotSeen(CarNotSeen car, boolean mayCall) {
        /** Null where none is known, or nobody may be called. */
        @Nullable
        String phone() {
            return mayCall ? car.phone() : null;
        }
    }

    /** Work that was declined on a day at the shop. */
    public record Declined(LocalDate day, DeclinedLine line) {}

    /** Work on which safety depends, of what was declined. */
    private List<Declined> unsafe() {
        return declined.stream().filter(each -> each.line().safety()).toList();
    }

    public boolean hasUnsafe() {
        return !unsafe().isEmpty();
    }

    public String declinedPicture() {
        return byMonth(labels().of("declined"), declined);
    }

    public String unsafePicture() {
        return byMonth(labels().of("declined-safety"), unsafe());
    }

    private static String byMonth(String title, List<Declined> some) {
        var counts = some.stream()
                .collect(
                        Collectors.groupingBy(each -> YearMonth.from(each.day()), TreeMap::new, Collectors.counting()));
        return Lengths.svg(
                title,
                counts.entrySet().stream()
                        .map(each -> new Lengths.Line(
                                name(each.getKey()), each.getValue(), number(each.getValue(), 0), false))
                        .toList());
    }

    /** The first of them; the file has all. */
    public List<Declined> declinedShown() {
        return declined.stream().limit(MOST_DECLINED).toList();
    }

    /** A table with a line for each month, as the file for a spreadsheet has it too. */
    record MonthLine(YearMonth month, double visits, double agreed, double setsAtRisk, List<Double> calls) {}

    /** The months from a year ago to a year ahead. */
    List<MonthLine> months() {
        return Stream.iterate(YearMonth.from(today).minusMonths(MONTHS), month -> month.plusMonths(1))
                .limit(2 * MONTHS + 1)
                .map(month -> new MonthLine(
                        month,
                        of(visits, month),
                        of(agreed, month),
                        of(setsAtRisk, month),
                        Stream.of(CallAnswer.Kind.values())
                                .map(kind -> of(Objects.requireNonNull(calls.get(kind)), month))
                                .toList()))
                .toList();
    }

    private static double of(List<MonthCount> counts, YearMonth month) {
        return counts.stream()
                .filter(count -> count.month().equals(month))
                .mapToDouble(MonthCount::count)
                .sum();
    }

    /** From the first month in which anything was to the last in which anything is agreed. */
    public String loadPicture() {
        var full = months().stream()
                .filter(line -> line.visits() + line.agreed() > 0)
                .map(MonthLine::month)
                .toList();
        var now = YearMonth.from(today);
        var first = full.isEmpty() || full.getFirst().isAfter(now) ? now : full.getFirst();
        var last = full.isEmpty() || full.getLast().isBefore(now) ? now : full.getLast();
        var lines = months().stream()
                .filter(line -> !line.month().isBefore(first) && !line.month().isAfter(last))
                .map(line -> line(line.month(), line.visits() + line.agreed(), 0))
                .toList();
        return Lengths.svg(labels().of("load"), lines);
    }

    public boolean hasRisk() {
        return !setsAtRisk.isEmpty();
    }

    public String riskPicture() {
        return Lengths.svg(
                labels().of("sets-at-risk"),
                setsAtRisk.stream()
                        .map(count -> line(count.month(), count.count(), 1))
                        .toList());
    }

    public String sizesPicture() {
        return Lengths.svg(
                labels().of("tyres-coming"),
                tyres.stream()
                        .sorted(Comparator.comparingDouble(
                                        (OrderRow row) -> row.demand().mean())
                                .reversed())
                        .limit(MOST_SIZES)
                        .map(row -> new Lengths.Line(
                                Told.say(row.article().said()),
                                row.demand().mean(),
                                number(row.demand().mean(), 1),
                                true))
                        .toList());
    }

    /** Cars by how long ago they were here, half years together. */
    public String notSeenPicture() {
        var byHalfYears = notSeen.stream()
                .collect(Collectors.groupingBy(
                        gone -> Math.min(LONGEST_GONE, monthsGone(gone) / MONTHS_TOGETHER * MONTHS_TOGETHER),
                        Collectors.counting()));
        return Lengths.svg(
                labels().of("not-seen"),
                byHalfYears.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(entry -> new Lengths.Line(
                                entry.getKey() == LONGEST_GONE
                                        ? labels().of("months-or-more", "from", LONGEST_GONE)
                                        : labels().of(
                                                        "months-gone",
                                                        "from",
                                                        entry.getKey(),
                                                        "until",
                                                        entry.getKey() + MONTHS_TOGETHER),
                                entry.getValue(),
                                number(entry.getValue(), 0),
                                false))
                        .toList());
    }

    private int monthsGone(NotSeen gone) {
        return (int) Period.between(gone.car().last(), today).toTotalMonths();
    }

    /** The first of them; the file has all. */
    public List<NotSeen> notSeenShown() {
        return notSeen.stream().limit(MOST_NOT_SEEN).toList();
    }

    /** How calls went in the twelve months, all together. */
    public String callsPicture() {
        return Lengths.svg(
                labels().of("calls"),
                Stream.of(CallAnswer.Kind.values())
                        .map(kind -> {
                            double sum = Objects.requireNonNull(calls.get(kind)).stream()
                                    .mapToDouble(MonthCount::count)
                                    .sum();
                            return new Lengths.Line(name(kind), sum, number(sum, 0), false);
                        })
                        .toList());
    }

    public boolean hasCalls() {
        return calls.values().stream().anyMatch(counts -> !counts.isEmpty());
    }

    private Lengths.Line line(YearMonth month, double value, int decimals) {
        return new Lengths.Line(name(month), value, number(value, decimals), month.isAfter(YearMonth.from(today)));
    }

    /** What a call came to, in a word. */
    static String name(CallAnswer.Kind kind) {
        return Told.labels("app/desk")
                .of(
                        switch (kind) {
                            case CALLED -> "called";
                            case NOT_REACHED -> "not-reached";
                            case WRITTEN -> "written";
                            case WILL_COME -> "will-come";
                            case DECLINED -> "declined";
                        });
    }

    private static String name(YearMonth month) {
        return month.format(
                DateTimeFormatter.ofPattern("LLL yyyy", Told.reader().language().locale()));
    }

    private static String number(double value, int decimals) {
        return Told.say(new Amount(value, "", decimals));
    }

    private static Labels labels() {
        return Told.labels("app/desk/year");
    }
}
