package cornerbook.core.brake.judge;

import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.ThicknessOutlook;
import cornerbook.core.brake.ThicknessWear;
import cornerbook.core.brake.WearPrior;
import cornerbook.core.brake.WearReading;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.OwnShare;
import cornerbook.core.finding.Verdict;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Chance;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.season.DistancePerDay;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How the pads and discs of one car wear, from all visits until one. A part counts from the visit that replaced it; before the
 * first that is in the book its age is not known, and how thick it was is left to the readings.
 */
public final class BrakeWear {
    private static final double THOUSAND = 1000;
    private static final double EVEN = 0.5;
    private static final double MOST_DAYS = 1461;

    private final Vehicle vehicle;
    private final List<Visit> visits;
    private final DistancePerDay distance;
    private final Mileage mileage;
    /** Of each visit. */
    private final List<StandingReadings> readings;

    /** The wear of the brakes of a car that is judged. */
    public BrakeWear(Case given) {
        this(given.vehicle(), given.visits(), given.readingsByVisit(), given.distance());
    }

    /**
     * The wear of a car's brakes.
     *
     * @param visits earliest first, the one that is judged last
     */
    public BrakeWear(Vehicle vehicle, List<Visit> visits, DistancePerDay distance) {
        this(vehicle, visits, visits.stream().map(StandingReadings::new).toList(), distance);
    }

    private BrakeWear(Vehicle vehicle, List<Visit> visits, List<StandingReadings> readings, DistancePerDay distance) {
        this.vehicle = vehicle;
        this.visits = List.copyOf(visits);
        this.readings = readings;
        this.distance = distance;
        mileage = new Mileage(visits);
    }

    /** How many visits there are. */
    public int visits() {
        return visits.size();
    }

    /** The brake at a corner as it was read at a visit, the first of which is 0. */
    public BrakeCorner at(Corner corner, int visit) {
        return new BrakeCorner(corner, vehicle, readings.get(visit));
    }

    /** One part as it was followed. */
    public record Followed(ThicknessOutlook.Part part, int readings, boolean sinceNew) {}

    /** One pad; empty when it was never read nor replaced. */
    public Optional<Followed> pad(Corner corner, Spot side, double limitMm) {
        double newMm = vehicle.axle(corner.axle()).brake().padNewMm();
        return follow(corner, Measure.PADS_REPLACED, at -> at.padMm(side), WearPrior.pad(newMm), limitMm);
    }

    /** The disc; empty when it was never read nor replaced. */
    public Optional<Followed> disc(Corner corner, double limitMm) {
        double newMm = vehicle.axle(corner.axle()).brake().discNewMm();
        return follow(corner, Measure.DISC_REPLACED, BrakeCorner::discMm, WearPrior.disc(newMm), limitMm);
    }

    /** The lining of both shoes where it is thinnest; empty when it was never read nor replaced. */
    public Optional<Followed> lining(Corner corner, DrumBrake brake, double limitMm) {
        return follow(
                corner,
                Measure.SHOES_REPLACED,
                at -> at.valueMm(at.lining()),
                WearPrior.lining(brake.liningNewMm()),
                limitMm);
    }

    /** What the drum may still grow until its discard diameter; empty when it was never read nor replaced. */
    public Optional<Followed> drum(Corner corner, DrumBrake brake) {
        return follow(
                corner,
                Measure.DRUM_REPLACED,
                at -> at.valueMm(Measure.DRUM_DIAMETER).stream()
                        .map(diameterMm -> Math.max(0, brake.drumDiscardMm() - diameterMm))
                        .findFirst(),
                WearPrior.drum(brake.drumDiscardMm() - brake.drumNewMm()),
                0);
    }

    /**
     * How long parts hold together, from the last of the visits on.
     *
     * @param probability that all hold until the next visit
     * @param horizon day on which that falls through the confidence; null when beyond four years
     */
    public record Forecast(double probability, @Nullable LocalDate horizon) {
        public Evidence evidence() {
            return new Evidence(
                    BrakeSaid.Label.ABOVE_MINIMUM,
                    new BrakeSaid.HoldsWith(new Chance(probability), Amount.of(100 * Verdict.CONFIDENCE, "%"), horizon),
                    BrakeSaid.Ground.WEAR_AND_DISTANCE);
        }

