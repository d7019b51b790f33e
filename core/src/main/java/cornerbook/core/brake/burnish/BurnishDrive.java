package cornerbook.core.brake.burnish;

import cornerbook.core.say.Said;

import cornerbook.core.corner.Axle;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final String MODEL = "one lump of iron; docs/methods/brakes.md, burnish";
    private static final String BAND = "everyday band, common practice, no source";
    private static final double COOLED_DOWN_K = 30;

    public BurnishDrive {
        temperatures = List.copyOf(temperatures);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
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
                cautions(stop, target, plan),
                steps(car, disc, stop, target, plan));
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
            case EXCEEDS_THE_LIMIT ->
                cautions.add(Said.verbatim("Do not drive this: the disc would pass its limit of %.0f °C. Milder or fewer stops."
                        .formatted(target.limitC())));
            case GETS_TOO_HOT ->
                cautions.add(Said.verbatim(
                        "Even with the longest spacing the disc gets hotter than %.0f °C: take milder or fewer stops."
                                .formatted(target.highestC())));
            case STAYS_TOO_COLD ->
                cautions.add(Said.verbatim(
                        "However many stops, the disc stays below %.0f °C: keep regeneration out, or stop from a higher speed."
                                .formatted(target.lowestC())));
            case NONE -> {}
        }
        if (stop.regenerationShare() > 0) {
            cautions.add(Said.verbatim(
                    "Where the car regenerates, the discs stay cold: follow the maker's way to keep regeneration out."));
        }
        cautions.add(Said.verbatim(
                "Only where traffic allows, and never to a standstill on hot discs; after the stops drive on with little braking."));
        cautions.add(Said.verbatim("The vehicle manufacturer's and the pad maker's procedure outrank this plan."));
        return cautions;
    }

    private static List<Step> steps(
            BrakedCar car, DiscBody disc, BurnishStop stop, BurnishTarget target, BurnishPlan plan) {
        return List.of(
                new Step(
                        "energy of one stop into one disc",
                        "½ m f (v₁² − v₂²) · axle share / 2 · (1 − regeneration) · share into the disc, m = %s kg, f = %s, %s to %s km/h, regeneration %s"
                                .formatted(
                                        Step.digits(car.massKg()),
                                        Step.digits(car.rotatingMassFactor()),
                                        Step.digits(stop.fromKmh()),
                                        Step.digits(stop.toKmh()),
                                        Step.digits(stop.regenerationShare())),
                        plan.energyPerStopJ() / 1000,
                        "kJ",
                        "kinetic energy; f from Larminie and Lowry; share into the disc: common practice, no source"),
                new Step(
                        "rise of one stop without cooling",
                        "E / (m c), m = %s kg, c = %s J/(kg·K)"
                                .formatted(Step.digits(disc.massKg()), Step.digits(disc.specificHeatJPerKgK())),
                        plan.risePerStopK(),
                        "K",
                        "heat capacity of cast iron"),
                new Step(
                        "spacing",
                        "shortest from %s to %s s whose peaks settle at or below %s °C"
                                .formatted(
                                        Step.digits(target.shortestSpacingS()),
                                        Step.digits(target.longestSpacingS()),
                                        Step.digits(target.highestC())),
                        plan.spacingS(),
                        "s",
                        "cooling by McPhee and Johnson 2008; " + BAND),
                new Step(
                        "last peak",
                        "%d stops, from air at %s °C".formatted(plan.stops(), Step.digits(target.airC())),
                        plan.peaksC().getLast(),
                        "°C",
                        MODEL),
                new Step(
                        "cooling",
                        String.format(
                                Locale.ROOT,
                                "at %s km/h until within %.0f K of the air",
                                stop.fromKmh(),
                                COOLED_DOWN_K),
                        plan.coolDownS() / 60,
                        "min",
                        MODEL));
    }
}
