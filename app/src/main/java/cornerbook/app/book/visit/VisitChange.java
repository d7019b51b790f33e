package cornerbook.app.book.visit;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One value of a visit that was put right.
 *
 * @param what which value, as the book and visit files name it: "odometer"
 * @param before as "382000 km"
 * @param person who put it right; null where that was not kept
 */
public record VisitChange(
        String visitId,
        String what,
        String before,
        String after,
        String reason,
        @Nullable String person,
        LocalDate on) {
    /** Which value, for people. */
    public Said label() {
        return VisitValue.find(what).<Said>map(value -> value).orElseGet(() -> Said.verbatim(what));
    }

    /** What stood there, for people. */
    public Said saidBefore() {
        return said(before);
    }

    /** What stands there since, for people. */
    public Said saidAfter() {
        return said(after);
    }

    private Said said(String written) {
        return VisitValue.find(what).map(value -> value.said(written)).orElseGet(() -> Said.verbatim(written));
    }
}
