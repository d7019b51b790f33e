package cornerbook.core.car;

import cornerbook.core.corner.SeasonKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The wheels that go on a car together.
 *
 * @param storePlace where it lies while it is off the car, or null
 */
public record WheelSet(
        String id, SeasonKind season, @Nullable String storePlace, List<Wheel> wheels) {
    public WheelSet {
        wheels = List.copyOf(wheels);
    }
}
