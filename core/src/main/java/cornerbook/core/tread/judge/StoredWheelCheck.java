package cornerbook.core.tread.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Whether a wheel that comes out of the store is the one that went in. A stored tyre does not change: another depth than
 * the gauge allows, another date code or another sensor means the wrong wheel. Common practice, no source.
 */
public final class StoredWheelCheck {
    /** Depths read at take-off and at fitting may differ by this much. Common practice, no source. */
    public static final double GAUGE_ERROR_MM = 0.3;
    // Depths are kept in decimal fractions of a millimetre; this keeps 0.3 itself inside.
    private static final double ROUNDING_MM = 1e-9;

    private StoredWheelCheck() {}

    /** What was read off a wheel at fitting; null where it was not read. */
    public record Identity(
            String wheelTag, @Nullable String tin, @Nullable String sensorId) {}

    /** Compares depths: this visit's readings of the wheel against the last ones before. Empty when they agree or are missing. */
    public static Optional<Said> compareDepths(CarHistory history, Visit fitted, String wheelTag) {
        var before = history.visits().stream()
                .filter(visit -> visit.date().isBefore(fitted.date()))
                .toList();
        for (var reading : new StandingReadings(fitted).all(Measure.TREAD_DEPTH)) {
            if (!wheelTag.equals(reading.wheelTag())) {
                continue;
            }
            var last = lastDepth(before, wheelTag, reading);
            if (last.isPresent() && Math.abs(last.get().value() - reading.value()) > GAUGE_ERROR_MM + ROUNDING_MM) {
                return Optional.of(new TreadSaid.OtherDepth(
                        wheelTag,
                        Objects.requireNonNull(reading.spot()),
                        new Amount(reading.value(), "mm", 1),
                        new Amount(last.get().value(), "mm", 1),
                        new Amount(GAUGE_ERROR_MM, "mm", 1)));
            }
        }
        return Optional.empty();
    }

    /** Compares date code and sensor identity with the book's. Empty when they agree or were not read. */
    public static Optional<Said> compareIdentity(Wheel wheel, Identity read) {
        var tin = wheel.tyre().tin();
        if (tin != null && read.tin() != null && !dateCode(tin).equals(dateCode(read.tin()))) {
            return Optional.of(new TreadSaid.OtherDateCode(wheel.tag(), dateCode(read.tin()), dateCode(tin)));
        }
        var sensor = wheel.sensorId();
        if (sensor != null
                && read.sensorId() != null
                && !sensor.equalsIgnoreCase(read.sensorId().strip())) {
            return Optional.of(
                    new TreadSaid.OtherSensor(wheel.tag(), read.sensorId().strip(), sensor));
        }
        return Optional.empty();
    }

    private static Optional<Reading> lastDepth(List<Visit> before, String wheelTag, Reading reading) {
        var spot = Objects.requireNonNull(reading.spot());
        return before.reversed().stream()
                .flatMap(visit -> new StandingReadings(visit).ofWheel(Measure.TREAD_DEPTH, wheelTag, spot).stream())
                .findFirst();
    }

    /** The last four symbols of a TIN are its week and year (49 CFR 574.5). */
    private static String dateCode(String tin) {
        var plain = tin.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
        return plain.length() <= 4 ? plain : plain.substring(plain.length() - 4);
    }
}
