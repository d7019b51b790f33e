package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.MeasureName;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a reading at a brake must not contradict: the car's equipment, what is new, and the other readings of its visit. */
public final class BrakeReadingRules {
    /** How far a gauge may read above a new pad. Common practice, no source. */
    private static final double THICKER_THAN_NEW_MM = 0.5;
    /** How far a micrometer and the tolerance of a casting may stand above a new disc. Common practice, no source. */
    private static final double DISC_THICKER_THAN_NEW_MM = 0.3;

    private BrakeReadingRules() {}

    /** What cannot stand; empty when the reading can stand, or was corrected already. */
    public static Optional<Said> problem(Vehicle vehicle, Visit visit, Reading reading) {
        var corner = reading.corner();
        if (corner == null || !new StandingReadings(visit).all().contains(reading)) {
            return Optional.empty();
        }
        var brake = vehicle.axle(corner.axle()).brake();
        var measure = reading.measure();
        return Optional.ofNullable(
                switch (measure) {
                    case PAD_THICKNESS, PAD_THICKNESS_TRAILING ->
                        thicker(reading, corner, reading.value(), brake.padNewMm(), THICKER_THAN_NEW_MM);
                    case DISC_THICKNESS, DISC_THICKNESS_VARIATION ->
                        thicker(reading, corner, thickestMm(reading), brake.discNewMm(), DISC_THICKER_THAN_NEW_MM);
                    case DISC_MOVED_BY ->
                        moved(reading, corner, vehicle.fastener().count());
                    case HUB_DIAL_RADIUS, DISC_DIAL_RADIUS -> radii(new StandingReadings(visit), corner);
                    default -> null;
                });
    }

    /**
     * Why a new reading cannot be of this car's caliper. One that is in the book stays there when the kind of caliper is put
     * right afterwards, and is not used.
     */
    public static Optional<Said> wrongCaliper(Vehicle vehicle, Reading reading) {
        var corner = reading.corner();
        return corner == null || fitsCaliper(vehicle, corner, reading.measure())
                ? Optional.empty()
                : Optional.of(new BrakeSaid.WrongCaliper(
                        new MeasureName(reading.measure()),
                        corner,
                        vehicle.axle(corner.axle()).brake().caliper()));
    }

    static boolean fitsCaliper(Vehicle vehicle, Corner corner, Measure measure) {
        return measure.isOn(vehicle, corner.axle());
    }

    /** A line for each place whose reading is not used, as the caliper is of another kind by the car's data. */
    public static List<Said> notUsed(Vehicle vehicle, StandingReadings readings) {
        return Stream.of(Measure.SLIDE_PIN_MOVEMENT, Measure.RETAINING_PIN_MOVEMENT)
                .flatMap(measure -> readings.all(measure).stream())
                .filter(reading -> wrongCaliper(vehicle, reading).isPresent())
                .map(reading -> notUsed(vehicle, Objects.requireNonNull(reading.corner()), reading.measure()))
                .toList();
    }

    private static Said notUsed(Vehicle vehicle, Corner corner, Measure measure) {
        return new BrakeSaid.NotUsedForCaliper(
                corner,
                new MeasureName(measure),
                vehicle.axle(corner.axle()).brake().caliper());
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

    private static @Nullable Said moved(Reading reading, Corner corner, int studs) {
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
