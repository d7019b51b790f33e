package cornerbook.core.finding;

import cornerbook.core.say.Said;

/** A verdict in the word that fits what it is about: a pad is spent, a pressure is to be put right. */
public enum Urgency implements Said {
    HOLDS,
    /** What was set or fitted is as it should be. */
    IN_ORDER,
    /** It holds, and there is something to do all the same. */
    ADVICE,
    RUNS_OUT,
    WATCH,
    SPENT,
    PUT_RIGHT,
    UNSAFE;

    static Urgency of(Finding finding) {
        boolean wears = finding.subject().part().wears();
        return switch (finding.verdict()) {
            case HOLDS -> finding.todo() != null ? ADVICE : wears ? HOLDS : IN_ORDER;
            case RUNS_OUT -> wears ? RUNS_OUT : WATCH;
            case SPENT -> wears ? SPENT : PUT_RIGHT;
            case UNSAFE -> UNSAFE;
        };
    }
}
