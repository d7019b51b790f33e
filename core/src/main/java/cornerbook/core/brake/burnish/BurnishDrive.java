package cornerbook.core.brake.burnish;

import cornerbook.core.brake.burnish.BurnishSaid.Computed;
import cornerbook.core.brake.burnish.BurnishSaid.Ground;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * A burnish drive for the discs of one axle with its temperatures over time, its cautions and its steps. The plan is that of
 * {@link BurnishPlanner}; model and sources: {@link DiscHeat}.
 *
 * @param frontShare share of the friction energy that the front axle takes
 * @param temperatures of the disc from the first stop on: start and end of each stop, then the way down
 */
public record BurnishDrive(
        Axle axle,
        double massKg,
        double frontShare,
        double discMassKg,
        double coolingAreaM2,
        BurnishStop stop,
        BurnishTarget target,
        BurnishPlan plan,
        List<Moment> temperatures,
        Explanation explanation)
        implements Explained {
    private static final double COOLED_DOWN_K = 30;
    private static final int DIGITS = 4;

    public BurnishDrive {
        temperatures = List.copyOf(temperatures);
    }

    /** The disc's temperature at a time since the first stop began. */
    public record Moment(double seconds, double celsius) {}

    public static BurnishDrive of(BrakedCar car, DiscBody disc, Axle axle, BurnishStop stop, BurnishTarget target) {
        var plan = BurnishPlanner.plan(car, disc, axle, stop, target);
        return new BurnishDrive(
                axle,
                car.massKg(),
                car.frontShare(),
                disc.massKg(),
                disc.coolingAreaM2(),
                stop,
                target,
                plan,
                temperatures(new DiscHeat(car, disc, axle), stop, target, plan),
                new Explanation(cautions(stop, target, plan), steps(car, disc, stop, target, plan)));
    }

    private static List<Moment> temperatures(DiscHeat heat, BurnishStop stop, BurnishTarget target, BurnishPlan plan) {
        var moments = new ArrayList<Moment>();
        double seconds = 0;
        double hotterByK = 0;
        for (double peakC : plan.peaksC()) {
            if (!moments.isEmpty()) {
                hotterByK = heat.afterDriving(hotterByK, stop.fromKmh(), plan.spacingS());
                seconds += plan.spacingS();
            }
            moments.add(new Moment(seconds, target.airC() + hotterByK));
            hotterByK = peakC - target.airC();
            seconds += stop.durationS();
            moments.add(new Moment(seconds, peakC));
        }
        for (int part = 1; part <= 4; part++) {
            double after = plan.coolDownS() * part / 4;
            moments.add(
                    new Moment(seconds + after, target.airC() + heat.afterDriving(hotterByK, stop.fromKmh(), after)));
        }
        return moments;
    }

    private static List<Said> cautions(BurnishStop stop, BurnishTarget target, BurnishPlan plan) {
        var cautions = new ArrayList<Said>();
        switch (plan.warning()) {
            case EXCEEDS_THE_LIMIT -> cautions.add(new BurnishSaid.ExceedsLimit(Amount.of(target.limitC(), "°C")));
            case GETS_TOO_HOT -> cautions.add(new BurnishSaid.GetsTooHot(Amount.of(target.highestC(), "°C")));
            case STAYS_TOO_COLD -> cautions.add(new BurnishSaid.StaysTooCold(Amount.of(target.lowestC(), "°C")));
            case NONE -> {}
        }
        if (stop.regenerationShare() > 0) {
            cautions.add(new BurnishSaid.Regenerates());
        }
        cautions.add(new BurnishSaid.WhereTrafficAllows());
        cautions.add(new BurnishSaid.MakersOutrank());
        return cautions;
    }

    private static List<Step> steps(
            BrakedCar car, DiscBody disc, BurnishStop stop, BurnishTarget target, BurnishPlan plan) {
        return List.of(
                new Step(
                        Computed.ENERGY,
                        new BurnishSaid.EnergyFormula(
                                digits(car.massKg(), "kg"),
                                digits(car.rotatingMassFactor(), ""),
                                digits(stop.fromKmh(), "km/h"),
                                digits(stop.toKmh(), "km/h"),
                                digits(stop.regenerationShare(), "")),
                        plan.energyPerStopJ() / 1000,
                        "kJ",
                        Ground.KINETIC_ENERGY),
                new Step(
                        Computed.RISE,
                        Formula.of(
                                "E / (m c), m = {}, c = {}",
                                digits(disc.massKg(), "kg"),
                                digits(disc.specificHeatJPerKgK(), "J/(kg·K)")),
                        plan.risePerStopK(),
                        "K",
                        Ground.HEAT_CAPACITY),
                new Step(
                        Computed.SPACING,
                        new BurnishSaid.ShortestSpacing(
                                Between.exact(target.shortestSpacingS(), target.longestSpacingS(), "s"),
                                digits(target.highestC(), "°C")),
                        plan.spacingS(),
                        "s",
                        Ground.COOLING_AND_BAND),
                new Step(
                        Computed.LAST_PEAK,
                        new BurnishSaid.StopsFromAir(plan.stops(), digits(target.airC(), "°C")),
                        plan.peaksC().getLast(),
                        "°C",
                        Ground.ONE_LUMP),
                new Step(
                        Computed.COOLING,
                        new BurnishSaid.UntilNearAir(digits(stop.fromKmh(), "km/h"), Amount.of(COOLED_DOWN_K, "K")),
                        plan.coolDownS() / 60,
                        "min",
                        Ground.ONE_LUMP));
    }

    private static Amount digits(double value, String unit) {
        return Amount.significant(value, unit, DIGITS);
    }
}
