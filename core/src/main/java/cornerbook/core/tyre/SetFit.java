package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Caution;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Input;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.tyre.TyreSaid.Way;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
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
        Explanation explanation)
        implements Explained {
    /** Common practice, no source; the vehicle maker's outranks it. */
    public static final double LEAST_CALIPER_GAP_MM = 3;

    private static final double INCH_MM = 25.4;
    /** Two bolt circles or bores are one when they differ by no more, mm. Common practice, no source. */
    private static final double SAME_MM = 0.1;

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
            against.add(new TyreSaid.BoltCircleDiffers(
                    wheel.holes(),
                    Amount.significant(wheel.circleMm(), "", 4),
                    car.holes(),
                    Amount.significant(car.circleMm(), "", 4)));
        }
        if (wheel.boreMm() < car.boreMm() - SAME_MM) {
            against.add(new TyreSaid.BoreTooSmall(
                    Amount.significant(wheel.boreMm(), "mm", 4), Amount.significant(car.boreMm(), "mm", 4)));
        }
        if (!car.thread().equals(wheel.thread())) {
            against.add(new TyreSaid.ThreadDiffers(wheel.thread(), car.thread()));
        }
        if (caliperGapMm != null && check(Input.CALIPER_GAP, caliperGapMm, 0, 100, "mm") < LEAST_CALIPER_GAP_MM) {
            against.add(new TyreSaid.CaliperTooNear(
                    Amount.significant(caliperGapMm, "mm", 4), new Amount(LEAST_CALIPER_GAP_MM, "mm", 0)));
        }
        boolean mounts = against.isEmpty();
        var cautions = new ArrayList<>(against);
        if (car.seat() != wheel.seat()) {
            cautions.add(new TyreSaid.SeatDiffers(wheel.seat(), car.seat()));
        }
        double ringMm = Math.max(0, (wheel.boreMm() - car.boreMm()) / 2);
        if (ringMm > SAME_MM / 2) {
            cautions.add(new TyreSaid.NeedsHubRing(Between.exact(car.boreMm(), wheel.boreMm(), "mm")));
        }
        double half = (wheel.rimCode() - car.rimCode()) * INCH_MM / 2;
        double offset = wheel.offsetMm() - car.offsetMm();
        if (half + offset > 0 || half - offset > 0) {
            cautions.add(Caution.RIM_COMES_NEARER);
        }
        return new SetFit(
                car,
                wheel,
                half + offset,
                half - offset,
                ringMm,
                caliperGapMm,
                mounts,
                new Explanation(
                        cautions,
                        List.of(
                                new Step(
                                        Computed.INNER_EDGE,
                                        Way.INNER_EDGE,
                                        half + offset,
                                        "mm",
                                        Origin.OFFSET_GEOMETRY),
                                new Step(
                                        Computed.OUTER_EDGE,
                                        Way.OUTER_EDGE,
                                        half - offset,
                                        "mm",
                                        Origin.OFFSET_GEOMETRY),
                                new Step(Computed.HUB_RING, Way.HUB_RING, ringMm, "mm", Origin.GEOMETRY))));
    }
}
