package cornerbook.core.sight.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.ScaleWord;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What is said of what was seen. */
interface SightSaid extends Said {
    /**
     * For the technician.
     *
     * @param word how grave it is; null for a sign that is there or not
     */
    record SignTitle(
            @Nullable Corner corner, Measure sign, @Nullable ScaleWord word) implements SightSaid {}

    /**
     * For the customer.
     *
     * @param at null for the whole car
     * @param verdict what it comes to on the car
     * @param comesOff whether it is about a wheel that does not leave on the car
     */
    record SignSeen(@Nullable CornerName at, Measure sign, Verdict verdict, boolean comesOff) implements SightSaid {}

    record PunctureTitle(Corner corner, Puncture puncture, boolean repaired) implements SightSaid {}

    record Punctured(CornerName at, Puncture puncture, boolean repaired, boolean comesOff) implements SightSaid {}

    enum KeyMissing implements SightSaid {
        TITLE,
        PLAIN
    }

    /** Where a rule comes from. */
    enum Ground implements SightSaid {
        /** Québec, C-24.2, r. 32, s. 170 (version of 2024). */
        TYRE_LAW,
        /** The same, ss. 161 and 170. */
        WHEEL_LAW,
        /** The same, s. 152. */
        SUSPENSION_LAW,
        /** The same, s. 174 (version of 2019). */
        BRAKE_LAW,
        PUNCTURE_RULES,
        COMMON_PRACTICE
    }
}
