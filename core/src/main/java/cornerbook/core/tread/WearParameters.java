package cornerbook.core.tread;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.DriveLayout;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * The prior of the corner-rate model.
 *
 * @param values of every parameter, in its unit
 */
public record WearParameters(Map<WearParameter, Double> values) {
    private static final double DRIVEN_RATE = 0.18;
    private static final double FREE_RATE = 0.12;
    /** No spread is greater: by it cars would differ twentyfold. */
    private static final double MOST_SPREAD = 3;

    public WearParameters {
        for (var parameter : WearParameter.values()) {
            double value = Objects.requireNonNull(values.get(parameter), parameter.name());
            boolean slowing = parameter == WearParameter.SLOWING;
            if (!(value > (slowing ? -TreadScale.MOST_SLOWING : 0)
                    && value < (slowing ? TreadScale.MOST_SLOWING : 10))) {
                throw new IllegalArgumentException("%s is %s, expected %s"
                        .formatted(
                                parameter,
                                value,
                                slowing ? "within " + TreadScale.MOST_SLOWING + " of 0" : "above 0 and below 10"));
            }
        }
        values = Map.copyOf(values);
    }

    /** The prior until the book has learned better. Source: common practice, no source. */
    public static WearParameters defaults(DriveLayout drive) {
        var values = new EnumMap<WearParameter, Double>(WearParameter.class);
        values.put(WearParameter.READING_SD, 0.15);
        values.put(WearParameter.VISIT_SD, 0.10);
        values.put(WearParameter.NEW_DEPTH_SD, 0.25);
        values.put(WearParameter.FRONT_RATE, drive.drives(Axle.FRONT) ? DRIVEN_RATE : FREE_RATE);
        values.put(WearParameter.REAR_RATE, drive.drives(Axle.REAR) ? DRIVEN_RATE : FREE_RATE);
        values.put(WearParameter.VEHICLE_SPREAD, 0.40);
        values.put(WearParameter.CORNER_SPREAD, 0.15);
        values.put(WearParameter.GROOVE_SPREAD, 0.05);
        values.put(WearParameter.SEASON_SD, 0.02);
        values.put(WearParameter.SLOWING, 0.05);
        return new WearParameters(values);
    }

    /** The same with one parameter set. */
    public WearParameters with(WearParameter parameter, double value) {
        var changed = new EnumMap<>(values);
        changed.put(parameter, value);
        return new WearParameters(changed);
    }

    /**
     * The same with every standard deviation so many times as great; means stay as they are.
     *
     * @param factor 1 to 3
     */
    WearParameters widened(double factor) {
        var wider = new EnumMap<>(values);
        wider.replaceAll((parameter, value) -> parameter.isSpread() ? Math.min(MOST_SPREAD, value * factor) : value);
        return new WearParameters(wider);
    }

    /** The same as far from a place as it was from another, each parameter on its scale and within what it may be. */
    WearParameters moved(WearParameters from, WearParameters to) {
        var there = new EnumMap<>(values);
        there.replaceAll((parameter, value) -> parameter.within(parameter.fromScale(parameter.onScale(value)
                - parameter.onScale(from.of(parameter))
                + parameter.onScale(to.of(parameter)))));
        return new WearParameters(there);
    }

    public double of(WearParameter parameter) {
        return Objects.requireNonNull(values.get(parameter));
    }

    public double readingSdMm() {
        return of(WearParameter.READING_SD);
    }

    /** Standard deviation of a reading's error, its visit's offset included, mm. */
    public double readingErrorMm() {
        return Math.hypot(readingSdMm(), of(WearParameter.VISIT_SD));
    }

    public double newDepthSdMm() {
        return of(WearParameter.NEW_DEPTH_SD);
    }

    public double frontRateMmPer1000Km() {
        return of(WearParameter.FRONT_RATE);
    }

    public double rearRateMmPer1000Km() {
        return of(WearParameter.REAR_RATE);
    }

    public double vehicleSpread() {
        return of(WearParameter.VEHICLE_SPREAD);
    }

    /** Mean rate of an axle against the mean of both: what a season adds goes with it. */
    public double share(Axle axle) {
        return 2 * rate(axle) / (frontRateMmPer1000Km() + rearRateMmPer1000Km());
    }

    /** Mean wear rate of an axle's corners at half depth, mm per 1000 km. */
    public double rate(Axle axle) {
        return axle == Axle.FRONT ? frontRateMmPer1000Km() : rearRateMmPer1000Km();
    }
}
