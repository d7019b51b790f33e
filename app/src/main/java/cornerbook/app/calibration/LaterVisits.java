package cornerbook.app.calibration;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the later visits of a book tell of a car. They tell it with the gauge's error, and nothing of a set that was thrown away
 * before its day: what was condemned early stays unknown.
 */
record LaterVisits(CarHistory history) implements Aftermath {
    /** A car that comes so much before or after the day has come for it. */
    private static final int NEAR_DAYS = 45;

    private static final int FEWEST_DAYS = 60;
    private static final double SEIZED = 2;

    @Override
    public Optional<Boolean> held(WheelSet set, double limitMm, Visit visit, LocalDate day) {
        for (var later : after(visit)) {
            var lowest = lowestMm(set, later);
            if (lowest.isPresent()) {
                boolean above = lowest.getAsDouble() >= limitMm;
                if (above && !later.date().isBefore(day.minusDays(NEAR_DAYS))) {
                    return Optional.of(true);
                }
                if (!above && !later.date().isAfter(day.plusDays(NEAR_DAYS))) {
                    return Optional.of(false);
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Boolean> padSticks(Visit visit, LocalDate by) {
        return after(visit).stream()
                .findFirst()
                .filter(next -> Math.abs(ChronoUnit.DAYS.between(by, next.date())) <= NEAR_DAYS)
                .map(next -> new StandingReadings(next).all(Measure.PAD_MOVEMENT))
                .filter(pads -> !pads.isEmpty())
                .map(pads -> pads.stream().anyMatch(pad -> pad.value() >= SEIZED));
    }

    @Override
    public OptionalDouble kmPerDay(Visit visit, LocalDate until) {
        return after(visit).stream()
                .findFirst()
                .filter(next -> ChronoUnit.DAYS.between(visit.date(), next.date()) >= FEWEST_DAYS
                        && next.odometerKm() >= visit.odometerKm())
                .map(next -> OptionalDouble.of(
                        (next.odometerKm() - visit.odometerKm()) / ChronoUnit.DAYS.between(visit.date(), next.date())))
                .orElse(OptionalDouble.empty());
    }

    @Override
    public boolean isSound() {
        return false;
    }

    private List<Visit> after(Visit visit) {
        return history.visits()
                .subList(history.visits().indexOf(visit) + 1, history.visits().size());
    }

    private static OptionalDouble lowestMm(WheelSet set, Visit visit) {
        var tags = set.wheels().stream().map(Wheel::tag).toList();
        return new StandingReadings(visit)
                .all(Measure.TREAD_DEPTH).stream()
                        .filter(reading -> tags.contains(reading.wheelTag()))
                        .mapToDouble(Reading::value)
                        .min();
    }
}
