package cornerbook.app.demo;

import cornerbook.app.demo.BrakeStory.Told;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/** Takes the readings at the brakes of one visit, as {@link ReadingWriter} takes the others. */
final class BrakeWriter {
    private static final double PAD_ERROR_MM = 0.05;
    private static final double DISC_ERROR_MM = 0.01;
    private static final int DISC_POINTS = 8;

    private final String visitId;
    private final int before;
    private final CastMember member;
    private final CarTruth truth;
    private final RandomGenerator random;
    private final List<Reading> readings = new ArrayList<>();
    private List<Told> told = List.of();

    /** @param before how many readings the visit has already */
    BrakeWriter(String visitId, int before, CastMember member, CarTruth truth, RandomGenerator random) {
        this.visitId = visitId;
        this.before = before;
        this.member = member;
        this.truth = truth;
        this.random = random;
    }

    /**
     * As found.
     *
     * @param seasonsLeft seasons from the one just driven until the latest visit, that one counted
     */
    List<Reading> found(int seasonsLeft) {
        told = seasonsLeft == 1
                ? BrakeStory.ofCar(member.number()).map(BrakeStory::told).orElse(List.of())
                : List.of();
        for (Corner corner : Corner.values()) {
            if (hasDrum(corner)) {
                drum(corner);
            } else {
                pads(corner, seasonsLeft);
                disc(corner);
            }
        }
        for (Corner corner : Corner.values()) {
            if (hasDrum(corner)) {
                continue;
            }
            boolean stuck = truth.seized(corner, CarTruth.SEIZED_PAD, seasonsLeft);
            if (sliding(corner)) {
                word(Measure.SLIDE_PIN_MOVEMENT, corner, null, stuck ? 2 : 0);
            } else {
                word(Measure.RETAINING_PIN_MOVEMENT, corner, null, 0);
            }
        }
        told.forEach(each -> written(each.measure(), each.corner(), each.spot(), each.written()));
        return List.copyOf(readings);
    }

    /** The yearly cleaning, and what closes it. */
    List<Reading> cleaned() {
        boolean motor = member.vehicle().rear().brake().electricParkingBrake();
        if (motor) {
            word(Measure.PARKING_BRAKE_IN_SERVICE_MODE, null, null, 1);
        }
        for (Corner corner : Corner.values()) {
            if (hasDrum(corner)) {
                word(Measure.SHOES_CLEANED, corner, null, 1);
                word(Measure.SHOE_MOVEMENT_AFTER_SERVICE, corner, null, 0);
                word(Measure.DRUM_CLOSED, corner, null, 1);
                continue;
            }
            word(Measure.BRACKET_CLEANED, corner, null, 1);
            word(Measure.PIN_LUBRICANT, corner, null, sliding(corner) ? 1 : 2);
            word(Measure.ABUTMENT_LUBRICANT, corner, null, 2);
            word(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null, 0);
            word(Measure.CALIPER_CLOSED, corner, null, 1);
            word(Measure.BRACKET_BOLTS_TORQUED, corner, null, 1);
        }
        if (motor) {
            word(Measure.PARKING_BRAKE_CYCLED, null, null, 1);
        }
        word(Measure.PEDAL_PUMPED, null, null, 1);
        return List.copyOf(readings);
    }

    /** New pads on one axle. */
    List<Reading> newPads(Axle axle) {
        Arrays.stream(Corner.values()).filter(corner -> corner.axle() == axle).forEach(corner -> {
            truth.fitNewPads(corner);
            word(Measure.PADS_REPLACED, corner, null, 1);
        });
        return List.copyOf(readings);
    }

    private void pads(Corner corner, int seasonsLeft) {
        for (Spot side : List.of(Spot.INNER, Spot.OUTER)) {
            number(Measure.PAD_THICKNESS, corner, side, read(truth.padMm(corner, side)), 1);
            word(Measure.PAD_MOVEMENT, corner, side, movement(corner, side, seasonsLeft));
        }
    }

    /** Of what is worn down to its back a gauge shows nothing, and never less. */
    private double read(double frictionMm) {
        return Math.max(0, frictionMm + PAD_ERROR_MM * CarTruth.bounded(random));
    }

    private void drum(Corner corner) {
        number(Measure.DRUM_DIAMETER, corner, null, truth.drumMm(corner) + DISC_ERROR_MM * CarTruth.bounded(random), 2);
        number(Measure.LINING_THICKNESS, corner, null, read(truth.liningMm(corner)), 1);
        word(Measure.LINING_SOAKED, corner, null, 0);
        word(Measure.DRUM_CRACKS, corner, null, 0);
        word(Measure.WHEEL_CYLINDER, corner, null, 0);
        word(Measure.SHOE_MOVEMENT, corner, null, 0);
        word(Measure.ADJUSTER_MOVEMENT, corner, null, 0);
        word(Measure.SHOE_SPRINGS, corner, null, 0);
    }

    private boolean hasDrum(Corner corner) {
        return member.vehicle().axle(corner.axle()).brake().hasDrum();
    }

    private void disc(Corner corner) {
        double disc = truth.discMm(corner) + DISC_ERROR_MM * CarTruth.bounded(random);
        number(Measure.DISC_THICKNESS, corner, null, disc, 2);
        written(Measure.DISC_THICKNESS_VARIATION, corner, null, points(disc));
        number(Measure.DISC_RUNOUT, corner, null, 0.027 + 0.004 * CarTruth.bounded(random), 3);
    }

    private int movement(Corner corner, Spot side, int seasonsLeft) {
        if (truth.seized(corner, side, seasonsLeft)) {
            return seasonsLeft == 1 ? 2 : 1;
        }
        return random.nextInt(40) == 0 ? 1 : 0;
    }

    /** The disc at eight points around it, as a micrometer with a vernier shows them. */
    private String points(double discMm) {
        double amplitudeMm = 0.003 + 0.0005 * CarTruth.bounded(random);
        StringJoiner points = new StringJoiner(" ", "", " mm");
        for (int i = 0; i < DISC_POINTS; i++) {
            double wave = amplitudeMm * Math.sin(2 * Math.PI * i / DISC_POINTS);
            points.add(BigDecimal.valueOf(Math.round(1000 * (discMm + wave)), 3).toPlainString());
        }
        return points.toString();
    }

    private boolean sliding(Corner corner) {
        return member.vehicle().axle(corner.axle()).brake().caliper() == Caliper.SLIDING;
    }

    private void number(Measure measure, Corner corner, @Nullable Spot spot, double value, int decimals) {
        long steps = Math.round(value * Math.pow(10, decimals));
        written(measure, corner, spot, BigDecimal.valueOf(steps, decimals).toPlainString() + " " + measure.unit());
    }

    private void word(Measure measure, @Nullable Corner corner, @Nullable Spot spot, int place) {
        var scale = measure.scale();
        if (scale != null) {
            written(measure, corner, spot, scale.words().get(place));
        }
    }

    /** What the story tells of a place stands instead of what would be read there. */
    private void written(Measure measure, @Nullable Corner corner, @Nullable Spot spot, String written) {
        boolean isTold = told.stream()
                .anyMatch(each -> each.measure() == measure
                        && each.corner() == corner
                        && each.spot() == spot
                        && !each.written().equals(written));
        if (!isTold) {
            readings.add(new Reading(
                    visitId + "-r" + (before + readings.size() + 101),
                    measure,
                    corner,
                    null,
                    spot,
                    WrittenReading.valueOf(measure, written),
                    written,
                    null,
                    null));
        }
    }
}
