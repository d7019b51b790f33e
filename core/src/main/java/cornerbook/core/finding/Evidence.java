package cornerbook.core.finding;

import cornerbook.core.car.CarSaid;
import cornerbook.core.car.Reading;
import cornerbook.core.say.Said;

/** One thing that a finding rests on: what it is, its value with unit, and how it was come by (reading, rule, formula). */
public record Evidence(Said what, Said value, Said how) {
    /** How a value was come by that stands in a reading. */
    public static Said howRead(Reading reading) {
        return new CarSaid.HowRead(reading.asWritten());
    }
}
