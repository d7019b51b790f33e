package cornerbook.app.calibration.fleet;

import java.util.random.RandomGenerator;

/** One brake pad with its guides: material that is used up by braking, and rust that grows where there is salt. */
final class Pad {
    /** mm of a pad of 50 cm² that a MJ takes: 0.05 cm³; friction materials lose 0.01 to 0.1 cm³. From memory. */
    private static final double MM_PER_MJ = 0.0105;

    static final double NEW_MM = 11;
    /**
     * Salt days at which half of all pads are stuck, and how they differ: about 4 % within a year of an ordinary place and 15 %
     * within two. Common practice, no source.
     */
    private static final double STUCK_AFTER_SALT_DAYS = 700;

    private static final double SPREAD = 0.8;
    private static final double TIGHT_FROM = 0.75;

    private final RandomGenerator random;
    private final double wears;
    private double thicknessMm;
    private double damage;
    private double stuckAt;

    Pad(double thicknessMm, RandomGenerator random) {
        this.random = random;
        this.thicknessMm = thicknessMm;
        wears = Math.exp(0.10 * random.nextGaussian());
        clean();
    }

    void clean() {
        damage = 0;
        stuckAt = STUCK_AFTER_SALT_DAYS * Math.exp(SPREAD * random.nextGaussian());
    }

    void replace() {
        thicknessMm = NEW_MM;
    }

    void brake(double megajoule) {
        thicknessMm = Math.max(0, thicknessMm - MM_PER_MJ * wears * megajoule);
    }

    void rust(double saltDays) {
        damage += saltDays;
    }

    /** Salt days that it would still move. */
    double untilStuck() {
        return Math.max(0, stuckAt - damage);
    }

    boolean isStuck() {
        return damage >= stuckAt;
    }

    boolean isTight() {
        return damage >= TIGHT_FROM * stuckAt;
    }

    double thicknessMm() {
        return thicknessMm;
    }
}
