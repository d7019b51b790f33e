package cornerbook.core.brake.interval;

import cornerbook.core.brake.interval.IntervalSaid.Caution;
import cornerbook.core.brake.interval.IntervalSaid.Computed;
import cornerbook.core.brake.interval.IntervalSaid.Input;
import cornerbook.core.brake.interval.IntervalSaid.Origin;
import cornerbook.core.brake.interval.IntervalSaid.Way;
import cornerbook.core.brake.seizing.PadsOfACar;
import cornerbook.core.brake.seizing.SaltClock;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The interval at which the guides of a car are cleaned for the least cost: age replacement ({@link AgeReplacement}) of all its pads
 * together. Its age is the {@link SaltClock}'s, of which a whole year counts 12 months and a winter nine tenths of that; that no pad has
 * seized by an age is {@link PadsOfACar}'s, as pads of one car hang together. Assumes that a seized pad is noticed at once and that then
 * all guides are cleaned.
 *
 * @param yearlyCostPerYear where it is done each year
 */
public record BestInterval(
        Least least, double yearlyCostPerYear, Risk risk, List<Point> course, Explanation explanation)
        implements Explained {
    /** Nobody plans a cleaning further ahead; the guides are then as old as the pads. */
    public static final double LONGEST_MONTHS = 120;

    private static final double YEAR = 12;
    private static final double NEAR = 1.05;
    /** No interval is shorter. */
    private static final double LEAST_MONTHS = 0.25;

    private static final int COURSE = 60;
    private static final double SHORTEST_SHOWN = 3;
    private static final int MOST_PADS = 16;

    /**
     * Where it costs least.
     *
     * @param months of the salt clock; null where it costs less the later it is done
     * @param costPerYear there, or at the longest
     * @param nearFrom from where on the cost is not above the least by more than 5 %
     * @param nearTo until where
     * @param chance that a pad seizes within the interval
     * @param due day on which the interval is over; null where there is none, or nobody told since when it runs
     */
    public record Least(
            @Nullable Double months,
            double costPerYear,
            double nearFrom,
            double nearTo,
            double chance,
            @Nullable LocalDate due) {}

    /**
     * The risk that is taken.
     *
     * @param chance of a seized pad, 0 to 1
     * @param months after how many it is that
     * @param due on which day; null where nobody told since when it runs
     */
    public record Risk(
            double chance, double months, @Nullable LocalDate due) {}

    /** The cost per year of an interval. */
    public record Point(double months, double costPerYear) {}

    public BestInterval {
        course = List.copyOf(course);
    }

    /**
     * Of one car.
     *
     * @param pads whose guides are cleaned together, 1 to 16
     * @param risk chance of a seized pad that is taken, above 0 and below 1
     * @param since day of the last cleaning; null where it is not known
     */
    public static BestInterval of(
            SeizingHazard hazard,
            SeizingExposure exposure,
            int pads,
            ServicePrices prices,
            double risk,
            @Nullable LocalDate since) {
        Range.check(Input.PADS, pads, 1, MOST_PADS, "");
        var brakes = new Brakes(hazard, exposure, pads);
        var policy = policy(brakes, prices);
        double best = policy.bestAge(LONGEST_MONTHS);
        boolean ends = best < LONGEST_MONTHS;
        double cost = policy.costRate(best);
        double chance = 1 - brakes.free(best);
        double riskMonths = hazard.serviceIntervalMonths(exposure, risk, pads, new PadsOfACar());
        return new BestInterval(
                new Least(
                        ends ? best : null,
                        YEAR * cost,
                        policy.ageOfCost(NEAR * cost, best, LEAST_MONTHS),
                        policy.ageOfCost(NEAR * cost, best, LONGEST_MONTHS),
                        chance,
                        ends && since != null ? dayAt(since, best) : null),
                YEAR * policy.costRate(YEAR),
                new Risk(risk, riskMonths, since == null ? null : dayAt(since, riskMonths)),
                IntStream.rangeClosed(0, COURSE)
                        .mapToDouble(i -> SHORTEST_SHOWN
                                + i * (Math.min(LONGEST_MONTHS, Math.max(36, 2 * best)) - SHORTEST_SHOWN) / COURSE)
                        .mapToObj(months -> new Point(months, YEAR * policy.costRate(months)))
                        .toList(),
                new Explanation(cautions(chance > risk), steps(brakes, policy, best, prices, pads)));
    }

    private static AgeReplacement policy(Brakes brakes, ServicePrices prices) {
        return new AgeReplacement(brakes::free, prices.service(), prices.service() + prices.seized());
    }

    /** The first day on which so many months of the salt clock are over. */
    static LocalDate dayAt(LocalDate since, double months) {
        long low = 0;
        long high = (long) Math.ceil((months + YEAR) / YEAR * 366);
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (SaltClock.months(since, since.plusDays(middle)) < months) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return since.plusDays(high);
    }

    /** All pads of a car since they were cleaned together. */
    private record Brakes(SeizingHazard hazard, SeizingExposure exposure, int pads) {
        double one(double months) {
            return months > 0 ? hazard.chance(exposure, 0, months).probability() : 0;
        }

        double free(double months) {
            var together = new PadsOfACar();
            double chance = one(months);
            for (int i = 0; i < pads; i++) {
                together.free(0, chance);
            }
            return 1 - together.chance();
        }
    }

    private static List<Said> cautions(boolean high) {
        var cautions = new ArrayList<Said>();
        if (high) {
            cautions.add(Caution.CHANCE_IS_HIGH);
        }
        cautions.addAll(List.of(Caution.MAKER_FIRST, Caution.LOOK_AT_EACH_VISIT, Caution.HAZARD_IS_USUAL));
        return cautions;
    }

    private static List<Step> steps(Brakes brakes, AgeReplacement policy, double best, ServicePrices prices, int pads) {
        double one = brakes.one(best);
        double free = brakes.free(best);
        double meanTime = policy.meanTime(best);
        double shape = 1 / brakes.hazard().fit().scale();
        double life = best / Math.pow(-Math.log1p(-one), 1 / shape);
        return List.of(
                new Step(Computed.BEST, Way.WHERE_COST_IS_LEAST, best, "", Origin.AGE_REPLACEMENT),
                new Step(
                        Computed.CHANCE_OF_ONE,
                        Formula.of(
                                "100 × (1 − e^(−({} / {})^{}))",
                                Amount.significant(best, "", 4),
                                Amount.significant(life, "", 4),
                                Amount.significant(shape, "", 4)),
                        100 * one,
                        "%",
                        Origin.WEIBULL),
                new Step(
                        Computed.CHANCE_OF_ANY,
                        Formula.of(
                                "100 × (1 − (1 + {} × ((1 − {})^(−{}) − 1))^(−1/{}))",
                                new Amount(pads, "", 0),
                                Amount.significant(one, "", 4),
                                Amount.exact(PadsOfACar.FACTOR_VARIANCE, ""),
                                Amount.exact(PadsOfACar.FACTOR_VARIANCE, "")),
                        100 * (1 - free),
                        "%",
                        Origin.SHARED_BY_CAR),
                new Step(Computed.MEAN_TIME, Way.AREA_UNDER_FREE, meanTime, "", Origin.AGE_REPLACEMENT),
                new Step(
                        Computed.COST_PER_YEAR,
                        Formula.of(
                                "12 × ({} + {} × {}) / {}",
                                Amount.significant(prices.service(), "", 6),
                                Amount.significant(prices.seized(), "", 6),
                                Amount.significant(1 - free, "", 4),
                                Amount.significant(meanTime, "", 4)),
                        YEAR * policy.costRate(best),
                        "",
                        Origin.AGE_REPLACEMENT));
    }
}
