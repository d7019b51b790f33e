package cornerbook.core.torque;

/**
 * The formulas of a tightened thread, primitives only. T = F (P/2π + d2 µ/(2 cos 30°) + Dm/2 µ g): torque over clamp load (ISO 16047,
 * VDI 2230), g the seat's grip.
 */
final class Tightening {
    private static final double COS_HALF_FLANK = Math.cos(Math.toRadians(30));
    /** Share of yield to which VDI 2230 assembles. */
    private static final double ASSEMBLY_SHARE = 0.9;

    private Tightening() {}

    /** T/F, mm. */
    static double torquePerLoadMm(ScrewThread thread, SeatFace seat, double friction) {
        return thread.pitchMm() / (2 * Math.PI)
                + thread.pitchDiameterMm() * friction / (2 * COS_HALF_FLANK)
                + seat.meanDiameterMm() / 2 * friction * seat.grip();
    }

    /**
     * F_M, N: clamp load at which tension and torsion together reach 90 % of yield (VDI 2230, section 5.4.3):
     * F = 0.9 Rp As / √(1 + 3 (3/2 · d2/ds · tan(φ + ρ'))²), tan φ = P/(π d2), tan ρ' = µ / cos 30°.
     */
    static double assemblyPreloadN(ScrewThread thread, PropertyClass strength, double friction) {
        double helix = Math.atan(thread.pitchMm() / (Math.PI * thread.pitchDiameterMm()));
        double angle = Math.atan(friction / COS_HALF_FLANK);
        double shear = 1.5 * thread.pitchDiameterMm() / thread.stressDiameterMm() * Math.tan(helix + angle);
        return ASSEMBLY_SHARE
                * strength.yieldStressMpa(thread)
                * thread.stressAreaMm2()
                / Math.sqrt(1 + 3 * shear * shear);
    }
}
