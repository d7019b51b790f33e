package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

/**
 * Coefficient of friction in the thread and under the seat, taken as equal, as the band in which it may lie. VDI 2230's
 * friction classes (table A5) span 0.04 to 0.30: A 0.04–0.10, B 0.08–0.16, C 0.14–0.24, D 0.20–0.35 (from memory).
 *
 * @param lowest 0.04 to {@code highest}
 * @param highest up to 0.40
 */
public record FrictionBand(double lowest, double highest) {
    /** Clean and dry steel or zinc, class C of VDI 2230 (from memory). */
    public static final FrictionBand DRY = new FrictionBand(0.14, 0.24);

    public FrictionBand {
        check(TorqueSaid.Part.HIGHEST_FRICTION, highest, 0.04, 0.40, "");
        check(TorqueSaid.Part.LOWEST_FRICTION, lowest, 0.04, highest, "");
    }
}
