package cornerbook.core.battery;

/**
 * The acid of a lead-acid battery: the more it is discharged, the nearer it is to water, and freezes. Specific gravity by state of
 * charge, the middle of a battery maker's ranges: 1.265 full, 1.225 at 75 %, 1.190 at 50 %, 1.160 at 25 %, 1.120 discharged.
 * Freezing point by specific gravity, a vehicle maker's table: 1.265 −75 °F, 1.225 −35, 1.200 −17, 1.150 5, 1.100 18, 1.050 27;
 * a technical manual's table differs by 1 °F. Linear between the points. The acid of an AGM battery is denser when full, so it
 * freezes no sooner than this.
 */
public final class Electrolyte {
    private static final double[] SHARE = {0, 0.25, 0.50, 0.75, 1};
    private static final double[] GRAVITY_BY_SHARE = {1.120, 1.160, 1.190, 1.225, 1.265};
    private static final double[] GRAVITY = {1.050, 1.100, 1.150, 1.200, 1.225, 1.265};
    private static final double[] FREEZES_F = {27, 18, 5, -17, -35, -75};

    private Electrolyte() {}

    /** Specific gravity at 25 °C for a charge of 0 to 1. */
    public static double specificGravity(double charge) {
        return StateOfCharge.between(SHARE, GRAVITY_BY_SHARE, charge);
    }

    /** Temperature at which acid of this specific gravity, 1.05 to 1.265, begins to freeze. */
    public static double freezesAtC(double specificGravity) {
        return (StateOfCharge.between(GRAVITY, FREEZES_F, specificGravity) - 32) / 1.8;
    }
}
