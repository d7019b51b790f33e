package cornerbook.app.book.out;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A car with all that was measured and done at it. Its number, and those of its sets, wheels, visits and readings, hold within one
 * walk through the book; they tell nothing of a plate or a name, as ids and marks may.
 *
 * @param number from 1, in the order of the cars' ids
 * @param wheels all that the book knows of, also those that never ran
 * @param visits earliest first, cancelled ones too
 */
public record CarRows(
        int number,
        String id,
        String name,
        String plate,
        @Nullable String vin,
        String customer,
        @Nullable DriveLayout drive,
        @Nullable Boolean electric,
        String jurisdiction,
        List<WheelRow> wheels,
        List<VisitRows> visits) {
    public CarRows {
        wheels = List.copyOf(wheels);
        visits = List.copyOf(visits);
    }

    /**
     * A wheel of the car.
     *
     * @param set number of its set at the car, from 1
     * @param number of the wheel in its set, from 1
     * @param newDepthMm of its tyre; null where nobody has looked it up
     */
    public record WheelRow(
            String tag,
            int set,
            int number,
            SeasonKind season,
            @Nullable String tyreModel,
            String tyreSize,
            @Nullable Double newDepthMm) {}
}
