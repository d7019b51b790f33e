package cornerbook.app.book.car;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One value of a wheel or its set that was put right.
 *
 * @param tag of the wheel, or id of the set
 * @param what which value, in words, as "load index"
 * @param before null where nothing was known, as {@code after}
 */
public record WheelChange(
        String tag,
        String what,
        @Nullable String before,
        @Nullable String after,
        LocalDate on) {}
