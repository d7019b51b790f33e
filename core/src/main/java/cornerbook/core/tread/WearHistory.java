package cornerbook.core.tread;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.util.ArrayList;
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

    /**
     * Driver by driver, for learning, in which a car has one factor. Of a tyre that others drove on before, the depth at which
     * somebody came is known from readings alone, and what was worn in a season of two is left out.
     */
    public List<WearHistory> byDriver(Drivers drivers) {
        if (drivers.equals(Drivers.ONE)) {
            return List.of(this);
        }
        var histories = new ArrayList<WearHistory>();
        int came = 0;
        for (int change : drivers.changes()) {
            histories.add(between(came, change));
            came = change;
        }
        histories.add(between(came, Integer.MAX_VALUE));
        return histories;
    }

    /**
     * What was read from one visit on until before another.
     *
     * @param came number of the season in which the driver came
     */
    private WearHistory between(int came, int left) {
        var read = readings.stream()
                .filter(reading -> reading.visit() >= came && reading.visit() < left)
                .toList();
        var depths = new ArrayList<>(newDepths);
        for (var reading : read) {
            if (reading.run().legs().stream().anyMatch(leg -> leg.season() <= came)) {
                depths.set(
                        reading.tyre(),
                        NewDepth.unknown(newDepths.get(reading.tyre()).depthMm()));
            }
        }
        return new WearHistory(
                car,
                drive,
                season,
                tyreModel,
                depths,
                read.stream().map(reading -> reading.after(came)).toList());
    }

    /** Without readings that are so far off, as these parameters have it, that they tell of no wear. */
    public WearHistory believed(WearParameters parameters) {
        return new WearHistory(
                car,
                drive,
                season,
                tyreModel,
                newDepths,
                new DoubtfulReadings(new WearModel(parameters), newDepths, readings, Drivers.ONE).believed());
    }
}
