package cornerbook.core.brake.drag;

import cornerbook.core.brake.burnish.DiscBody;

/**
 * A disc that warms while its brake drags, with the two laws of its cooling between which the truth is taken to lie:
 *
 * <pre>
 *   least:  h A of {@link DiscBody#coolingWPerK}
 *   most:   h = 0.70 (k/D) Re^0.55 to Re = 240 000, above 0.04 (k/D) Re^0.8;  Re = v D/ν         (1)
 * </pre>
 *
 * (1) is Limpert's for a solid disc in the wind of the car (Brake Design and Safety, from memory), k = 0.0257 W/(m·K) and
 * ν = 15.1·10⁻⁶ m²/s of air at 20 °C (handbook values, from memory). The first was measured on a bench without that wind.
 *
 * @param diameterMm outer diameter
 */
record DragDisc(DiscBody body, double diameterMm) {
    private static final double CONDUCTIVITY_W_PER_M_K = 0.0257;
    private static final double VISCOSITY_M2_PER_S = 15.1e-6;
    private static final double TURBULENT_FROM = 240_000;

    double leastCoolingWPerK(double turnsPerMinute) {
        return body.coolingWPerK(turnsPerMinute);
    }

    double mostCoolingWPerK(double speedMPerS) {
        double diameterM = diameterMm / 1000;
        double reynolds = speedMPerS * diameterM / VISCOSITY_M2_PER_S;
        double nusselt = reynolds > TURBULENT_FROM ? 0.04 * Math.pow(reynolds, 0.8) : 0.70 * Math.pow(reynolds, 0.55);
        return CONDUCTIVITY_W_PER_M_K / diameterM * nusselt * body.coolingAreaM2();
    }
}
