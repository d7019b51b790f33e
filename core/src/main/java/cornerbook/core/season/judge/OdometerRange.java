package cornerbook.core.season.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.season.CredibleDistance;
import cornerbook.core.season.SeasonSaid;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;

/**
 * What the odometer of a car can be expected to read: not less than at the visit before, and not farther than this car runs
 * ({@link CredibleDistance}). What lies outside may be true, and is asked about once.
 *
 * @param since date of the visit before
 * @param lowestKm odometer at the visit before
 * @param highestKm above {@code lowestKm}
 */
public record OdometerRange(LocalDate since, double lowestKm, double highestKm) {
    /** What is expected at a visit, whatever its odometer says; empty for the first, and where the odometer was replaced since. */
    public static Optional<OdometerRange> of(CarHistory history, Visit visit) {
        return Mileage.replacedOdometerKm(visit).isPresent()
                ? Optional.empty()
                : history.visits().stream()
                        .filter(other ->
                                !other.id().equals(visit.id()) && !other.date().isAfter(visit.date()))
                        .max(Comparator.comparing(Visit::date).thenComparingDouble(Visit::odometerKm))
                        .map(before -> after(history, before, visit.date()));
    }

    /**
     * What is expected on a day after a visit.
     *
     * @param on not before the visit
     */
    public static OdometerRange after(CarHistory history, Visit before, LocalDate on) {
        var until = history.visits().stream()
                .filter(other ->
                        other.date().isBefore(before.date()) || other.id().equals(before.id()))
                .toList();
        var expected = new RunHistory(history, until, Knowledge.NONE).next(SeasonKind.ALL_SEASON);
        long days = Math.max(0, ChronoUnit.DAYS.between(before.date(), on));
        return new OdometerRange(
                before.date(), before.odometerKm(), before.odometerKm() + CredibleDistance.mostKm(expected, days));
    }

    public boolean contains(double odometerKm) {
        return odometerKm >= lowestKm && odometerKm <= highestKm;
    }

    /** What is asked about a value outside, one sentence: the same for each. */
    public Said question() {
        return new SeasonSaid.OdometerExpected(Amount.of(lowestKm, "km"), since, Amount.of(highestKm, "km"));
    }
}
