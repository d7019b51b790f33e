package cornerbook.app.judge;

import cornerbook.app.log.Faults;
import java.util.function.Supplier;

/**
 * What came of judging a car, or of drawing what was judged.
 *
 * @param <T> what judging gives
 */
public sealed interface Judged<T> {
    /** It was judged. */
    record Made<T>(T value) implements Judged<T> {}

    /**
     * The program has a fault with what the book says of this car.
     *
     * @param faultId the fault's id in the log
     */
    record Failed<T>(String faultId) implements Judged<T> {}

    /**
     * Judges in the fence. What reads or writes the book belongs outside of it, unless it is one of many cars: that the
     * book refuses is no fault of judging.
     *
     * @param what is judged, by its id in the book: "visit demo-03-v7"
     */
    static <T> Judged<T> of(String what, Supplier<? extends T> judging) {
        try {
            return new Made<>(judging.get());
        } catch (RuntimeException fault) {
            return new Failed<>(Faults.note("judging " + what, fault));
        }
    }

    /** What was judged, else what serves without judging. */
    default T orElse(T otherwise) {
        return this instanceof Made<T> made ? made.value() : otherwise;
    }
}
