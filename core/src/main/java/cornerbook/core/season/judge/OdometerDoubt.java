package cornerbook.core.season.judge;

import cornerbook.core.car.CarHistory;
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
 * An odometer that this car can hardly have, from how far it runs per day: to be typed again.
 *
 * @param sinceKm odometer at the visit before
 * @param odometerKm above {@code sinceKm}
 */
public record OdometerDoubt(LocalDate since, double sinceKm, LocalDate on, double odometerKm) {
    /** What is doubted of a visit's odometer after the visit before it; empty when it is credible or the first. */
    public static Optional<OdometerDoubt> of(CarHistory history, Visit visit) {
        return history.visits().stream()
                .filter(other -> !other.id().equals(visit.id()) && !other.date().isAfter(visit.date()))
                .max(Comparator.comparing(Visit::date).thenComparingDouble(Visit::odometerKm))
                .flatMap(before -> after(history, before, visit.date(), visit.odometerKm()));
    }

    /**
     * What is doubted of an odometer that was read after a visit.
     *
     * @param on not before the visit
     */
    public static Optional<OdometerDoubt> after(CarHistory history, Visit before, LocalDate on, double odometerKm) {
        var until = history.visits().stream()
                .filter(other ->
                        other.date().isBefore(before.date()) || other.id().equals(before.id()))
                .toList();
        var expected = new RunHistory(history, until, Knowledge.NONE).next(SeasonKind.ALL_SEASON);
        long days = Math.max(0, ChronoUnit.DAYS.between(before.date(), on));
        return odometerKm - before.odometerKm() <= CredibleDistance.mostKm(expected, days)
                ? Optional.empty()
                : Optional.of(new OdometerDoubt(before.date(), before.odometerKm(), on, odometerKm));
    }

    /** What to do, one sentence. */
    public Said question() {
        double distanceKm = odometerKm - sinceKm;
        long days = ChronoUnit.DAYS.between(since, on);
        return new SeasonSaid.OdometerToTypeAgain(
                Amount.of(odometerKm, "km"),
                Amount.of(distanceKm, "km"),
                since,
                days > 0 ? Amount.of(distanceKm / days, "km") : null);
    }
}
