package cornerbook.app.book.visit;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Why something of a visit is put right, and who says so.
 *
 * @param entryId born at a tablet, so that an entry that is sent again counts once; null where it was typed elsewhere
 * @param person who puts it right; null where nobody is named
 * @param on the day
 */
public record Because(
        @Nullable String entryId, String reason, @Nullable String person, LocalDate on) {}
