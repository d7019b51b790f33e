package cornerbook.core.brake.disc.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What is said of discs: their thickness, how true they run, and the state of their faces. */
public interface DiscSaid extends Said {
    /** What a piece of evidence is, or its value where that is no number. */
    enum Label implements DiscSaid {
        THICKNESS,
        THICKNESS_VARIATION,
        MACHINING_ALLOWANCE,
        NONE,
        LATERAL_RUNOUT,
        AFTER_MOVED_ON,
        UNDER_RUST,
        LIP,
        HUB_PART,
        DISC_PART,
        LEAST_RUNOUT
    }

    /** How something was come by. */
    enum Ground implements DiscSaid {
        READ_AT_THIS_VISIT,
        LIP,
        FIRST_HARMONIC,
        DISC
    }

    /** What is wrong with a disc, in its title. */
    enum Fault implements DiscSaid {
        THICKNESS_VARIES,
        RUNS_OUT_OF_TRUE,
        RUSTY,
        PITTED,
        CRACKED
    }

    /** Where most of a runout comes from. */
    enum Origin {
        HUB,
        DISC,
        BOTH
    }

    /** Null for the faults: there is none. */
    record Title(
            Corner corner,
            Amount thickness,
            Amount minimum,
            @Nullable Listed faults) implements DiscSaid {}

    /** While the gauge is in the hand. */
    record Replace(Amount minimum) implements DiscSaid {}

    record IsNew(Corner corner) implements DiscSaid {}

    record BelowMinimum(Corner corner) implements DiscSaid {}

    record LikelyAtMinimum(Corner corner) implements DiscSaid {}

    record MayReachMinimum(Corner corner) implements DiscSaid {}

    record ThickEnough(Corner corner) implements DiscSaid {}

    record Varies() implements DiscSaid {}

    record MayBeMachined(Amount perSide) implements DiscSaid {}

    record TooThinToMachine() implements DiscSaid {}

    record RunsOutOfTrue() implements DiscSaid {}

    record Runout(Origin origin, int move, int studs, Amount best) implements DiscSaid {}

    record Rusty() implements DiscSaid {}

    record RustAgain() implements DiscSaid {}

    record Pitted(Spot side) implements DiscSaid {}

    record Cracked(boolean deep) implements DiscSaid {}

    record NotRead(Corner corner) implements DiscSaid {}

    record NoRefinishThickness(Corner corner) implements DiscSaid {}

    record NoPoints(Corner corner) implements DiscSaid {}

    record NoSuchStud(Corner corner, int stud, int studs) implements DiscSaid {}

    record RunoutNotSplit(Corner corner) implements DiscSaid {}

    record ThinnestOf(int points) implements DiscSaid {}

    record AroundTheDisc(Between fromEdge) implements DiscSaid {}

    record WithLimit(Amount value, Amount limit) implements DiscSaid {}

    record ThickestLessThinnest(Said how) implements DiscSaid {}

    record PerSide(Amount allowance) implements DiscSaid {}

    record AboveRefinish(Amount refinish) implements DiscSaid {}

    record ReindexFirst(Said how) implements DiscSaid {}

    record ShareOfFace(Amount share, Spot side) implements DiscSaid {}

    record RustFrom(Amount share) implements DiscSaid {}

    record Vector(Amount runout, Amount highSpotDegrees) implements DiscSaid {}

    record MovedOn(Amount runout, int studs) implements DiscSaid {}

    record OverPositions(int positions) implements DiscSaid {}
}
