package cornerbook.core.tread;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was read of one wheel set on one car.
 *
 * @param car tells cars apart
 * @param tyreModel the model of all its tyres; null when they are of several
 * @param newDepths depth when new to the book, by tyre number
 */
public record WearHistory(
        String car,
        DriveLayout drive,
        SeasonKind season,
        @Nullable String tyreModel,
        List<NewDepth> newDepths,
        List<TreadReading> readings) {
    public WearHistory {
        newDepths = List.copyOf(newDepths);
        readings = List.copyOf(readings);
    }

    /** Without readings that are so far off, as these parameters have it, that they tell of no wear. */
    public WearHistory believed(WearParameters parameters) {
        return new WearHistory(
                car,
                drive,
                season,
                tyreModel,
                newDepths,
                new DoubtfulReadings(new WearModel(parameters), newDepths, readings).believed());
    }
}
