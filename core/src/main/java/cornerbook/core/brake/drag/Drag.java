package cornerbook.core.brake.drag;

import cornerbook.core.brake.burnish.DiscBody;

/**
 * What a brake takes while it drags. The heat balance of its disc, θ hotter than it would be without:
 *
 * <pre>
 *   m c dθ/dt = s P − h A θ
 *   driven for t at one speed: θ = (s P/hA) (1 − e^(−hA t/(m c))), so that P = hA θ/(s (1 − e^(−hA t/(m c))))    (1)
 *   force at the tyre: F = P/v;  energy for a way: F times the way                            (2)
 * </pre>
 *
 * s is the share of the heat that goes into the disc. As h grows about as v does, F hardly depends on v.
 *
 * @param powerW at the speed of the drive
 * @param forceN against the car's motion
 * @param kwhPer100Km at the wheel
 */
public record Drag(Span powerW, Span forceN, Span kwhPer100Km) {
    /** A force of 1 N along 100 km is 100 000 J, and 1 kWh is 3 600 000 J. */
    private static final double NEWTON_PER_KWH_IN_100_KM = 36;

    /** What it is at least and at most, by the two laws of cooling. */
    public record Span(double least, double most) {
        Span over(double divisor) {
            return new Span(least / divisor, most / divisor);
        }
    }

    /**
     * Of a disc that is warmer than one that does not drag.
     *
     * @param warmerByK above 0 or at it
     * @param diameterMm of the disc
     */
    public static Drag of(DiscBody body, double diameterMm, DragDrive drive, double warmerByK) {
        var disc = new DragDisc(body, diameterMm);
        var power = new Span(
                powerW(body, disc.leastCoolingWPerK(drive.turnsPerMinute()), drive, warmerByK),
                powerW(body, disc.mostCoolingWPerK(drive.speedMPerS()), drive, warmerByK));
        var force = power.over(drive.speedMPerS());
        return new Drag(power, force, force.over(NEWTON_PER_KWH_IN_100_KM));
    }

    /** (1). */
    private static double powerW(DiscBody body, double coolingWPerK, DragDrive drive, double warmerByK) {
        return coolingWPerK
                * warmerByK
                / body.heatShare()
                / drive.shareOfSteady(coolingWPerK, body.heatCapacityJPerK());
    }
}
