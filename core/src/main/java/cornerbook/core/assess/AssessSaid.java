package cornerbook.core.assess;

import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is said of findings that go together or make each other worse, and of a history that cannot stand. */
public interface AssessSaid extends Said {
    /**
     * What a finding says to the customer.
     *
     * @param place what the sentence itself does not name; null for nothing
     */
    record Advised(@Nullable Said place, Said words) implements AssessSaid {}

    record AllCorners() implements AssessSaid {}

    /** What is to be done, and where. */
    record Task(Said action, @Nullable Said place) implements AssessSaid {}

    /** Of which part, what is to be done, and where. */
    record Work(Said part, Said action, @Nullable Said place) implements AssessSaid {}

    /** What is to be done, with what is to be done before it. */
    record Asked(Task task, Said words) implements AssessSaid {}

    /** The same of other corners or wheels. */
    record Likewise(Said sentence, List<Said> places) implements AssessSaid {}

    record WheelTwice(String tag) implements AssessSaid {}

    record VisitTwice(String id) implements AssessSaid {}

    record ReadingTwice(String id) implements AssessSaid {}

    record DateInFuture(LocalDate date, LocalDate today) implements AssessSaid {}

    record DateLongAgo(LocalDate date, LocalDate earliest) implements AssessSaid {}

    record NextVisitFarAhead(LocalDate due, int years) implements AssessSaid {}

    record NoSuchWheel(String tag) implements AssessSaid {}

    record WheelAtTwoCorners(String tag, Corner first, Corner second) implements AssessSaid {}

    /**
     * A reading of a wheel that was elsewhere.
     *
     * @param there the wheels that were at the corner; null when none was
     */
    record WheelNotThere(
            String tag, Corner corner, @Nullable Said there) implements AssessSaid {}

    record DeeperThanNew(Amount depth, String tag, Amount whenNew, Amount most) implements AssessSaid {}

    record CorrectsNothing(String id) implements AssessSaid {}

    record CorrectsItself(String id, String by) implements AssessSaid {}

    record VinCheckDigit(Quoted vin, Quoted found, String expected) implements AssessSaid {}

    record CrackAt(Listed corners) implements AssessSaid {}

    record DragAt(Listed corners) implements AssessSaid {}

    record FluidBoilsTooEarly() implements AssessSaid {}

    record TogetherTitle(Listed faults) implements AssessSaid {}

    record TogetherUnsafe(Listed faults) implements AssessSaid {}

    /** Why they are graver together. */
    enum TogetherGround implements AssessSaid {
        HEAT
    }
}
