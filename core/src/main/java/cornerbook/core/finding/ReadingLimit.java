package cornerbook.core.finding;

import cornerbook.core.car.Measure;
import cornerbook.core.say.Said;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Between what values a reading lies that needs no word, and what is told while the gauge is still in the hand when it does not.
 * A judge gives them from the numbers that it judges by; one reading may have several, each with its own verdict.
 *
 * @param subject which reading: its corner or its wheel, null for any; and which part the finding would be about
 * @param lowest that is allowed, in the measure's unit; the measure's own lowest where only the other end binds
 * @param highest that is allowed, the same way
 * @param outside what a reading outside comes to
 * @param sentence one line for the technician: what is asked, and what to do
 * @param source where the limit comes from
 * @param endedBy what makes the reading a matter of the past when it is done at the same corner; null where nothing does
 */
public record ReadingLimit(
        Measure measure,
        Subject subject,
        double lowest,
        double highest,
        Verdict outside,
        Said sentence,
        Said source,
        @Nullable Measure endedBy) {

    /** Nothing is too much. */
    public static ReadingLimit atLeast(
            double lowest,
            Measure measure,
            Subject subject,
            Verdict outside,
            Said sentence,
            Said source,
            @Nullable Measure endedBy) {
        return new ReadingLimit(measure, subject, lowest, measure.highest(), outside, sentence, source, endedBy);
    }

    /**
     * Whether a reading outside keeps the car from leaving: what the law or the manufacturer asks does, and what was set by hand.
     * What we advise beyond the law does not.
     */
    public boolean isBinding() {
        return subject.part() != Subject.Part.WHEEL_SET || outside == Verdict.UNSAFE;
    }

    /** Whether a value, in the measure's unit, lies within; both ends do. */
    public boolean holds(double value) {
        return lowest <= value && value <= highest;
    }

    /** The gravest of the limits that a value breaks; empty when it keeps all. */
    public static Optional<ReadingLimit> broken(List<ReadingLimit> limits, double value) {
        return limits.stream().filter(limit -> !limit.holds(value)).max(Comparator.comparing(ReadingLimit::outside));
    }
}
