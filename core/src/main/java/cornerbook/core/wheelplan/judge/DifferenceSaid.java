package cornerbook.core.wheelplan.judge;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.AllWheelLimit;
import org.jspecify.annotations.Nullable;

/** What is said about wheels of different depth, and about the rules that a plan of them keeps. */
public interface DifferenceSaid extends Said {
    /** Names of evidence. */
    enum Label implements DifferenceSaid {
        LOWEST_GROOVES,
        ALLOWED_ON_AXLE,
        ALLOWED_AMONG_FOUR,
        AT_NEXT_VISIT
    }

    /** How it was come by, and where limits come from. */
    enum Ground implements DifferenceSaid {
        CORNER_RATES,
        MEAN_RATES,
        MANUFACTURER,
        SIDEWALL,
        SIDEWALL_AND_PLACARD,
        LOOK_IT_UP
    }

    /** What a difference does to a car. */
    enum Harm implements DifferenceSaid {
        PULLS,
        STRAINS
    }

    /** Rules that have no figure. */
    enum Plainly implements DifferenceSaid {
        ALL_WHEEL_NOT_KNOWN,
        DEEPER_PAIR_REAR
    }

    /**
     * Which tyres, at the beginning of a sentence.
     *
     * @param axle null for all four
     */
    record Tyres(@Nullable Axle axle) implements DifferenceSaid {}

    record Differ(Tyres tyres, Amount now, Amount limit) implements DifferenceSaid {}

    record WillDiffer(Tyres tyres, Amount limit) implements DifferenceSaid {}

    record DifferPlain(Tyres tyres, Amount now, boolean already, Amount limit, Harm harm) implements DifferenceSaid {}

    record DepthAt(Corner corner, Amount depth) implements DifferenceSaid {}

    record AllowedAmongFour(Amount limit, AllWheelLimit.Kind kind, Amount depth) implements DifferenceSaid {}

    record ByMethod(Said source) implements DifferenceSaid {}

    record AxleDiffersAtMost(Amount limit) implements DifferenceSaid {}

    record FourDifferAtMost(Amount limit, AllWheelLimit.Kind kind) implements DifferenceSaid {}

    record DeeperPairRearBy(Amount limit) implements DifferenceSaid {}
}
