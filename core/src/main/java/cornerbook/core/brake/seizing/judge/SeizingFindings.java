package cornerbook.core.brake.seizing.judge;

import cornerbook.core.say.Said;

import cornerbook.core.brake.seizing.CarUse;
import cornerbook.core.brake.seizing.Chance;
import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.brake.seizing.SeizingHazard;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Dates;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Finding on the pads of a car together: the chance that one of them seizes before the next visit. */
public final class SeizingFindings {
    private static final double EVEN = 0.5;
    private static final long MOST_DAYS = 1461;

    private SeizingFindings() {}

    /**
     * The finding; empty, with a line in {@code notJudged}, when no service of the guides is in the book.
     *
     * @param visits until this one, it included
     * @param risk the chance that is still taken, above 0 and below 1
     */
    public static Optional<Finding> of(
            Vehicle vehicle,
            List<Visit> visits,
            LocalDate nextVisit,
            double kmPerDay,
            Knowledge knowledge,
            Limit risk,
            List<Said> notJudged) {
        var date = visits.getLast().date();
        var clocks = PadClock.of(visits);
        var running =
                clocks.stream().map(PadClock::running).filter(Objects::nonNull).toList();
        if (running.isEmpty()) {
            notJudged.add(Said.verbatim("seizing of pads: no cleaning of their guides is in the book"));
            return Optional.empty();
        }
        if (!nextVisit.isAfter(date)) {
            notJudged.add(Said.verbatim("seizing of pads: the next visit is not after this one"));
            return Optional.empty();
        }
        var curve = SeizingCurve.of(vehicle, clocks, kmPerDay, knowledge);
        var exposure = curve.exposure();
        var seen = curve.seen();
        var pads = new PadsTogether(curve.hazard(), exposure, running, date, risk.value());
        double chance = pads.chance(nextVisit, PadsTogether.MIDDLE);
        var horizon = pads.horizon();
        var oldest = running.stream().min(LocalDate::compareTo).orElseThrow();
        double interval = pads.hazard.serviceIntervalMonths(exposure, risk.value(), running.size());
        var verdict = chance > EVEN ? Verdict.SPENT : chance > risk.value() ? Verdict.RUNS_OUT : Verdict.HOLDS;
        return Optional.of(
                new Finding(
                        new Subject(Subject.Part.PAD_SEIZING, null, null, null),
                        verdict,
                        "Chance that one of %d pads seizes before the next visit: %.0f %%"
                                .formatted(running.size(), 100 * chance),
                        switch (verdict) {
                            case HOLDS -> "The brake pads are likely to stay free until the next visit.";
                            case RUNS_OUT ->
                                "A brake pad may seize before the next visit. Have the guides cleaned and lubricated.";
                            case SPENT, UNSAFE ->
                                "A brake pad is likely to seize before the next visit. The guides have to be cleaned and lubricated now.";
                        },
                        horizon,
                        1 - chance,
                        horizon == null ? 1 : Math.clamp(PadClock.months(date, horizon) / interval, 0, 1),
                        List.of(
                                new Evidence(
                                        "guides cleaned",
                                        oldest.equals(date)
                                                ? "at this visit"
                                                : "%.1f months ago".formatted(PadClock.months(oldest, date)),
                                        "longest ago of %d pads whose cleaning is in the book"
                                                .formatted(running.size())),
                                new Evidence(
                                        "chance of seizing",
                                        "%.0f %%, limits %.0f to %.0f %%"
                                                .formatted(
                                                        100 * chance,
                                                        100 * pads.chance(nextVisit, PadsTogether.LOWER),
                                                        100 * pads.chance(nextVisit, PadsTogether.UPPER)),
                                        "Weibull hazard over the months since cleaning; 95 % limits; "
                                                + basis(knowledge.seizing(), knowledge.learnedOn(), seen.size())),
                                new Evidence(
                                        "interval worth recommending",
                                        "%.0f months".formatted(Math.max(1, interval)),
                                        "keeps the chance at or below %.0f %%; %s"
                                                .formatted(100 * risk.value(), risk.citation())),
                                new Evidence(
                                        "exposure",
                                        "%.0f %% of the year on salt, %s, %.0f km per year, %.0f %% of the braking by friction"
                                                .formatted(
                                                        100 * exposure.saltShare(),
                                                        exposure.garaged() ? "inside at night" : "outside at night",
                                                        exposure.distanceKmPerYear(),
                                                        100 * exposure.frictionBrakeShare()),
                                        useBasis(vehicle.details().use()))),
                        "docs/methods/brakes.md, seizing; yearly cleaning where roads are salted: manufacturers' service advice"));
    }

    private static String basis(@Nullable LearnedSeizing learned, @Nullable LocalDate learnedOn, int ofThisCar) {
        return learned == null || learnedOn == null
                ? "%d pad times of this car beside the prior (common practice, no source)".formatted(ofThisCar)
                : "from %,d pad times of %d %s, learned %s, beside the prior (common practice, no source)"
                        .formatted(
                                learned.padTimes(),
                                learned.cars(),
                                learned.cars() == 1 ? "car" : "cars",
                                Dates.written(learnedOn));
    }

    private static String useBasis(CarUse use) {
        return use.equals(CarUse.USUAL)
                ? "distance from the odometer; salt, garage and friction share as usual: common practice, no source"
                : "distance from the odometer; salt, garage and friction share as noted with the car, else as usual: common practice, no source";
    }

    /** Pads that move today, each with the day of its last service. */
    private record PadsTogether(
            SeizingHazard hazard, SeizingExposure exposure, List<LocalDate> serviced, LocalDate today, double risk) {
        static final ToDoubleFunction<Chance> LOWER = Chance::lower;
        static final ToDoubleFunction<Chance> MIDDLE = Chance::probability;
        static final ToDoubleFunction<Chance> UPPER = Chance::upper;

        /** Chance that at least one seizes by a day. */
        double chance(LocalDate by, ToDoubleFunction<Chance> which) {
            double allFree = 1;
            for (var day : serviced) {
                double since = PadClock.months(day, today);
                allFree *= 1 - which.applyAsDouble(hazard.chance(exposure, since, PadClock.months(today, by)));
            }
            return 1 - allFree;
        }

        /** The last day on which the chance is still taken; null when it is for years. */
        @Nullable
        LocalDate horizon() {
            if (chance(today.plusDays(MOST_DAYS), MIDDLE) <= risk) {
                return null;
            }
            long low = 0;
            long high = MOST_DAYS;
            while (high - low > 1) {
                long middle = (low + high) / 2;
                if (chance(today.plusDays(middle), MIDDLE) <= risk) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return today.plusDays(low);
        }
    }
}
