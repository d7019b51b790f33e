package cornerbook.core.brake.burnish;

import cornerbook.core.quantity.Range;

/**
 * A disc as a lump that stores and gives off heat.
 *
 * @param massKg of what heats up with each stop: the rings, not the hat
 * @param coolingAreaM2 surface in the air: both faces, and the vanes where there are any
 * @param specificHeatJPerKgK of its material
 * @param heatShare share of the friction heat that goes into the disc; the rest goes into the pads
 */
public record DiscBody(double massKg, double coolingAreaM2, double specificHeatJPerKgK, double heatShare) {
    /** Cast iron, 0.12 Btu/(lb·°F). Source: course problem in the manner of Felder and Rousseau, see docs/methods/brakes.md. */
    public static final double CAST_IRON_J_PER_KG_K = 502;
    /** Common practice, no source. */
    public static final double USUAL_HEAT_SHARE = 0.9;

    /** From this thickness a disc has vanes. Common practice, no source. */
    public static final double VENTED_FROM_MM = 18;

    private static final double INNER_SHARE = 0.6;
    private static final double COEFFICIENT_AT_REST = 1.3;
    private static final double COEFFICIENT_PER_TURN_PER_MINUTE = 0.0751;

    public DiscBody {
        Range.check(BurnishSaid.Part.DISC_MASS, massKg, 0.5, 100, "kg");
        Range.check(BurnishSaid.Part.COOLING_AREA, coolingAreaM2, 0.01, 5, "m²");
        Range.check(BurnishSaid.Part.SPECIFIC_HEAT, specificHeatJPerKgK, 100, 2000, "J/(kg·K)");
        Range.check(BurnishSaid.Part.HEAT_SHARE, heatShare, 0.1, 1, "");
    }

    /**
     * A disc of which mass and diameter are known: the rings reach inward to 60 % of the diameter, and a vented disc has as much
     * surface in its vanes as on its faces. Both: common practice, no source.
     *
     * @param diameterMm outer diameter
     */
    public static DiscBody castIron(double massKg, double diameterMm, boolean vented) {
        Range.check(BurnishSaid.Part.DISC_DIAMETER, diameterMm, 150, 500, "mm");
        double diameterM = diameterMm / 1000;
        double facesM2 = 2 * Math.PI / 4 * diameterM * diameterM * (1 - INNER_SHARE * INNER_SHARE);
        return new DiscBody(massKg, vented ? 2 * facesM2 : facesM2, CAST_IRON_J_PER_KG_K, USUAL_HEAT_SHARE);
    }

    public double heatCapacityJPerK() {
        return massKg * specificHeatJPerKgK;
    }

    /**
     * Heat that it gives off for each kelvin that it is hotter than the air: h A with h = 1.3 + 0.0751 n W/(m²·K).
     *
     * <p>The line through the coefficients 27.0, 52.7 and 78.3 W/(m²·K) measured at 342, 684 and 1025 turns per minute in the
     * vanes of a vented disc: McPhee and Johnson, International Journal of Thermal Sciences 47 (2008), 458–467. It is used for the
     * whole surface, and below 342 turns too: common practice, no source.
     *
     * @param turnsPerMinute n, of the wheel
     */
    public double coolingWPerK(double turnsPerMinute) {
        return (COEFFICIENT_AT_REST + COEFFICIENT_PER_TURN_PER_MINUTE * turnsPerMinute) * coolingAreaM2;
    }
}
