package cornerbook.app.book.photo;

import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A photo of a visit; its content is asked for on its own.
 *
 * @param id unique in the book, born at the tablet
 * @param corner null when it shows no single corner
 * @param part what findings are about that it belongs to; null when nobody said so
 * @param onSheet whether the hand-over sheet shows it
 */
public record Photo(
        String id,
        @Nullable Corner corner,
        Subject.@Nullable Part part,
        String person,
        Instant madeAt,
        boolean onSheet) {}
