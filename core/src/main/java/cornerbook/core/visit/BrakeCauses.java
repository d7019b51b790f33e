package cornerbook.core.visit;

import cornerbook.core.brake.BrakeCause;
import cornerbook.core.brake.BrakeDiagnosis;
import cornerbook.core.brake.BrakeLook;
import cornerbook.core.brake.BrakeSign;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The likely causes at one corner from what was read there: pads against each other and the other side, pins, movement. */
final class BrakeCauses {
    private static final int TOLD = 3;
    private static final double WORTH_TELLING = 0.05;

    private final BrakeDiagnosis diagnosis;
    private final List<BrakeSign> signs;

    private BrakeCauses(BrakeDiagnosis diagnosis, List<BrakeSign> signs) {
        this.diagnosis = diagnosis;
        this.signs = signs;
    }

    static BrakeCauses of(Corner corner, Vehicle vehicle, CurrentReadings readings) {
        var signs = new ArrayList<BrakeSign>();
        var inner = readings.ofCorner(Measure.PAD_THICKNESS, corner, Spot.INNER);
        var outer = readings.ofCorner(Measure.PAD_THICKNESS, corner, Spot.OUTER);
        if (inner.isPresent() && outer.isPresent()) {
            signs.add(
                    BrakeLook.innerAgainstOuter(inner.get().value(), outer.get().value()));
        }
        var here = thinnest(corner, readings);
        var there = thinnest(otherSide(corner), readings);
        if (here.isPresent() && there.isPresent()) {
            signs.add(BrakeLook.leftAgainstRight(here.getAsDouble(), there.getAsDouble()));
        }
        Stream.of(Spot.INNER, Spot.OUTER)
                .map(spot -> readings.ofCorner(Measure.PAD_MOVEMENT, corner, spot))
                .flatMap(Optional::stream)
                .mapToDouble(Reading::value)
                .max()
                .ifPresent(worst ->
                        signs.add(movement(worst, BrakeSign.PAD_FREE, BrakeSign.PAD_TIGHT, BrakeSign.PAD_STUCK)));
        readings.ofCorner(Measure.SLIDE_PIN_MOVEMENT, corner, null)
                .ifPresent(pins -> signs.add(movement(
                        pins.value(),
                        BrakeSign.SLIDE_PINS_FREE,
                        BrakeSign.SLIDE_PINS_TIGHT,
                        BrakeSign.SLIDE_PINS_STUCK)));
        var equipment = new BrakeDiagnosis.Equipment(
                vehicle.axle(corner.axle()).brake().caliper() == BrakeSpecification.Caliper.SLIDING,
                corner.axle() == Axle.REAR);
        return new BrakeCauses(BrakeDiagnosis.of(equipment, signs), signs);
    }

    /** The likeliest cause, unless it is that nothing is wrong. */
    Optional<BrakeCause> likeliest() {
        return Optional.of(diagnosis.likeliest()).filter(cause -> cause != BrakeCause.NOTHING);
    }

    Evidence evidence() {
        return new Evidence(
                "likely cause",
                diagnosis
                        .ranked()
                        .filter(cause -> diagnosis.probability(cause) >= WORTH_TELLING)
                        .limit(TOLD)
                        .map(cause -> "%s %.0f %%".formatted(cause.words(), 100 * diagnosis.probability(cause)))
                        .collect(Collectors.joining(", ")),
                "Bayes' rule over %s; how often each cause shows each sign: common practice, no source"
                        .formatted(signs.stream()
                                .map(sign ->
                                        sign.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                                .collect(Collectors.joining(", "))));
    }

    private static OptionalDouble thinnest(Corner corner, CurrentReadings readings) {
        return Stream.of(Spot.INNER, Spot.OUTER)
                .map(spot -> readings.ofCorner(Measure.PAD_THICKNESS, corner, spot))
                .flatMap(Optional::stream)
                .mapToDouble(Reading::value)
                .min();
    }

    private static Corner otherSide(Corner corner) {
        return switch (corner) {
            case LF -> Corner.RF;
            case RF -> Corner.LF;
            case LR -> Corner.RR;
            case RR -> Corner.LR;
        };
    }

    private static BrakeSign movement(double value, BrakeSign free, BrakeSign tight, BrakeSign stuck) {
        return switch ((int) Math.round(value)) {
            case 0 -> free;
            case 1 -> tight;
            default -> stuck;
        };
    }
}