        /** By the probability alone. */
        public Verdict verdict() {
            return probability < EVEN
                    ? Verdict.SPENT
                    : probability < Verdict.CONFIDENCE ? Verdict.RUNS_OUT : Verdict.HOLDS;
        }
    }

    public Forecast forecast(List<Followed> parts, LocalDate nextVisit) {
        var today = visits.getLast().date();
        var outlook = new ThicknessOutlook(parts.stream().map(Followed::part).toList(), distance);
        var days = outlook.horizonDays(Verdict.CONFIDENCE, MOST_DAYS);
        return new Forecast(
                outlook.probabilityHolds((double) Math.max(0, ChronoUnit.DAYS.between(today, nextVisit))),
                days.isPresent() ? today.plusDays((long) days.getAsDouble()) : null);
    }

    /**
     * How fast it wears, and what that rests on.
     *
     * @param side of the pad; null for the disc
     */
    public Evidence evidence(@Nullable Spot side, Followed followed) {
        return evidence(new BrakeSaid.WearOf(side), followed);
    }

    /** The same of what is named. */
    public Evidence evidence(Said part, Followed followed) {
        var rate = followed.part().wear().rate();
        return new Evidence(
                part,
                new PlusMinus(rate.mean(), rate.sd(), "mm/1000 km", 3),
                new BrakeSaid.ThicknessModel(
                        followed.readings(),
                        followed.sinceNew(),
                        OwnShare.of(followed.part().wear().ownShareOfRate()),
                        new PlusMinus(distance.meanKm(), distance.sdKm(), "km", 0)));
    }

    /**
     * The reading to come of one pad edge or of the disc at the last of the visits, from what was read before: mean and
     * standard deviation, its own error included. Empty when nothing is known of the part.
     */
    Optional<Estimate> expectedMm(Corner corner, Measure measure, @Nullable Spot side) {
        var brake = vehicle.axle(corner.axle()).brake();
        if (!brake.hasDisc()) {
            return Optional.empty();
        }
        boolean pad = measure != Measure.DISC_THICKNESS;
        var prior = pad ? WearPrior.pad(brake.padNewMm()) : WearPrior.disc(brake.discNewMm());
        var before = new ArrayList<>(visits.subList(0, visits.size() - 1));
        before.add(visits.getLast().withReadings(List.of()));
        return new BrakeWear(vehicle, before, distance)
                .follow(
                        corner,
                        pad ? Measure.PADS_REPLACED : Measure.DISC_REPLACED,
                        at -> at.read(measure, side).stream()
                                .mapToDouble(Reading::value)
                                .findFirst(),
                        prior,
                        0)
                .map(Followed::part)
                .map(part ->
                        part.wear().thickness(new Estimate(part.run1000Km(), 0)).left())
                .map(thickness -> new Estimate(thickness.mean(), Math.hypot(thickness.sd(), prior.readingSdMm())));
    }

    private Optional<Followed> follow(
            Corner corner,
            Measure replaced,
            Function<BrakeCorner, OptionalDouble> thicknessMm,
            WearPrior prior,
            double limitMm) {
        var read = new ArrayList<WearReading>();
        double startKm = 0;
        boolean sinceNew = false;
        for (int v = 0; v < visits.size(); v++) {
            var at = at(corner, v);
            double runKm = mileage.sinceFirstKm(visits.get(v));
            var thickness = thicknessMm.apply(at);
            if (thickness.isPresent()) {
                if (read.isEmpty() && !sinceNew) {
                    startKm = runKm;
                }
                read.add(new WearReading((runKm - startKm) / THOUSAND, thickness.getAsDouble()));
            }
            if (at.done(replaced)) {
                read.clear();
                startKm = runKm;
                sinceNew = true;
            }
        }
        if (read.isEmpty() && !sinceNew) {
            return Optional.empty();
        }
        var wear = ThicknessWear.of(sinceNew ? prior : prior.ofUnknownAge(), read);
        double run = (mileage.sinceFirstKm(visits.getLast()) - startKm) / THOUSAND;
        return Optional.of(new Followed(new ThicknessOutlook.Part(wear, run, limitMm), read.size(), sinceNew));
    }
}
