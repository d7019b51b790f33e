package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureName;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WorkStep;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a reading at a brake must not contradict: the car's equipment, what is new, and the other readings of its visit. */
public final class BrakeReadingRules {
    /** How far a gauge may read above a new pad. Common practice, no source. */
    private static final double THICKER_THAN_NEW_MM = 0.5;
    /** How far a micrometer and the tolerance of a casting may stand above a new disc. Common practice, no source. */
    private static final double DISC_THICKER_THAN_NEW_MM = 0.3;

    /** The same of a drum gauge below a new drum. Common practice, no source. */
    private static final double DRUM_NARROWER_THAN_NEW_MM = 0.3;

    private static final Set<Measure> PINS = Set.of(Measure.SLIDE_PIN_MOVEMENT, Measure.RETAINING_PIN_MOVEMENT);

    private BrakeReadingRules() {}

    /**
     * What cannot stand; empty when the reading can stand, or was corrected already.
     *
     * @param readings of the same visit
     */
    public static Optional<Said> problem(Vehicle vehicle, StandingReadings readings, Reading reading) {
        var corner = reading.corner();
        if (corner == null || readings.isCorrected(reading)) {
            return Optional.empty();
        }
        var brake = vehicle.axle(corner.axle()).brake();
        var measure = reading.measure();
        if (!fitsCaliper(vehicle, corner, measure)) {
            return Optional.empty();
        }
        return Optional.ofNullable(
                switch (measure) {
                    case PAD_THICKNESS, PAD_THICKNESS_TRAILING ->
                        brake.hasDisc()
                                ? thicker(reading, corner, reading.value(), brake.padNewMm(), THICKER_THAN_NEW_MM)
                                : null;
                    case DISC_THICKNESS, DISC_THICKNESS_VARIATION ->
                        brake.hasDisc()
                                ? thicker(
                                        reading,
                                        corner,
                                        thickestMm(reading),
                                        brake.discNewMm(),
                                        DISC_THICKER_THAN_NEW_MM)
                                : null;
                    case LINING_THICKNESS, LINING_OVER_RIVETS ->
                        brake.drum()
                                .map(drum -> thicker(
                                        reading, corner, reading.value(), drum.liningNewMm(), THICKER_THAN_NEW_MM))
                                .orElse(null);
                    case DRUM_DIAMETER ->
                        brake.drum()
                                .map(drum -> narrower(reading.value(), corner, drum.drumNewMm()))
                                .orElse(null);
                    case DISC_MOVED_BY -> moved(reading, corner, vehicle);
                    case HUB_DIAL_RADIUS, DISC_DIAL_RADIUS -> radii(readings, corner);
                    default -> null;
                });
    }

    /**
     * Why a new reading cannot be of this car's caliper. One that is in the book stays there when the kind of caliper is put
     * right afterwards, and is not used.
     */
    public static Optional<Said> wrongCaliper(Vehicle vehicle, Reading reading) {
        var corner = reading.corner();
        if (corner == null || fitsCaliper(vehicle, corner, reading.measure())) {
            return Optional.empty();
        }
        var name = new MeasureName(reading.measure());
        var brake = vehicle.axle(corner.axle()).brake();
        return Optional.of(
                PINS.contains(reading.measure()) && brake.hasDisc()
                        ? new BrakeSaid.WrongCaliper(name, corner, brake.caliper())
                        : new BrakeSaid.NotThere(name, corner));
    }

    static boolean fitsCaliper(Vehicle vehicle, Corner corner, Measure measure) {
        return measure.isOn(vehicle, corner.axle());
    }

    /** A line for each place whose reading is not used, as the brake is of another kind by the car's data. */
    public static List<Said> notUsed(Vehicle vehicle, StandingReadings readings) {
        return readings.all().stream()
                .filter(reading -> reading.measure().carrier() == Measure.Carrier.CORNER
                        && !reading.measure().isReadIn(WorkStep.LOOK_OVER))
                .filter(reading -> wrongCaliper(vehicle, reading).isPresent())
                .map(reading -> notUsed(vehicle, Objects.requireNonNull(reading.corner()), reading.measure()))
                .toList();
    }

    private static Said notUsed(Vehicle vehicle, Corner corner, Measure measure) {
        var name = new MeasureName(measure);
        var brake = vehicle.axle(corner.axle()).brake();
        return PINS.contains(measure) && brake.hasDisc()
                ? new BrakeSaid.NotUsedForCaliper(corner, name, brake.caliper())
                : new BrakeSaid.NotUsedThere(corner, name);
    }

    private static double thickestMm(Reading reading) {
        return WrittenReading.findPoints(reading.measure(), reading.asWritten())
                .map(Collections::max)
                .orElse(reading.value());
    }

    private static @Nullable Said thicker(
            Reading reading, Corner corner, double valueMm, double newMm, double aboveMm) {
        return valueMm <= newMm + aboveMm
                ? null
                : new BrakeSaid.ThickerThanNew(
                        new MeasureName(reading.measure()),
                        reading.spot(),
                        corner,
                        new Amount(valueMm, "mm", 2),
                        new Amount(newMm, "mm", 2),
                        new Amount(newMm + aboveMm, "mm", 2));
    }

    private static @Nullable Said narrower(double diameterMm, Corner corner, double newMm) {
        double leastMm = newMm - DRUM_NARROWER_THAN_NEW_MM;
        return diameterMm >= leastMm
                ? null
                : new BrakeSaid.NarrowerThanNew(
                        corner,
                        new Amount(diameterMm, "mm", 2),
                        new Amount(newMm, "mm", 2),
                        new Amount(leastMm, "mm", 2));
    }

    private static @Nullable Said moved(Reading reading, Corner corner, Vehicle vehicle) {
        var fastener = vehicle.fastener();
        if (fastener == null) {
            return null;
        }
        int studs = fastener.count();
        return reading.value() == Math.rint(reading.value()) && reading.value() < studs
                ? null
                : new BrakeSaid.MovedOnByNoStud(corner, Amount.exact(reading.value(), "studs"), studs - 1, studs);
    }

    private static @Nullable Said radii(StandingReadings readings, Corner corner) {
        var hub = readings.ofCorner(Measure.HUB_DIAL_RADIUS, corner, null);
        var disc = readings.ofCorner(Measure.DISC_DIAL_RADIUS, corner, null);
        return hub.isEmpty() || disc.isEmpty() || disc.get().value() > hub.get().value()
                ? null
                : new BrakeSaid.DialNotFartherOut(
                        corner,
                        new Amount(disc.get().value(), "mm", 0),
                        new Amount(hub.get().value(), "mm", 0));
    }
}
