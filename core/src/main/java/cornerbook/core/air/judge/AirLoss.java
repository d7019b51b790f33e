package cornerbook.core.air.judge;

import cornerbook.core.air.LeakRate;
import cornerbook.core.air.judge.PressureSaid.Label;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.UsedGauge;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Amount;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Air that a wheel lost between the visit that set it and the one that found it, temperature taken out.
 *
 * @param since day on which it was set
 */
record AirLoss(LeakRate rate, LocalDate since, double setKpa, double foundKpa) {
    /** A digital gauge's error either way (trade literature, 0.5 psi). */
    private static final double GAUGE_ERROR_KPA = 3.4;

    private static final double LEAST_DAYS = 1;
    private static final double MOST_DAYS = 1000;
    private static final double DAYS_PER_MONTH = 30;

    /**
     * The loss of a wheel on which the car came; empty when it was not both set and found with the tyre's temperature, or
     * lay in the store between.
     *
     * @param visits until now, the last one found it
     */
    static Optional<AirLoss> find(String tag, List<Visit> visits) {
        var visit = visits.getLast();
        var now = new StandingReadings(visit);
        var before = visits.subList(0, visits.size() - 1).reversed().stream().findFirst();
        if (before.isEmpty() || !before.get().leftOn().containsValue(tag)) {
            return Optional.empty();
        }
        var then = new StandingReadings(before.get());
        var set = then.ofWheel(Measure.PRESSURE_SET, tag);
        var setC = then.ofVehicle(Measure.TYRE_TEMPERATURE);
        var found = now.ofWheel(Measure.PRESSURE_FOUND, tag);
        var foundC = now.ofVehicle(Measure.TYRE_TEMPERATURE);
        double days = ChronoUnit.DAYS.between(before.get().date(), visit.date());
        if (set.isEmpty()
                || setC.isEmpty()
                || found.isEmpty()
                || foundC.isEmpty()
                || days < LEAST_DAYS
                || days > MOST_DAYS) {
            return Optional.empty();
        }
        double setKpa = UsedGauge.of(before.get()).kpa(set.get());
        double foundKpa = UsedGauge.of(visit).kpa(found.get());
        var rate = LeakRate.of(
                new LeakRate.At(setKpa, setC.get().value()),
                new LeakRate.At(foundKpa, foundC.get().value()),
                days,
                GAUGE_ERROR_KPA);
        return Optional.of(new AirLoss(rate, before.get().date(), setKpa, foundKpa));
    }

    boolean slowLeak() {
        return rate.answer() == LeakRate.Answer.SLOW_LEAK;
    }

    /** The day on which a tyre set to {@code fromKpa} on {@code day} has lost down to {@code toKpa}. */
    LocalDate reaches(double fromKpa, double toKpa, LocalDate day) {
        return day.plusDays((long) Math.floor((fromKpa - toKpa) / rate.lossKpa() * DAYS_PER_MONTH));
    }

    Evidence evidence() {
        return new Evidence(
                Label.AIR_LOSS,
                new PressureSaid.LossWithError(
                        new Amount(rate.lossKpa(), "kPa", 1), new Amount(rate.errorKpa(), "kPa", 1)),
                new PressureSaid.LossBetween(
                        Amount.of(setKpa, "kPa"),
                        since,
                        Amount.of(foundKpa, "kPa"),
                        Amount.of(LeakRate.COMPARED_AT_C, "°C"),
                        Amount.of(LeakRate.USUAL_LOSS_KPA, "kPa")));
    }
}
