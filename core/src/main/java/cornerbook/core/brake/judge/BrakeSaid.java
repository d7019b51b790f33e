package cornerbook.core.brake.judge;

import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.car.MeasureName;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.finding.SameWork;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Chance;
import cornerbook.core.say.Listed;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What is said of brakes whatever their part: how they wore, what an axle needs as a pair, what was left open, what cannot be read. */
public interface BrakeSaid extends Said {
    /** What a piece of evidence is, or its value where that is no number. */
    enum Label implements BrakeSaid {
        MINIMUM,
        REPLACED,
        AT_THIS_VISIT,
        NOT_MEASURED,
        ABOVE_MINIMUM,
        DIRECTIVE_CATEGORY
    }

    /** How something was come by. */
    enum Ground implements BrakeSaid {
        VEHICLE_SPECIFICATION,
        RECORDED,
        REPLACED_AT_THIS_VISIT,
        THINNEST_READING,
        WEAR_AND_DISTANCE,
        BOTH_SIDES_TOGETHER
    }

    /** Category of a defect in Directive 2014/45/EU. */
    enum Category implements BrakeSaid {
        MAJOR,
        MAJOR_WHEN_SIGNIFICANTLY_WORN,
        DANGEROUS
    }

    /**
     * The least that its place asks for.
     *
     * @param law whether a law of the place sets it; else it is our own where no law is on file
     */
    record LeastForTheRoad(boolean law) implements BrakeSaid {
        public static LeastForTheRoad of(Limit limit) {
            return new LeastForTheRoad(!limit.isHouseRule());
        }
    }

    /** What is replaced on both sides of an axle. */
    enum Pair implements BrakeSaid {
        PADS,
        DISCS,
        SHOES,
        DRUMS;

        /** What of a single corner it is. */
        public Subject.Part part() {
            return switch (this) {
                case PADS -> Subject.Part.PAD;
                case DISCS -> Subject.Part.DISC;
                case SHOES -> Subject.Part.SHOE;
                case DRUMS -> Subject.Part.DRUM;
            };
        }
    }

    record ReplacePair(Axle axle, Pair pair) implements BrakeSaid, SameWork {
        @Override
        public boolean isAskedForBy(Finding finding) {
            var todo = finding.todo();
            var corner = finding.subject().corner();
            return todo != null
                    && todo.action() == Todo.Action.REPLACE_PAIR
                    && finding.subject().part() == pair.part()
                    && corner != null
                    && corner.axle() == axle;
        }
    }

    record PairReplacedOnOneSide(Axle axle, Pair pair, Corner corner) implements BrakeSaid {}

    /**
     * What the wear of one side or of both asks for.
     *
     * @param corners that ask for it
     * @param count how many they are
     */
    record PairAskedFor(Axle axle, Pair pair, Listed corners, int count) implements BrakeSaid {}

    /** Where only readings ask for it that the gauge cannot tell from the limit. */
    record OnceReadAgain() implements BrakeSaid {}

    /** Null for the horizon: beyond four years. */
    record HoldsWith(
            Chance chance, Amount confidence, @Nullable LocalDate horizon) implements BrakeSaid {}

    /** Of the pad on a side; of the disc where there is no side. */
    record WearOf(@Nullable Spot side) implements BrakeSaid {}

    /** Of the lining of the shoes; else of the drum. */
    record WearOfDrum(boolean lining) implements BrakeSaid {}

    /**
     * What a rate of wear rests on.
     *
     * @param own how much of the rate the readings are
     */
    record ThicknessModel(int readings, boolean sinceNew, OwnShare own, PlusMinus distancePerDay)
            implements BrakeSaid {}

    record NotAsExpected(Between expected) implements BrakeSaid {}

    record ThickerThanNew(
            MeasureName measure, @Nullable Spot spot, Corner corner, Amount read, Amount whenNew, Amount most)
            implements BrakeSaid {}

    record NarrowerThanNew(Corner corner, Amount read, Amount whenNew, Amount least) implements BrakeSaid {}

    record MovedOnByNoStud(Corner corner, Amount by, int most, int studs) implements BrakeSaid {}

    record DialNotFartherOut(Corner corner, Amount onDisc, Amount onHub) implements BrakeSaid {}

    record WrongCaliper(MeasureName measure, Corner corner, Caliper caliper) implements BrakeSaid {}

    record NotUsedForCaliper(Corner corner, MeasureName measure, Caliper caliper) implements BrakeSaid {}

    /** The brake, or its number of pistons, is another by the car's data. */
    record NotThere(MeasureName measure, Corner corner) implements BrakeSaid {}

    record NotUsedThere(Corner corner, MeasureName measure) implements BrakeSaid {}
}
