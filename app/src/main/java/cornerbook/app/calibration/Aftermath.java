package cornerbook.app.calibration;

import cornerbook.app.calibration.fleet.Truth;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/** What became of a car after a visit: as it was simulated, or as far as later visits of a book tell. */
interface Aftermath {
    /**
     * Whether every groove of a set was at or above a limit on a day; empty when nobody knows.
     *
     * @param visit at which it was forecast
     */
    Optional<Boolean> held(WheelSet set, double limitMm, Visit visit, LocalDate day);

    /** Whether a pad that was free after a visit stuck by a day. */
    Optional<Boolean> padSticks(Visit visit, LocalDate by);

    /** Mean distance per day after a visit. */
    OptionalDouble kmPerDay(Visit visit, LocalDate until);

    /** Whether it is known that nothing is wrong with the car that wears its tyres unevenly. */
    boolean isSound();

    static Aftermath of(Truth truth) {
        return new Aftermath() {
            @Override
            public Optional<Boolean> held(WheelSet set, double limitMm, Visit visit, LocalDate day) {
                return Optional.of(truth.lowestMm(set, visit, day) >= limitMm);
            }

            @Override
            public Optional<Boolean> padSticks(Visit visit, LocalDate by) {
                return Optional.of(truth.padSticks(visit, by));
            }

            @Override
            public OptionalDouble kmPerDay(Visit visit, LocalDate until) {
                return OptionalDouble.of(truth.km(visit.date(), until) / ChronoUnit.DAYS.between(visit.date(), until));
            }

            @Override
            public boolean isSound() {
                return true;
            }
        };
    }
}
