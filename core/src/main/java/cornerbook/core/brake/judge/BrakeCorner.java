package cornerbook.core.brake.judge;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The brake at one corner as it was read at one visit. */
public record BrakeCorner(Corner corner, Vehicle vehicle, StandingReadings readings) {
    public static final List<Spot> SIDES = List.of(Spot.INNER, Spot.OUTER);

    public BrakeSpecification brake() {
        return vehicle.axle(corner.axle()).brake();
    }

    public Optional<Reading> read(Measure measure) {
        return read(measure, null);
    }

    public Optional<Reading> read(Measure measure, @Nullable Spot spot) {
        return BrakeReadingRules.fitsCaliper(vehicle, corner, measure)
                ? readings.ofCorner(measure, corner, spot)
                : Optional.empty();
    }

    /** The graver of both sides, for a measure that is read on each. */
    public Optional<Reading> worst(Measure measure) {
        return SIDES.stream()
                .map(spot -> read(measure, spot))
                .flatMap(Optional::stream)
                .max((one, other) -> Double.compare(one.value(), other.value()));
    }

    /** Of a measure that is a thickness or a diameter. */
    public OptionalDouble valueMm(Measure measure) {
        return read(measure).stream().mapToDouble(Reading::value).findFirst();
    }

    /** Every piston of the caliper that was pressed back. */
    public List<Reading> pistons() {
        return Measure.PISTONS.stream()
                .map(this::read)
                .flatMap(Optional::stream)
                .toList();
    }

    /** How the lining of its shoes is read. */
    public Measure lining() {
        return brake().hasRivetedLining() ? Measure.LINING_OVER_RIVETS : Measure.LINING_THICKNESS;
    }

    /** The word of a measure with a scale, as its place; 0 when it was not looked at. */
    public long place(Measure measure) {
        return read(measure).map(reading -> Math.round(reading.value())).orElse(0L);
    }

    public boolean done(Measure measure) {
        return place(measure) == 1;
    }

    /** A pad where it is thinnest: at the leading or the trailing edge. */
    public OptionalDouble padMm(Spot side) {
        return Stream.of(Measure.PAD_THICKNESS, Measure.PAD_THICKNESS_TRAILING)
                .map(measure -> read(measure, side))
                .flatMap(Optional::stream)
                .mapToDouble(Reading::value)
                .min();
    }

    public OptionalDouble thinnestPadMm() {
        return SIDES.stream()
                .map(this::padMm)
                .flatMapToDouble(OptionalDouble::stream)
                .min();
    }

    /** Leading against trailing edge, of the pad that differs most; empty when no pad was read at both. */
    public Optional<List<Double>> taper() {
        return SIDES.stream()
                .flatMap(side -> read(Measure.PAD_THICKNESS, side)
                        .flatMap(leading -> read(Measure.PAD_THICKNESS_TRAILING, side)
                                .map(trailing -> List.of(leading.value(), trailing.value())))
                        .stream())
                .max((one, other) -> Double.compare(difference(one), difference(other)));
    }

    /** The points that the disc was read at, in their order; empty when only one value was written. */
    public Optional<List<Double>> discPoints() {
        return points(Measure.DISC_THICKNESS_VARIATION);
    }

    /** The points that a measure was written as. */
    public Optional<List<Double>> points(Measure measure) {
        return read(measure).flatMap(reading -> WrittenReading.findPoints(measure, reading.asWritten()));
    }

    /** The disc where it is thinnest. */
    public OptionalDouble discMm() {
        return DoubleStream.concat(
                        read(Measure.DISC_THICKNESS).stream().mapToDouble(Reading::value),
                        discPoints().map(Collections::min).stream().mapToDouble(Double::doubleValue))
                .min();
    }

    /** The same corner of the other side of the car. */
    public BrakeCorner otherSide() {
        var other = switch (corner) {
            case LF -> Corner.RF;
            case RF -> Corner.LF;
            case LR -> Corner.RR;
            case RR -> Corner.LR;
        };
        return new BrakeCorner(other, vehicle, readings);
    }

    /** The side that a reading was taken at, of a measure that is read on each. */
    public static Spot side(Reading reading) {
        return Objects.requireNonNull(reading.spot());
    }

    private static double difference(List<Double> edges) {
        return Math.abs(edges.getFirst() - edges.getLast());
    }
}
