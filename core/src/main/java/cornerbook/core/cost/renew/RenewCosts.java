package cornerbook.core.cost.renew;

import cornerbook.core.corner.Axle;
import cornerbook.core.cost.renew.RenewSaid.Caution;
import cornerbook.core.cost.renew.RenewSaid.Computed;
import cornerbook.core.cost.renew.RenewSaid.Method;
import cornerbook.core.cost.renew.RenewSaid.Origin;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * What it costs to go on with tyres that are not all worn alike, way by way, over the same distance H: to the end of the season in
 * which the slowest open way has used up or thrown away the last tyre of today.
 *
 * <pre>
 *   worth of a pair: 2 p max(0, d − d₁)/(d₀ − d₁)        d its depth, d₀ new, d₁ replaced, p paid for each   (1)
 *   P(not to the end of a season) = Φ(−ln((d − d₁)/(w s))/σ)    w worn for each km, s a season, e^σ its spread    (2)
 *   cost = (worth now + bought − worth at H + v Σ P) / H    v a visit that would not be made otherwise        (3)
 * </pre>
 *
 * (3) is the reward of a renewal over its length (Ross, Introduction to Probability Models, renewal reward), with what is thrown away
 * in it, as it is bought and not there at H. A pair is replaced at a visit from where (2) is above 1/2 for the season to come, or v
 * times (2) is above what its tread is worth.
 *
 * @param ways open ones first, the cheapest first
 * @param distanceKm H, a season at least
 */
public record RenewCosts(List<WayCost> ways, double distanceKm, Explanation explanation) implements Explained {
    public RenewCosts {
        ways = List.copyOf(ways);
    }

    /**
     * All ways.
     *
     * @throws IllegalArgumentException with one sentence when a new pair would not last a season
     */
    public static RenewCosts of(PairOnAxle front, PairOnAxle rear, RenewUse use, RenewPrices prices, RenewRules rules) {
        use.checkNewLasts(List.of(front, rear));
        var whole = Arrays.stream(RenewWay.values())
                .map(way -> driven(new RenewCourse(way, front, rear, use, prices, rules)))
                .toList();
        int horizon = whole.stream()
                .filter(course -> course.closed() == null)
                .mapToInt(RenewCourse::seasons)
                .max()
                .orElseThrow();
        var ways = new ArrayList<WayCost>();
        for (var way : RenewWay.values()) {
            var course = new RenewCourse(way, front, rear, use, prices, rules);
            while (course.seasons() < horizon) {
                course.drive();
            }
            ways.add(course.cost(whole.get(way.ordinal()).closed()));
        }
        ways.sort(Comparator.comparing((WayCost way) -> !way.isOpen()).thenComparing(WayCost::per1000Km));
        double distanceKm = horizon * use.seasonKm();
        var worthNow = new RenewCourse(RenewWay.FOUR_NOW, front, rear, use, prices, rules).worthNow();
        return new RenewCosts(
                ways,
                distanceKm,
                new Explanation(cautions(ways), steps(front, rear, use, prices, ways, worthNow, distanceKm)));
    }

    /** Until the last tyre of today is gone, or it turns out not to be open; four now always is. */
    private static RenewCourse driven(RenewCourse course) {
        do {
            course.drive();
        } while (course.closed() == null && !course.oldAreGone());
        return course;
    }

    public WayCost cheapest() {
        return ways.getFirst();
    }

    /** What a way costs more than the cheapest over the distance looked at. */
    public double moreThanCheapest(WayCost way) {
        return (way.per1000Km() - cheapest().per1000Km()) * distanceKm / 1000;
    }

    private static List<Said> cautions(List<WayCost> ways) {
        var cautions = new ArrayList<Said>();
        cautions.add(Caution.SAFETY_FIRST);
        if (ways.stream().anyMatch(way -> way.way() == RenewWay.TWO_AS_DUE && way.isOpen())) {
            cautions.add(Caution.NEW_PAIR_AT_REAR);
        }
        cautions.add(Caution.MAKER_FIRST);
        return cautions;
    }

    private static List<Step> steps(
            PairOnAxle front,
            PairOnAxle rear,
            RenewUse use,
            RenewPrices prices,
            List<WayCost> ways,
            double worthNow,
            double distanceKm) {
        var steps = new ArrayList<Step>();
        steps.add(new Step(
                Computed.WORTH_NOW,
                Formula.of(
                        "2 × {} × ({} + {}) / {}",
                        money(prices.tyre()),
                        mm(Math.max(0, front.depthMm() - use.endMm())),
                        mm(Math.max(0, rear.depthMm() - use.endMm())),
                        mm(use.usedUpMm())),
                worthNow,
                "",
                Origin.EVEN_TREAD));
        steps.add(new Step(
                Computed.SPREAD_OF_LOG,
                Formula.of("ln(1 + {})", Amount.exact(use.spreadPercent(), "%")),
                use.logSpread(),
                "",
                Origin.LOG_NORMAL));
        steps.add(chance(front, use));
        steps.add(chance(rear, use));
        for (var way : ways) {
            if (way.isOpen()) {
                steps.add(new Step(
                        new RenewSaid.OfWay(Computed.THROWN_AWAY, way.way()),
                        Method.TREAD_LEFT_OF_REPLACED,
                        way.spent().thrownAway(),
                        "",
                        Origin.EVEN_TREAD));
                steps.add(new Step(
                        new RenewSaid.OfWay(Computed.COST, way.way()),
                        Formula.of(
                                "1000 × ({} + {} − {} + {}) / {}",
                                money(worthNow),
                                money(way.spent().bought()),
                                money(way.spent().left()),
                                money(way.spent().visits()),
                                Amount.significant(distanceKm, "km", 6)),
                        way.per1000Km(),
                        "",
                        Origin.RENEWAL_REWARD));
            }
        }
        return steps;
    }

    private static Step chance(PairOnAxle pair, RenewUse use) {
        double leftMm = Math.max(0, pair.depthMm() - use.endMm());
        return new Step(
                pair.axle() == Axle.FRONT ? Computed.FRONT_CHANCE : Computed.REAR_CHANCE,
                Formula.of(
                        "100 × Φ(−ln({} / {}) / {})",
                        mm(leftMm),
                        mm(use.seasonMm(pair)),
                        Amount.significant(use.logSpread(), "", 4)),
                100 * RenewCourse.chanceOut(leftMm, use.seasonMm(pair), use),
                "%",
                Origin.LOG_NORMAL);
    }

    private static Amount money(double value) {
        return new Amount(value, "", 2);
    }

    private static Amount mm(double value) {
        return Amount.significant(value, "mm", 4);
    }
}
