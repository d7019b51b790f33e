package cornerbook.app.book.car;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One value of a wheel or its set that was put right.
 *
 * @param tag of the wheel, or id of the set
 * @param what which value, as the book and visit files name it: "load index"
 * @param before null where nothing was known, as {@code after}
 */
public record WheelChange(
        String tag,
        String what,
        @Nullable String before,
        @Nullable String after,
        LocalDate on) {
    /** Which value, for people. */
    public Said label() {
        return WheelValue.find(what).<Said>map(value -> value).orElseGet(() -> Said.verbatim(what));
    }

    /** What stood there, for people; empty where nothing was known. */
    public Optional<Said> findBefore() {
        return Optional.ofNullable(before).map(this::said);
    }

    /** What stands there since, for people; empty where nothing is known. */
    public Optional<Said> findAfter() {
        return Optional.ofNullable(after).map(this::said);
    }

    private Said said(String written) {
        return WheelValue.find(what).map(value -> value.said(written)).orElseGet(() -> Said.verbatim(written));
    }
}
