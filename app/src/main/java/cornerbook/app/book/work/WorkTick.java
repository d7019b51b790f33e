package cornerbook.app.book.work;

import cornerbook.core.corner.Corner;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A step of the work that was ticked, or whose tick was taken back; or a step or the place of a reading that was left open.
 *
 * @param id unique in the book, born at the tablet
 * @param tick which step, as the bay sheet names it; or the place of a reading
 * @param wheelTag the wheel whose fastener it is; null for every other step
 * @param counts false for a tick that was made without knowing that the step had been taken back: not done stands
 * @param seen ids of the ticks and readings that a check was made of
 * @param madeAt by the tablet's clock, which decides nothing
 */
public record WorkTick(
        String id,
        String tick,
        @Nullable String wheelTag,
        Answer answer,
        boolean counts,
        List<String> seen,
        String person,
        Instant madeAt) {
    /** Begins the name of a fastener's tick; corner and number follow. */
    public static final String FASTENER = "FASTENER.";

    public static final String RECEIVED = "RECEIVED";

    /** The car was rocked on the hoist before it went up. */
    public static final String ROCKED = "ROCKED";

    /** Another person has checked the torque. */
    public static final String SECOND_CHECK = "SECOND_CHECK";

    /** The drive that beds the brakes in was driven. */
    public static final String BURNISHED = "BURNISHED";

    public WorkTick {
        seen = List.copyOf(seen);
    }

    public WorkTick counting(boolean now) {
        return new WorkTick(id, tick, wheelTag, answer, now, seen, person, madeAt);
    }

    /** The corner of a fastener; null for every other step. */
    public @Nullable Corner corner() {
        return tick.startsWith(FASTENER)
                ? Corner.valueOf(tick.substring(FASTENER.length()).replaceFirst("\\..*", ""))
                : null;
    }

    public boolean done() {
        return answer.done();
    }

    /** Why it is left open; null where it is not. */
    public @Nullable String reason() {
        return answer.reason();
    }

    /**
     * What was said of the step.
     *
     * @param reason why it is left open, by the name of one that tablets know or in a person's own words; null where it is done, or
     *     was taken back
     */
    public record Answer(boolean done, @Nullable String reason) {
        public static final Answer DONE = new Answer(true, null);
        public static final Answer TAKEN_BACK = new Answer(false, null);

        public Answer {
            if (done && reason != null) {
                throw new IllegalArgumentException("done, and the reason is %s, expected none".formatted(reason));
            }
        }
    }
}
