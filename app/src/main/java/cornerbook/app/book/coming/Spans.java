package cornerbook.app.book.coming;

import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.book.rack.StoredSets;
import cornerbook.app.law.RepairLaw;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.stream.Stream;

/**
 * Rows of first and last days, for the database to count months by: each kind of database has its own words for them, and its own days
 * for the ends of short months. Only what ends within the days asked for has a row, and nothing that begins after today.
 */
final class Spans {
    /** By so much the first days of what ends on one day may lie apart, as months are not of one length. */
    private static final int DAYS_APART = 4;

    private Spans() {}

    /** For how long a set waits for its season: starts, ends. */
    static String ofSeason(Days days) {
        return rows(span("", Period.ofMonths(StoredSets.MONTHS_OF_A_SEASON), days.from(), days), "'', ''");
    }

    /** How long work is guaranteed: place, starts, ends. What has ended is nothing to come for. */
    static String ofGuarantees(Days days) {
        return rows(
                RepairLaw.warranties().entrySet().stream()
                        .flatMap(each -> span(
                                "'" + each.getKey() + "', ", each.getValue().lasts(), days.today(), days)),
                "'', '', ''");
    }

    private static Stream<String> span(String before, Period lasts, LocalDate from, Days days) {
        var first = from.minus(lasts).minusDays(DAYS_APART);
        return first.isAfter(days.today())
                ? Stream.empty()
                : first.datesUntil(days.today().plusDays(1))
                        .filter(start -> !start.plus(lasts).isBefore(from)
                                && !start.plus(lasts).isAfter(days.until()))
                        .map(start -> "(%s'%s', '%s')".formatted(before, start, start.plus(lasts)));
    }

    private static String rows(Stream<String> rows, String none) {
        List<String> all = rows.toList();
        return all.isEmpty() ? "select " + none + " where 1 = 0" : "values " + String.join(", ", all);
    }
}
