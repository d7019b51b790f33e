package cornerbook.core.car;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.season.DistancePrior;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How far a car ran between its visits. An odometer that leapt farther than a car drives, or ran back, was typed wrong, or its
 * visit's date was: then nobody knows how far the car ran, and for that stretch it is reckoned as running as it does otherwise,
 * or as cars usually do. {@link #doubts()} says so wherever it is used. An odometer that was replaced begins at zero, and what
 * the old one read stands on a notice at the left door frame (49 U.S.C. 32704); with that reading the distance is known.
 */
public final class Mileage {
    /** A car may be driven so far at once, and so far each day. Common practice, no source. */
    private static final double AT_ONCE_KM = 1000;

    private static final double EACH_DAY_KM = 500;
    /** A shorter stretch tells of a journey, not of a season. Common practice, no source. */
    private static final long FEWEST_DAYS = 7;

    /**
     * Between a visit and the one before.
     *
     * @param odometerKm run by the odometer; below 0 where it ran back
     */
    private record Stretch(Visit before, Visit visit, double odometerKm, long days) {
        boolean credible() {
            return odometerKm >= 0 && odometerKm <= AT_ONCE_KM + EACH_DAY_KM * days;
        }
    }

    private final List<Stretch> stretches = new ArrayList<>();
    private final Map<String, Double> sinceFirstKm = new HashMap<>();
    private final double usualKmPerDay;

    /**
     * What a car ran between these visits.
     *
     * @param visits earliest first
     */
    public Mileage(List<Visit> visits) {
        for (int v = 1; v < visits.size(); v++) {
            var before = visits.get(v - 1);
            var visit = visits.get(v);
            stretches.add(new Stretch(
                    before,
                    visit,
                    visit.odometerKm() + replacedOdometerKm(visit).orElse(0.0) - before.odometerKm(),
                    ChronoUnit.DAYS.between(before.date(), visit.date())));
        }
        long days = stretches.stream()
                .filter(Stretch::credible)
                .mapToLong(Stretch::days)
                .sum();
        double km = stretches.stream()
                .filter(Stretch::credible)
                .mapToDouble(Stretch::odometerKm)
                .sum();
        usualKmPerDay = days > 0 ? km / days : DistancePrior.DEFAULT.meanKm();
        double sinceFirst = 0;
        visits.stream().findFirst().ifPresent(first -> sinceFirstKm.put(first.id(), 0.0));
        for (var stretch : stretches) {
            sinceFirst += km(stretch);
            sinceFirstKm.put(stretch.visit.id(), sinceFirst);
        }
    }

    /** What an odometer had read last that was replaced before a visit; empty where it was not. */
    public static Optional<Double> replacedOdometerKm(Visit visit) {
        var read = new ArrayList<Reading>(1);
        for (var reading : visit.readings()) {
            if (reading.measure() == Measure.REPLACED_ODOMETER) {
                read.add(reading);
            }
        }
        return read.isEmpty()
                ? Optional.empty()
                : new StandingReadings(read)
                        .ofVehicle(Measure.REPLACED_ODOMETER)
                        .map(Reading::value);
    }

    /** From the first visit until this one, km. */
    public double sinceFirstKm(Visit visit) {
        return Objects.requireNonNull(sinceFirstKm.get(visit.id()));
    }

    /** Average of the stretch that ends at a visit; empty at the first, within a week, or where the odometer cannot be believed. */
    public Optional<Double> kmPerDayUntil(Visit visit) {
        return stretches.stream()
                .filter(stretch -> stretch.visit.id().equals(visit.id()))
                .filter(stretch -> stretch.credible() && stretch.days >= FEWEST_DAYS)
                .map(stretch -> stretch.odometerKm / stretch.days)
                .findFirst();
    }

    /** One sentence for each stretch whose odometer cannot be believed. */
    public List<Said> doubts() {
        return stretches.stream()
                .filter(stretch -> !stretch.credible())
                .<Said>map(stretch -> new CarSaid.OdometerDoubted(
                        stretch.odometerKm < 0,
                        Amount.of(Math.abs(stretch.odometerKm), "km"),
                        stretch.before.date(),
                        stretch.visit.date(),
                        Amount.of(km(stretch), "km"),
                        Amount.of(usualKmPerDay, "km")))
                .toList();
    }

    private double km(Stretch stretch) {
        return stretch.credible() ? stretch.odometerKm : usualKmPerDay * stretch.days;
    }
}
