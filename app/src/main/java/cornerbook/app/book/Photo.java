package cornerbook.app.book;

import cornerbook.core.corner.Corner;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A photo of a visit; its content is asked for on its own.
 *
 * @param id unique in the book, born at the tablet
 * @param corner null when it shows no single corner
 */
public record Photo(String id, @Nullable Corner corner, String person, Instant madeAt) {}
