package cornerbook.core.battery;

/** How the health of a 12 V battery is tested: measured over rated, and what the share means. */
public enum HealthTest {
    /** Sound at 70 % and more (service literature); watched below 80 % (common practice, no source). */
    CRANKING_CURRENT(BatteryHealth.SOUND_SHARE, BatteryHealth.WATCH_SHARE),
    /**
     * By discharge from full. At its end below half of its rating (BCI's end of life of a battery that is cycled), to be replaced soon
     * below 80 % (maintenance manual for stand-by batteries).
     */
    CAPACITY(0.50, 0.80);

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
}
