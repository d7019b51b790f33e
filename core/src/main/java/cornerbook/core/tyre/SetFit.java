package cornerbook.core.tyre;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether another set of wheels fits the car's hubs: holes, bolt circle, thread, seat and bore have to agree; offset and rim
 * width move the rim's edges: inward by Δwidth/2 + ΔET, outward by Δwidth/2 − ΔET. Caliper and body still have to be looked at.
 *
 * @param inwardMm how much nearer the inner edge comes to strut and caliper; negative when farther
 * @param outwardMm how much farther the outer edge stands out
 * @param ringMm thickness that a hub ring has to fill on each side, 0 when the bores agree
 * @param caliperGapMm least gap to the caliper, measured with the wheel turned by hand; null when it was not measured
 * @param mounts no reason against mounting was found
 */
public record SetFit(
        Mounting car,
        Mounting wheel,
        double inwardMm,
        double outwardMm,
        double ringMm,
        @Nullable Double caliperGapMm,
        boolean mounts,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    /** Common practice, no source; the vehicle maker's outranks it. */
    public static final double LEAST_CALIPER_GAP_MM = 3;

    private static final double INCH_MM = 25.4;
    /** Two bolt circles or bores are one when they differ by no more, mm. Common practice, no source. */
    private static final double SAME_MM = 0.1;

    public SetFit {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** The wheel on a hub that had the car's own wheel. */
    public static SetFit of(Mounting car, Mounting wheel) {
        return of(car, wheel, null);
    }

    /**
     * The same with the gap to the caliper, which no size tells: it is measured.
     *
     * @param caliperGapMm 0 to 100 mm; null when it was not measured
     */
    public static SetFit of(Mounting car, Mounting wheel, @Nullable Double caliperGapMm) {
        var against = new ArrayList<Said>();
        if (car.holes() != wheel.holes() || Math.abs(car.circleMm() - wheel.circleMm()) > SAME_MM) {
            against.add(Said.verbatim("Bolt circle %dx%s does not go on %dx%s: do not fit."
                    .formatted(wheel.holes(), Step.digits(wheel.circleMm()), car.holes(), Step.digits(car.circleMm()))));
        }
        if (wheel.boreMm() < car.boreMm() - SAME_MM) {
            against.add(Said.verbatim("Centre bore %s mm does not go over the hub's %s mm: do not fit."
                    .formatted(Step.digits(wheel.boreMm()), Step.digits(car.boreMm()))));
        }
        if (!car.thread().equals(wheel.thread())) {
            against.add(Said.verbatim("Fasteners %s of this set do not belong in the hub's %s: use those of the hub's thread."
                    .formatted(wheel.thread(), car.thread())));
        }
        if (caliperGapMm != null && check("caliper gap", caliperGapMm, 0, 100, "mm") < LEAST_CALIPER_GAP_MM) {
            against.add(Said.verbatim("Caliper gap %s mm is under %.0f mm: do not fit."
                    .formatted(Step.digits(caliperGapMm), LEAST_CALIPER_GAP_MM)));
        }
        boolean mounts = against.isEmpty();
        var cautions = new ArrayList<>(against);
        if (car.seat() != wheel.seat()) {
            cautions.add(Said.verbatim(
                    "The wheel's seat is a %s, the car's fasteners are for a %s: take fasteners for the wheel's seat."
                            .formatted(wheel.seat().word(), car.seat().word())));
        }
        double ringMm = Math.max(0, (wheel.boreMm() - car.boreMm()) / 2);
        if (ringMm > SAME_MM / 2) {
            cautions.add(Said.verbatim("The bore is wider than the hub: a hub ring of %s to %s mm is needed."
                    .formatted(Step.digits(car.boreMm()), Step.digits(wheel.boreMm()))));
        }
        double half = (wheel.rimCode() - car.rimCode()) * INCH_MM / 2;
        double offset = wheel.offsetMm() - car.offsetMm();
        if (half + offset > 0 || half - offset > 0) {
            cautions.add(Said.verbatim(
                    "The rim comes nearer to strut, caliper or wing: turn the wheel by hand before the car moves."));
        }
        return new SetFit(
                car,
                wheel,
                half + offset,
                half - offset,
                ringMm,
                caliperGapMm,
                mounts,
                cautions,
                List.of(
                        new Step("inner edge inward", "Δwidth/2 + ΔET", half + offset, "mm", "geometry of offset (ET)"),
                        new Step(
                                "outer edge outward", "Δwidth/2 − ΔET", half - offset, "mm", "geometry of offset (ET)"),
                        new Step("hub ring, each side", "(bore − hub)/2", ringMm, "mm", "geometry")));
    }
}
