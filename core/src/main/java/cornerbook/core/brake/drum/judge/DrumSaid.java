package cornerbook.core.brake.drum.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What is said of drums and the lining of their shoes. */
public interface DrumSaid extends Said {
    /** What a piece of evidence is. */
    enum Label implements DrumSaid {
        LINING,
        LINING_OVER_RIVETS,
        DIAMETER,
        DISCARD_DIAMETER,
        CRACKS,
        SOAKED
    }

    /** How something was come by. */
    enum Ground implements DrumSaid {
        DISCARD_DIAMETER,
        USUAL_PARKING_LINING,
        CRACK_LAW,
        SOAKED_LAW
    }

    /** What was not read. */
    enum NotRead {
        PARKING_LINING,
        LINING,
        DRUM
    }

    record LiningTitle(Corner corner, Amount lining, Amount minimum) implements DrumSaid {}

    record NewShoesTitle(Corner corner, Amount lining) implements DrumSaid {}

    record NewShoes(Corner corner) implements DrumSaid {}

    record BelowLegal(Corner corner) implements DrumSaid {}

    record AtLimit(Corner corner) implements DrumSaid {}

    record LikelyAtLimit(Corner corner) implements DrumSaid {}

    record MayReachLimit(Corner corner) implements DrumSaid {}

    record Enough(Corner corner) implements DrumSaid {}

    /** Lining that nobody measured and that must not stay. */
    record SoakedTitle(Corner corner) implements DrumSaid {}

    record Soaked() implements DrumSaid {}

    /** The shoes of the parking brake inside the disc, their lining as it was read. */
    record ParkingLiningTitle(Corner corner, Amount lining, Amount minimum) implements DrumSaid {}

    record NewParkingShoesTitle(Corner corner) implements DrumSaid {}

    record SoakedParkingShoesTitle(Corner corner) implements DrumSaid {}

    record NewParkingShoes(Corner corner) implements DrumSaid {}

    record ParkingLiningWorn(Corner corner) implements DrumSaid {}

    record ParkingLiningEnough(Corner corner) implements DrumSaid {}

    /** The lining of the parking brake cannot hold when it is soaked. */
    record ParkingLiningSoaked() implements DrumSaid {}

    /** While the gauge is in the hand: the minimum of the parking brake's lining. */
    record ReplaceParkingShoes(Amount minimum) implements DrumSaid {}

    record LiningSource(Said citation) implements DrumSaid {}

    record DrumTitle(Corner corner, Amount diameter, Amount discard) implements DrumSaid {}

    record NewDrumTitle(Corner corner) implements DrumSaid {}

    record NewDrum(Corner corner) implements DrumSaid {}

    record BeyondDiscard(Corner corner) implements DrumSaid {}

    record LikelyAtDiscard(Corner corner) implements DrumSaid {}

    record MayReachDiscard(Corner corner) implements DrumSaid {}

    record WithinDiscard(Corner corner) implements DrumSaid {}

    record Cracked(boolean deep) implements DrumSaid {}

    record CrackedTitle(Corner corner) implements DrumSaid {}

    record NotJudged(Corner corner, NotRead what) implements DrumSaid {}

    /** While the gauge is in the hand: below the law. */
    record NotOnTheRoad(Amount minimum) implements DrumSaid {}

    /** The same of the minimum of the lining. */
    record ReplaceShoes(Amount minimum) implements DrumSaid {}

    /** The same of the drum. */
    record ReplaceDrums(Amount discard) implements DrumSaid {}
}
