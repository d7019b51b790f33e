package cornerbook.app.bench.filled;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Side;
import cornerbook.core.corner.Spot;
import cornerbook.words.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The tyres that a car stands on, for the questions on date and difference. */
final class TyresOfCar {
    private static final double THIRTY_SECOND_MM = 25.4 / 32;

    private TyresOfCar() {}

    /**
     * TIN of the axle's first wheel and its place, and each tyre's least groove at its last reading.
     *
     * @param allFour whether the four tyres are compared, or those of the axle
     */
    static Map<String, List<String>> of(CarHistory history, Axle axle, boolean allFour, UnitSystem system) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        values.put("place", List.of(history.vehicle().jurisdiction()));
        var worn = new ArrayList<String>();
        for (var corner : Corner.values()) {
            var wheel = standing(history, corner);
            if (wheel.isPresent()) {
                boolean meant = corner.axle() == axle;
                var tin = wheel.get().tyre().tin();
                if (meant && tin != null) {
                    values.putIfAbsent("tin", List.of(tin));
                }
                if (meant) {
                    across(history, wheel.get(), system)
                            .ifPresent(depths -> values.put(
                                    corner.side() == Side.LEFT ? "left-tread" : "right-tread", List.of(depths)));
                }
                if (meant || allFour) {
                    leastMm(history, wheel.get()).ifPresent(leftMm -> worn.add(written(wheel.get(), leftMm, system)));
                }
            }
        }
        if (worn.size() > 1) {
            values.put("worn", worn);
        }
        return values;
    }

    private static Optional<Wheel> standing(CarHistory history, Corner corner) {
        return history.visits().reversed().stream()
                .map(visit -> visit.leftOn().isEmpty() ? visit.arrivedOn() : visit.leftOn())
                .filter(wheelAt -> !wheelAt.isEmpty())
                .findFirst()
                .flatMap(wheelAt -> Optional.ofNullable(wheelAt.get(corner)))
                .flatMap(history::findWheel);
    }

    /** Of the last visit at which the wheel's tread was read. */
    static Optional<Double> leastMm(CarHistory history, Wheel wheel) {
        return history.visits().reversed().stream()
                .map(visit -> depths(visit, wheel))
                .filter(depths -> !depths.isEmpty())
                .findFirst()
                .flatMap(depths -> depths.stream().min(Comparator.naturalOrder()));
    }

    /** Inner, centre and outer groove at the last visit at which all three were read. */
    private static Optional<String> across(CarHistory history, Wheel wheel, UnitSystem system) {
        return history.visits().reversed().stream()
                .map(visit -> Arrays.stream(Spot.values())
                        .flatMap(spot -> new StandingReadings(visit)
                                .all(Measure.TREAD_DEPTH).stream()
                                        .filter(reading ->
                                                wheel.tag().equals(reading.wheelTag()) && reading.spot() == spot)
                                        .limit(1))
                        .toList())
                .filter(depths -> depths.size() == Spot.values().length)
                .findFirst()
                .map(depths -> depths.stream()
                        .map(reading -> system.field(reading.value(), "mm"))
                        .collect(Collectors.joining(" ", "", " " + system.unitOf("mm"))));
    }

    private static List<Double> depths(Visit visit, Wheel wheel) {
        return new StandingReadings(visit)
                .all(Measure.TREAD_DEPTH).stream()
                        .filter(reading -> wheel.tag().equals(reading.wheelTag()))
                        .map(Reading::value)
                        .toList();
    }

    /** A used tyre may measure a little more than its first estimate. */
    private static String written(Wheel wheel, double leftMm, UnitSystem system) {
        double newMm = Math.max(leftMm, wheel.tyre().newDepthOrUsualMm());
        return system == UnitSystem.US
                ? String.format(
                        Locale.ROOT,
                        "%s=%.1f/32 of %.1f/32 in",
                        wheel.tyre().size(),
                        leftMm / THIRTY_SECOND_MM,
                        newMm / THIRTY_SECOND_MM)
                : "%s=%s of %s mm"
                        .formatted(wheel.tyre().size(), system.field(leftMm, "mm"), system.field(newMm, "mm"));
    }
}
