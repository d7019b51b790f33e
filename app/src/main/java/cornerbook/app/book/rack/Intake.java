package cornerbook.app.book.rack;

import cornerbook.core.store.Lying;
import org.jspecify.annotations.Nullable;

/**
 * How a set was when it was taken into the store.
 *
 * @param onRims whether its tyres are on rims
 * @param pressureKpa with which it is stored, gauge; null where nobody said so
 */
public record Intake(Lying lies, boolean onRims, @Nullable Double pressureKpa, By by) {}
