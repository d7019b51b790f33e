package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.brake.interval.BestInterval;
import cornerbook.core.brake.interval.IntervalSaid;
import cornerbook.core.brake.interval.ServicePrices;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.finding.Limit;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;

/** After how long the guides of a car's pads are cleaned for the least cost. */
final class GuidesQuestion {
    private static final int USUAL_PADS = 8;
    private static final double USUAL_KM = 15_000;
    private static final double PERCENT = 100;
    private static final double MOST_KM = 300_000;
    private static final double RISK = LimitsFile.load().stream()
            .filter(limit -> limit.kind() == Limit.Kind.SEIZING_RISK)
            .findFirst()
            .orElseThrow()
            .value();

    static final Question QUESTION = new Question(
            "guides",
            Title.GUIDES,
            Description.GUIDES,
            List.of(),
            List.of(new Group(
                    "interval",
                    Title.GUIDES_INTERVAL,
                    Note.GUIDES_INTERVAL,
                    List.of(
                            Ask.number(
                                    "service-price",
                                    Label.GUIDES_SERVICE_PRICE,
                                    "",
                                    IntervalSaid.Input.SERVICE_PRICE,
                                    Help.GUIDES_SERVICE_PRICE),
                            Ask.number(
                                    "seized-price",
                                    Label.GUIDES_SEIZED_PRICE,
                                    "",
                                    IntervalSaid.Input.SEIZED_PRICE,
                                    Help.GUIDES_SEIZED_PRICE),
                            Ask.number(
                                    "pads",
                                    Label.GUIDES_PADS,
                                    "",
                                    IntervalSaid.Input.PADS,
                                    new Otherwise(Help.GUIDES_PADS, new Amount(USUAL_PADS, "", 0))),
                            Ask.quantity(
                                    "distance",
                                    Label.GUIDES_DISTANCE,
                                    "km",
                                    IntervalSaid.Input.DISTANCE,
                                    new Otherwise(Help.GUIDES_DISTANCE, Amount.of(USUAL_KM, "km"))),
                            Ask.number(
                                    "salt-share",
                                    Label.GUIDES_SALT_SHARE,
                                    "%",
                                    IntervalSaid.Input.SALT_SHARE,
                                    new Otherwise(
                                            Help.GUIDES_SALT_SHARE,
                                            percent(usual(USUAL_KM).saltShare()))),
                            Ask.number(
                                    "friction-share",
                                    Label.GUIDES_FRICTION_SHARE,
                                    "%",
                                    IntervalSaid.Input.FRICTION_SHARE,
                                    new Otherwise(
                                            Help.GUIDES_FRICTION_SHARE,
                                            percent(usual(USUAL_KM).frictionBrakeShare()))),
                            new Ask("garaged", Label.GUIDES_GARAGED, new Ask.Tick(), Help.GUIDES_GARAGED, null),
                            new Ask("cleaned", Label.GUIDES_CLEANED, new Ask.Day(), Help.GUIDES_CLEANED, null)),
                    List.of("service-price", "seized-price"),
                    GuidesQuestion::interval)),
            NothingAsked.GUIDES,
            "cornerbook guides --service-price 140 --seized-price 420 --salt-share 40 --distance 15000 --cleaned 2026-10-20");

    private GuidesQuestion() {}

    private static SeizingExposure usual(double km) {
        return SeizingExposure.usual(km, true);
    }

    private static Amount percent(double share) {
        return Amount.exact(Math.rint(PERCENT * share), "%");
    }

    private static List<Part> interval(Given given) {
        if (!given.any("service-price", "seized-price")) {
            return List.of();
        }
        double km = Range.check(IntervalSaid.Input.DISTANCE, given.quantity("distance", USUAL_KM), 0, MOST_KM, "km");
        double saltPercent = Range.check(
                IntervalSaid.Input.SALT_SHARE,
                given.number("salt-share", PERCENT * usual(km).saltShare()),
                0,
                PERCENT,
                "%");
        double frictionPercent = Range.check(
                IntervalSaid.Input.FRICTION_SHARE,
                given.number("friction-share", PERCENT * usual(km).frictionBrakeShare()),
                0,
                PERCENT,
                "%");
        var result = BestInterval.of(
                SeizingHazard.learn(List.of()),
                new SeizingExposure(saltPercent / PERCENT, given.ticked("garaged"), km, frictionPercent / PERCENT),
                given.any("pads") ? given.whole("pads") : USUAL_PADS,
                new ServicePrices(given.number("service-price"), given.number("seized-price")),
                RISK,
                given.any("cleaned") ? given.day("cleaned") : null);
        return List.of(new Part("interval", lines(result), result));
    }

    private static List<Said> lines(BestInterval result) {
        var lines = new ArrayList<Said>();
        var least = result.least();
        var months = least.months();
        if (months == null) {
            lines.add(new AnswerSaid.NoBestInterval(whole(BestInterval.LONGEST_MONTHS)));
        } else {
            lines.add(new AnswerSaid.CleanedEvery(whole(months), money(least.costPerYear()), least.due()));
            lines.add(new AnswerSaid.NearlyAsCheap(
                    new Between(Math.ceil(least.nearFrom()), Math.floor(least.nearTo()), "", 0)));
        }
        lines.add(new AnswerSaid.CleanedYearly(money(result.yearlyCostPerYear())));
        var risk = result.risk();
        lines.add(new AnswerSaid.SeizesWithin(
                months == null ? null : new Chance(least.chance()),
                whole(risk.months()),
                percent(risk.chance()),
                risk.due()));
        return lines;
    }

    private static Amount whole(double months) {
        return new Amount(months, "", 0);
    }

    private static Said money(double value) {
        return new Amount(value, "", 2);
    }
}
