package cornerbook.core.finding;

/** What a finding comes to, mildest first. */
public enum Verdict {
    /** Past the next visit at the confidence asked. */
    HOLDS("Holds"),
    /** Before the next visit, with a date. */
    RUNS_OUT("Runs out"),
    /** Now. */
    SPENT("Spent"),
    /** Do not drive. */
    UNSAFE("Unsafe");

    /** Probability at which a horizon falls, unless asked otherwise. */
    public static final double CONFIDENCE = 0.90;

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word that people read. */
    public String word() {
        return word;
    }

    /** The graver of both. */
    public Verdict graver(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
