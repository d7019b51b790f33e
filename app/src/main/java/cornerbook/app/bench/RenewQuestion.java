package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.car.Tyre;
import cornerbook.core.corner.Axle;
import cornerbook.core.cost.TyreUse;
import cornerbook.core.cost.renew.PairOnAxle;
import cornerbook.core.cost.renew.RenewCosts;
import cornerbook.core.cost.renew.RenewPrices;
import cornerbook.core.cost.renew.RenewRules;
import cornerbook.core.cost.renew.RenewSaid;
import cornerbook.core.cost.renew.RenewUse;
import cornerbook.core.cost.renew.WayCost;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.AllWheelLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Two tyres or four, now or next season, by what each way costs. */
final class RenewQuestion {
    private static final double KM = 1000;

    static final Question QUESTION = new Question(
            "renew",
            Title.RENEW,
            Description.RENEW,
            List.of(),
            List.of(new Group(
                    "ways",
                    Title.RENEW_WAYS,
                    Note.RENEW_WAYS,
                    List.of(
                            Ask.quantity(
                                    "front-depth",
                                    Label.RENEW_FRONT_DEPTH,
                                    "mm",
                                    RenewSaid.Input.FRONT_DEPTH,
                                    Help.RENEW_DEPTH),
                            Ask.quantity(
                                    "rear-depth",
                                    Label.RENEW_REAR_DEPTH,
                                    "mm",
                                    RenewSaid.Input.REAR_DEPTH,
                                    Help.RENEW_DEPTH),
                            Ask.number(
                                    "front-wear",
                                    Label.RENEW_FRONT_WEAR,
                                    "mm",
                                    RenewSaid.Input.FRONT_WEAR,
                                    Help.RENEW_WEAR),
                            Ask.number(
                                    "rear-wear",
                                    Label.RENEW_REAR_WEAR,
                                    "mm",
                                    RenewSaid.Input.REAR_WEAR,
                                    Help.RENEW_WEAR),
                            Ask.quantity(
                                    "season-distance",
                                    Label.RENEW_SEASON_DISTANCE,
                                    "km",
                                    RenewSaid.Input.SEASON_DISTANCE,
                                    Help.RENEW_SEASON_DISTANCE),
                            Ask.number("price", Label.RENEW_PRICE, "", RenewSaid.Input.PRICE, Help.RENEW_PRICE),
                            Ask.number(
                                    "price-of-four",
                                    Label.RENEW_PRICE_OF_FOUR,
                                    "",
                                    RenewSaid.Input.PRICE_OF_FOUR,
                                    Help.RENEW_PRICE_OF_FOUR),
                            Ask.number("visit", Label.RENEW_VISIT, "", RenewSaid.Input.VISIT, Help.RENEW_VISIT),
                            Ask.quantity(
                                    "end-tread",
                                    Label.COST_END_TREAD,
                                    "mm",
                                    RenewSaid.Input.END_TREAD,
                                    new Otherwise(Help.COST_END_TREAD, Amount.of(TyreUse.USUAL_END_MM, "mm"))),
                            Ask.quantity(
                                    "new-tread",
                                    Label.COST_NEW_TREAD,
                                    "mm",
                                    RenewSaid.Input.NEW_TREAD,
                                    new Otherwise(Help.COST_NEW_TREAD, Amount.of(Tyre.USUAL_NEW_DEPTH_MM, "mm"))),
                            Ask.number(
                                    "spread",
                                    Label.RENEW_SPREAD,
                                    "%",
                                    RenewSaid.Input.SPREAD,
                                    new Otherwise(Help.RENEW_SPREAD, Amount.exact(RenewUse.USUAL_SPREAD_PERCENT, "%"))),
                            Ask.quantity(
                                    "tread-limit",
                                    Label.RENEW_TREAD_LIMIT,
                                    "mm",
                                    RenewSaid.Input.LIMIT,
                                    Help.RENEW_TREAD_LIMIT),
                            Ask.quantity(
                                    "circumference-limit",
                                    Label.RENEW_CIRCUMFERENCE_LIMIT,
                                    "mm",
                                    null,
                                    Help.RENEW_CIRCUMFERENCE_LIMIT),
                            new Ask(
                                    "deeper-at-rear",
                                    Label.RENEW_DEEPER_AT_REAR,
                                    new Ask.Tick(),
                                    Help.RENEW_DEEPER_AT_REAR,
                                    null),
                            new Ask("staggered", Label.RENEW_STAGGERED, new Ask.Tick(), Help.RENEW_STAGGERED, null)),
                    List.of(
                            "front-depth",
                            "rear-depth",
                            "front-wear",
                            "rear-wear",
                            "season-distance",
                            "price",
                            "visit"),
                    RenewQuestion::ways)),
            NothingAsked.RENEW,
            "cornerbook renew --front-depth 4.6 --rear-depth 6.4 --front-wear 0.20 --rear-wear 0.14 --season-distance"
                    + " 9000 --price 168 --visit 60 --end-tread 4 --tread-limit 3");

