package cornerbook.core.tread.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Said;
import cornerbook.core.tread.TreadPattern;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said about tread. */
public interface TreadSaid extends Said {
    /** Names of evidence. */
    enum Label implements TreadSaid {
        LOWEST_GROOVE,
        WEAR_THERE,
        DISTANCE,
        WEAR_TO_START_FROM,
        SEASONS_MINIMUM,
        LOWEST_AT_FITTING,
        CONTRADICTS_WEAR,
        INNER_CENTRE_OUTER,
        CHANCE_OF_CAUSE,
        WEAR_HERE_AND_THERE,
        CHANCE_OF_HALF_AS_FAST_AGAIN,
        /** What is left where the model expects nothing. */
        WORN_OUT,
        WORN_OUT_BY_DISTANCE,
        ALL_READINGS_OF_SET,
        ALL_READINGS,
        MEAN_OF_GROOVES,
        READ_AGAIN,
        PATTERN_SOURCE,
        WEAR_NOT_LEARNED,
        AXLE_POINTS_TO,
        LEFT_AS_IT_IS_AND_SET_RIGHT
    }

    record NeverMeasured(SetOf set) implements TreadSaid {}

    /** While the gauge is in the hand. */
    record NotOnTheRoad(Amount minimum) implements TreadSaid {}

    /** The same of what its season asks. */
    record BelowMinimum(SetOf set, Amount minimum) implements TreadSaid {}

    record DepthAtFitting(Amount lowest, Amount wise, boolean below) implements TreadSaid {}

    /**
     * A set that was read below its minimum, or has been run below it since: no chance is left to tell.
     *
     * @param law whether the law asks for that minimum, else we do
     */
    record SetBelow(SeasonKind season, SetSpan.Role role, Said depth, Amount minimum, boolean law)
            implements TreadSaid {}

    record SetHolds(SeasonKind season, SetSpan.Role role, Said depth, Chance chance, LocalDate until)
            implements TreadSaid {}

    /**
     * What the law asks, and what we advise.
     *
     * @param legalIsLaw false where nobody knows whose law holds: then it is the least that the house asks
     * @param season null where the law asks as much
     */
    record Asked(Amount legal, boolean legalIsLaw, @Nullable Amount season, boolean seasonIsLaw) implements TreadSaid {}

    record BelowLegal(SetOf set, Said depth, Said minimum) implements TreadSaid {}

    record UsedUp(SetOf set, Said depth, Said minimum) implements TreadSaid {}

    record WillNotLast(SetOf set, Said depth, Said minimum, LocalDate sureUntil) implements TreadSaid {}

    record StoredWillNotLast(SetOf set, Said depth, Said minimum) implements TreadSaid {}

    /**
     * Of a set on the car.
     *
     * @param wearWasSeen whether its own readings say so, and not only a usual wear
     */
    record MayNotLast(SetOf set, Said depth, Said minimum, boolean wearWasSeen) implements TreadSaid {}

    /**
     * Of a set that comes off.
     *
     * @param wearWasSeen whether the wear is the car's own, or only what is usual
     */
    record StoredMayNotLast(SetOf set, Said depth, Said minimum, boolean wearWasSeen) implements TreadSaid {}

    record Lasts(SetOf set, Said depth, Said minimum) implements TreadSaid {}

    record StoredLasts(SetOf set, Said depth, Said minimum) implements TreadSaid {}

    /** A groove of a wheel with what was found there. */
    record GrooveAt(Corner corner, String tag, Spot groove, Said depth) implements TreadSaid {}

    /**
     * What a rate of wear rests on.
     *
     * @param readings in that groove
     * @param own of all readings of the set
     */
    record CornerRateModel(int readings, OwnShare own) implements TreadSaid {}

    /**
     * The least depths that count.
     *
     * @param law whether a law of the place sets the second; else it is our own where no law is on file
     */
    record Minimum(Amount season, Amount legal, boolean law) implements TreadSaid {}

    record Grown(
            Corner corner, String tag, Spot groove, Amount last, LocalDate lastOn, Amount before, LocalDate beforeOn)
            implements TreadSaid {}

    record ChanceUntil(LocalDate until) implements TreadSaid {}

    record Integrated(Chance asked) implements TreadSaid {}

    /** Depths side by side, with the unit once. */
    record Across(Said inner, Said centre, Said outer) implements TreadSaid {}

    record WearsUnevenly(String tag, Said across) implements TreadSaid {}

    /** How far a tyre still goes as it is, and once what wears it is put right. */
    record TwoDistances(Amount asItIs, Amount setRight) implements TreadSaid {}

    record UnevenBy(TreadPattern.Cause cause) implements TreadSaid {}

    record NamedFrom(Chance chance, Amount uneven) implements TreadSaid {}

    record ContrastNamedFrom(Chance chance) implements TreadSaid {}

    record WearsFaster(Corner corner, Amount times) implements TreadSaid {}

    record OneSideFaster() implements TreadSaid {}

    record TwoRates(Amount here, Amount there) implements TreadSaid {}

    record StartRates(Amount front, Amount rear, Amount spreadPercent) implements TreadSaid {}

    record LearnedFrom(
            int readings,
            int cars,
            SeasonKind season,
            DriveLayout drive,
            @Nullable String tyreModel,
            LocalDate learnedOn,
            @Nullable Amount widened,
            @Nullable KnowledgeOrigin others)
            implements TreadSaid {}

    /** Somebody else has driven the car since the visit before a day: what was seen before of its wear counts in part. */
    record OtherDriver(Said usual, LocalDate told) implements TreadSaid {}

    /** No car of the book is like this one. */
    record LearnedElsewhere(
            KnowledgeOrigin others,
            SeasonKind season,
            DriveLayout drive,
            @Nullable String tyreModel,
            @Nullable Amount widened)
            implements TreadSaid {}

    /** What was expected, and what to do about a reading that is not: the same for every incredible value. */
    record Expected(Between expected) implements TreadSaid {}

    record ReadAgain(String tag, Corner corner, Spot groove, Amount read, Between expected) implements TreadSaid {}

    record OtherDepth(String tag, Spot groove, Amount read, Amount takenOff, Amount within) implements TreadSaid {}

    record OtherDateCode(String tag, String read, String expected) implements TreadSaid {}

    record OtherSensor(String tag, String read, String expected) implements TreadSaid {}
}
