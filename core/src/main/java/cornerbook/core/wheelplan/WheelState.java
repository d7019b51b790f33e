package cornerbook.core.wheelplan;

import cornerbook.core.corner.Corner;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One wheel that can be placed.
 *
 * @param depthsMm depth of each groove now
 * @param lastCorner where it ran last, or null when it never ran
 */
public record WheelState(
        String tag,
        String tyreSize,
        boolean directional,
        List<Double> depthsMm,
        @Nullable Corner lastCorner) {
    public WheelState {
        depthsMm = List.copyOf(depthsMm);
        if (depthsMm.isEmpty()) {
            throw new IllegalArgumentException("wheel " + tag + " has no depth, expected at least one groove");
        }
    }
}
