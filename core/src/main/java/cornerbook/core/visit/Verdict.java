package cornerbook.core.visit;

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

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word that people read. */
    public String word() {
        return word;
    }
}
