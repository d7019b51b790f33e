package cornerbook.core.tread;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What is said of the wheel alignment that a pattern of wear points to. */
public interface AlignmentSaid extends Said {
    /** What is put in, as a refusal calls it. */
    enum Input implements AlignmentSaid {
        GROOVE,
        NEW_TREAD,
        END_TREAD,
        RUN
    }

    /** What is computed. */
    enum Computed implements AlignmentSaid {
        CHANCE,
        LEFT_AS_IT_IS,
        LEFT_SET_RIGHT
    }

    /** How it is computed, where no number goes in. */
    enum Way implements AlignmentSaid {
        AMONG_CAUSES
    }

    /** Where it comes from. */
    enum Origin implements AlignmentSaid {
        PATTERN,
        AS_IT_WORE
    }

    /** What to mind. */
    enum Caution implements AlignmentSaid {
        LOOK_FOR_PLAY,
        FEEL_ACROSS,
        MEASURE_FIRST
    }

    /** What the wear across both tyres of an axle points to. */
    record PointsTo(AxlePattern.Cause cause) implements AlignmentSaid {}

    /** A groove that is deeper than it was. */
    record DeeperThanNew(Amount groove, Amount whenNew) implements AlignmentSaid {}
}
