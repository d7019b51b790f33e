package cornerbook.core.sight.judge;

import cornerbook.core.say.Said;
import java.util.OptionalDouble;

/**
 * Whether a punctured tyre may be repaired. BS AU 159f, as tyre dealers quote it: minor repairs in the central three quarters of
 * the tread, not below 1.6 mm of tread, not with exposed cords, damaged beads, aged rubber, or when it was driven on flat. Up to
 * 6 mm (1/4 in), between the outermost grooves, never in shoulder or sidewall: the tyre manufacturers' association of the
 * United States, as tyre makers quote it. The greatest diameter of BS AU 159f, 6 mm too, is from memory.
 */
enum Puncture implements Said {
    REPAIRABLE,
    /** Diameter or tread depth is not known yet. */
    MEASURE_FIRST,
    SIDEWALL,
    SHOULDER,
    TOO_WIDE,
    TOO_SHALLOW,
    DRIVEN_FLAT,
    DAMAGED;

    private static final double WIDEST_MM = 6;
    private static final double SHALLOWEST_MM = 1.6;

    /**
     * What the rules say.
     *
     * @param place of the word of {@code Scale.PUNCTURE}: 1 tread centre, 2 shoulder, 3 sidewall
     * @param depthMm of the shallowest groove
     * @param damaged whether the tyre has a bulge, cords, a grave cut, age cracks or a bad bead
     */
    static Puncture of(
            int place, OptionalDouble diameterMm, OptionalDouble depthMm, boolean drivenFlat, boolean damaged) {
        if (place != 1) {
            return place == 2 ? SHOULDER : SIDEWALL;
        }
        if (drivenFlat || damaged) {
            return drivenFlat ? DRIVEN_FLAT : DAMAGED;
        }
        if (diameterMm.orElse(0) > WIDEST_MM) {
            return TOO_WIDE;
        }
        if (depthMm.orElse(SHALLOWEST_MM) < SHALLOWEST_MM) {
            return TOO_SHALLOW;
        }
        return diameterMm.isPresent() && depthMm.isPresent() ? REPAIRABLE : MEASURE_FIRST;
    }

    boolean mayBeRepaired() {
        return this == REPAIRABLE || this == MEASURE_FIRST;
    }
}