    private RenewQuestion() {}

    private static List<Part> ways(Given given) {
        if (!given.any("front-depth", "rear-depth", "front-wear", "rear-wear", "season-distance", "price", "visit")) {
            return List.of();
        }
        double price = given.number("price");
        var costs = RenewCosts.of(
                pair(given, Axle.FRONT),
                pair(given, Axle.REAR),
                new RenewUse(
                        given.quantity("season-distance"),
                        given.quantity("new-tread", Tyre.USUAL_NEW_DEPTH_MM),
                        given.quantity("end-tread", TyreUse.USUAL_END_MM),
                        given.number("spread", RenewUse.USUAL_SPREAD_PERCENT)),
                new RenewPrices(price, given.number("price-of-four", price), given.number("visit")),
                new RenewRules(limitMm(given), given.ticked("deeper-at-rear"), !given.ticked("staggered")));
        return List.of(new Part("ways", lines(given, costs), costs));
    }

    private static PairOnAxle pair(Given given, Axle axle) {
        var word = axle.name().toLowerCase(Locale.ROOT);
        return new PairOnAxle(axle, given.quantity(word + "-depth"), given.number(word + "-wear"));
    }

    private static @Nullable Double limitMm(Given given) {
        var treadMm = given.find("tread-limit");
        var circumferenceMm = given.find("circumference-limit");
        if (treadMm != null && circumferenceMm != null) {
            throw AskException.unread("tread-limit", RefusalSaid.Plainly.TWO_LIMITS);
        }
        return circumferenceMm == null
                ? treadMm
                : given.at(
                        "circumference-limit",
                        () -> Double.valueOf(
                                new AllWheelLimit(AllWheelLimit.Kind.ROLLING_CIRCUMFERENCE, circumferenceMm)
                                        .depthMm()));
    }

    private static List<Said> lines(Given given, RenewCosts costs) {
        var lines = new ArrayList<Said>();
        var distance = given.told(costs.distanceKm(), "km");
        var open = costs.ways().stream().filter(WayCost::isOpen).toList();
        if (open.size() > 1) {
            lines.add(new AnswerSaid.CheapestWay(
                    open.get(0).way(), open.get(1).way(), money(costs.moreThanCheapest(open.get(1))), distance));
        }
        for (var way : costs.ways()) {
            var closed = way.closed();
            lines.add(
                    closed == null
                            ? new AnswerSaid.WayCosts(
                                    way.way(),
                                    way.firstAxle(),
                                    way.seasons(),
                                    money(way.per1000Km()),
                                    given.told(KM, "km"),
                                    money(way.spent().thrownAway()),
                                    new Chance(way.chanceOfVisit()))
                            : new AnswerSaid.WayClosed(way.way(), closed));
        }
        return lines;
    }

    private static Said money(double value) {
        return new Amount(value, "", 2);
    }
}
