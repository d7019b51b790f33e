package cornerbook.core.battery;

/** How the health of a 12 V battery is tested: measured over rated, and what the share means. */
public enum HealthTest {
    /** Sound at 70 % and more (service literature); watched below 80 % (common practice, no source). */
    CRANKING_CURRENT(0.70, 0.80),
    /**
     * By discharge from full. At its end below half of its rating (BCI's end of life of a battery that is cycled), to be replaced soon
     * below 80 % (maintenance manual for stand-by batteries).
     */
    CAPACITY(0.50, 0.80);

    /** What a share of the rating says. */
    public enum Judgement {
        SOUND,
        WATCH,
        REPLACE
    }

    private final double leastShare;
    private final double watchShare;

    HealthTest(double leastShare, double watchShare) {
        this.leastShare = leastShare;
        this.watchShare = watchShare;
    }

    /** Below this it is at its end. */
    public double leastShare() {
        return leastShare;
    }

    /** Below this it is watched. */
    public double watchShare() {
        return watchShare;
    }

    /** What a share says, 0 and more. */
    public Judgement judge(double share) {
        return share < leastShare ? Judgement.REPLACE : share < watchShare ? Judgement.WATCH : Judgement.SOUND;
    }
}
