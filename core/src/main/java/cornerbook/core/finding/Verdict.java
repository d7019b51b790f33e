package cornerbook.core.finding;

import cornerbook.core.say.Said;

/** What a finding comes to, mildest first. */
public enum Verdict implements Said {
    /** Past the next visit at the confidence asked. */
    HOLDS,
    /** Before the next visit, with a date. */
    RUNS_OUT,
    /** Now. */
    SPENT,
    /** Do not drive. */
    UNSAFE;

    /** Probability at which a horizon falls, unless asked otherwise. */
    public static final double CONFIDENCE = 0.90;

    /** The graver of both. */
    public Verdict graver(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
