package cornerbook.app.calibration;

/** How many of how many. */
final class Share {
    private long hits;
    private long all;

    void add(boolean hit) {
        hits += hit ? 1 : 0;
        all++;
    }

    long all() {
        return all;
    }

    /** 0 to 1; NaN of none. */
    double share() {
        return (double) hits / all;
    }
}
