package cornerbook.app.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.InEnglish;
import cornerbook.app.desk.Typed;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.quantity.Quantities;
import cornerbook.words.UnitSystem;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a person writes is a finite number that reads back from what is shown and kept of it, or is refused with a sentence.
 * The first line names the unit of the book or the measure.
 */
public final class QuantityFuzz implements FuzzTarget {
    private static final List<String> UNITS =
            List.of("mm", "m", "kPa", "N·m", "N", "°C", "°", "V", "A", "A·h", "km", "km/h", "kg", "%", "studs");
    /** Digits of what is larger are not all kept. */
    private static final double WRITTEN_OUT_BELOW = 1e9;

    private static final List<String> CHOICES = Stream.concat(
                    UNITS.stream(), Arrays.stream(Measure.values()).map(Measure::name))
            .toList();

    @Override
    public void take(byte[] input) {
        var whole = new Input(input);
        var choice = whole.choose(CHOICES);
        var text = whole.rest();
        try {
            if (UNITS.contains(choice)) {
                quantity(text, choice);
            } else {
                reading(text, Measure.valueOf(choice));
            }
        } catch (IllegalArgumentException e) {
            Sentences.check(InEnglish.told(e), text);
        }
    }

    private static void quantity(String text, String unit) {
        double value = Quantities.parse(text, unit);
        assertThat(value).isFinite();
        if (Math.abs(value) < WRITTEN_OUT_BELOW) {
            assertThat(Quantities.parse(Quantities.show(value, unit), unit)).isCloseTo(value, within(0.5));
        }
        for (var system : UnitSystem.values()) {
            assertThat(Quantities.parse(system.withUnit(text, unit), unit)).isFinite();
            if (Math.abs(value) < WRITTEN_OUT_BELOW) {
                var field = system.withUnit(system.field(value, unit), unit);
                assertThat(system.in(Quantities.parse(field, unit), unit))
                        .as(field)
                        .isCloseTo(system.in(value, unit), within(0.0051));
            }
        }
    }

    private static void reading(String text, Measure measure) {
        double value = Typed.valueOf(measure, text);
        assertThat(value).isBetween(measure.lowest(), measure.highest());
        assertThat(Double.doubleToRawLongBits(value)).as("no zero below zero").isNotEqualTo(Long.MIN_VALUE);
        var kept = Typed.withUnit(text, measure);
        assertThat(WrittenReading.valueOf(measure, kept)).isEqualTo(value);
        WrittenReading.findPoints(measure, kept).ifPresent(points -> {
            assertThat(points).hasSizeBetween(WrittenReading.FEWEST_POINTS, 36).allMatch(Double::isFinite);
            assertThat(Collections.max(points) - Collections.min(points)).isCloseTo(value, within(1e-6));
        });
    }
}
