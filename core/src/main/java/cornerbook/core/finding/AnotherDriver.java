package cornerbook.core.finding;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import java.util.ArrayList;

/** Whether somebody else drives a car since the visit before: its new owner, another of the house, another user of a fleet's car. */
public final class AnotherDriver {
    private AnotherDriver() {}

    /** Whether a visit says so; where it says nothing, the same driver is taken to go on. */
    public static boolean came(Visit visit) {
        var told = new ArrayList<Reading>(1);
        for (var reading : visit.readings()) {
            if (reading.measure() == Measure.ANOTHER_DRIVER) {
                told.add(reading);
            }
        }
        return new StandingReadings(told)
                .ofVehicle(Measure.ANOTHER_DRIVER)
                .filter(reading -> Math.round(reading.value()) == 1)
                .isPresent();
    }
}
