package cornerbook.core.season.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.season.CredibleDistance;
import cornerbook.core.season.Dates;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Locale;
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
    public String question() {
        double distanceKm = odometerKm - sinceKm;
        long days = ChronoUnit.DAYS.between(since, on);
        return String.format(
                Locale.ROOT,
                "%,.0f km is %,.0f km more than on %s%s; type it again if it is right.",
                odometerKm,
                distanceKm,
                Dates.written(since),
                days > 0 ? String.format(Locale.ROOT, ", %,.0f km a day", distanceKm / days) : "");
    }
}
