package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.LineWords;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceRow;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.price.TyreWorth;
import cornerbook.core.release.ChargedWork;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Price;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tyre.TyreSize;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Tyres that an advice asks for: a choice of those that the shop has of the size, four or, where not all wheels are driven, two, with what
 * each means in years and for each distance.
 */
final class TyreLines {
    private static final Set<Subject.Part> TYRES = EnumSet.of(
            Subject.Part.WHEEL_SET,
            Subject.Part.TREAD_DIFFERENCE,
            Subject.Part.TYRE_AGE,
            Subject.Part.TYRE_DAMAGE,
            Subject.Part.TYRE_LAW);

    private static final Set<Todo.Action> BOUGHT =
            EnumSet.of(Todo.Action.REPLACE, Todo.Action.REPLACE_PAIR, Todo.Action.ORDER, Todo.Action.FIT_LAWFUL_TYRES);

    private static final int SET = 4;
    private static final int PAIR = 2;
    private static final double DAYS_A_YEAR = 365.25;
    /** A set of one season runs half of the year. Common practice, no source. */
    private static final double SHARE_OF_A_SEASON = 0.5;

    private final Assessment assessment;
    private final PriceList prices;
    private final Reader reader;

    TyreLines(Assessment assessment, PriceList prices, Reader reader) {
        this.assessment = assessment;
        this.prices = prices;
        this.reader = reader;
    }

    /** Whether tyres are bought for it. */
    static boolean asksForTyres(Advice advice) {
        return TYRES.contains(advice.first().subject().part())
                && advice.todo().map(Todo::action).filter(BOUGHT::contains).isPresent();
    }

    /** A choice of tyres; empty where the set has two sizes, or the shop has no price of its size. */
    List<EstimateLine> of(Advice advice, String words, boolean safety) {
        var set = setOf(advice.first()).orElse(null);
        if (set == null) {
            return List.of();
        }
        var sizes = set.wheels().stream().map(TyreLines::size).distinct().toList();
        var lines = new ArrayList<EstimateLine>();
        if (sizes.size() == 1) {
            for (var offered : prices.tyres(set.season(), sizes.getFirst())) {
                for (int tyres : counts()) {
                    lines.add(line(advice, words, safety, set, offered, tyres));
                }
            }
        }
        return lines;
    }

    private List<Integer> counts() {
        var drive = assessment.history().vehicle().drive();
        return drive == null || drive == DriveLayout.ALL ? List.of(SET) : List.of(SET, PAIR);
    }

    private EstimateLine line(Advice advice, String words, boolean safety, WheelSet set, PriceRow offered, int tyres) {
        var w = reader.labels("app/desk/estimate");
        var bought = w.of(
                "tyres-of-size",
                "n",
                tyres,
                "size",
                offered.key().name(),
                "offer",
                offered.key().offered());
        var each = Objects.requireNonNull(offered.value().amount());
        var charge = Charge.ofTyres(each, tyres, prices, reader);
        return new EstimateLine(
                advice.key() + "/" + offered.key().offer() + "/" + tyres,
                advice.key(),
                advice.key(),
                new LineWords(w.of("tyres-of", "tyres", bought, "words", words), bought),
                charge.detail(),
                meaning(set, offered, charge.amount()),
                safety,
                charge.amount(),
                ChargedWork.ofAdvice(advice.key()));
    }

    /** By the wear that was found on this car's set; empty where nobody knows it, or the tread of a new tyre. */
    private String meaning(WheelSet set, PriceRow offered, Money together) {
        var newMm = offered.value().newTreadMm();
        var forecast = assessment.forecasts().stream()
                .filter(each -> each.set().id().equals(set.id()))
                .findFirst()
                .orElse(null);
        if (newMm == null || forecast == null || newMm <= forecast.limitMm()) {
            return "";
        }
        double wear = forecast.tyres().stream()
                .flatMap(tyre -> tyre.grooves().stream())
                .mapToDouble(SetForecast.GrooveForecast::rateMmPer1000Km)
                .max()
                .orElse(0);
        double kmPerYear =
                forecast.kmPerDay() * DAYS_A_YEAR * (set.season() == SeasonKind.ALL_SEASON ? 1 : SHARE_OF_A_SEASON);
        if (!(wear > 0 && kmPerYear > 0)) {
            return "";
        }
        var worth = TyreWorth.of(together, newMm, forecast.limitMm(), wear, kmPerYear);
        return reader.labels("app/desk/estimate")
                .of(
                        "tyres-mean",
                        "life",
                        Amount.significant(worth.lifeKm(), "km", 2),
                        "years",
                        new Amount(worth.years(), "years", 1),
                        "cost",
                        new Price(worth.per100Km()));
    }

    private Optional<WheelSet> setOf(Finding finding) {
        var tag = finding.subject().wheelTag();
        return assessment.history().sets().stream()
                .filter(set -> tag == null
                        ? set.id().equals(finding.subject().setId())
                        : set.wheels().stream().map(Wheel::tag).anyMatch(tag::equals))
                .findFirst();
    }

    /** As the price list has it: without what stands behind the size. */
    private static String size(Wheel wheel) {
        var written = wheel.tyre().size();
        return TyreSize.find(written)
                .map(read -> Stream.of(read.designation(), read.commercial() ? "C" : "")
                        .reduce("", String::concat))
                .orElse(written);
    }
}
