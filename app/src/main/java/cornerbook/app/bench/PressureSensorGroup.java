package cornerbook.app.bench;

import cornerbook.core.air.PressureWarning;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.air.SensorLearning;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Whether a wheel's pressure sensor can be relied on, and what the car needs to learn other wheels. */
final class PressureSensorGroup {
    /** How a car learns other wheels, in the words of the choice. */
    static final List<String> LEARNING = List.of("itself", "tool", "driving", "indirect");

    static final Group GROUP = new Group(
            "sensor",
            "Pressure sensor",
            "Read both on the same tyre, one right after the other. The vehicle maker's learning procedure outranks this.",
            List.of(
                    Ask.quantity(
                            "sensor-reads",
                            "Sensor reads",
                            "kPa",
                            "pressure of the sensor",
                            "Pressure that the car or the tool shows for this wheel."),
                    Ask.quantity(
                            "gauge-reads",
                            "Gauge reads",
                            "kPa",
                            "pressure of the gauge",
                            "Pressure by the gauge; what it shows too much is taken off as above."),
                    Ask.quantity(
                            "sensor-at",
                            "Sensor's temperature",
                            "°C",
                            "temperature of the sensor",
                            "As the tool shows it; taken to be the tyre's if not given."),
                    Ask.quantity(
                            "gauge-at",
                            "Tyre then",
                            "°C",
                            "",
                            "Temperature of the tyre at the gauge; the sensor's if not given."),
                    Ask.quantity(
                            "sensor-placard",
                            "Placard, cold",
                            "kPa",
                            "placard pressure",
                            "Cold pressure on the placard, by which the car warns."),
                    new Ask(
                            "sensor-since",
                            "Its battery since",
                            new Ask.Day(),
                            "Day from which the sensor's battery runs, year-month-day.",
                            "battery of the sensor"),
                    Ask.choice(
                            "learning",
                            "The car learns by",
                            LEARNING,
                            "way of learning",
                            "Itself, a tool or driving; indirect when it warns by the turning of the wheels.")),
            List.of("sensor-reads", "gauge-reads", "sensor-placard"),
            PressureSensorGroup::answer);

    private PressureSensorGroup() {}

    private static List<Part> answer(Given given) {
        var parts = new ArrayList<Part>();
        if (given.any("sensor-reads", "gauge-reads", "sensor-at", "gauge-at")) {
            parts.add(check(given));
        }
        if (given.any("sensor-since")) {
            var age = SensorAge.of(given.day("sensor-since"), given.today());
            parts.add(new Part(
                    "sensorAge",
                    List.of("The sensor's battery is %.1f years old; ten years end on %s"
                            .formatted(age.years(), age.endsOn())),
                    age));
        }
        given.findWords("learning").map(PressureSensorGroup::warning).ifPresent(warning -> {
            var learning = SensorLearning.of(warning);
            parts.add(new Part("sensorLearning", List.of("Pressure warning: " + Reader.DEFAULT.say(learning.sentence())), learning));
        });
        return parts;
    }

    private static Part check(Given given) {
        var check = SensorCheck.of(
                given.quantity("sensor-reads"),
                given.find("sensor-at"),
                given.quantity("gauge-reads") - given.quantity("gauge-offset", 0),
                given.find("gauge-at"),
                given.quantity("sensor-placard"));
        var shown = given.shown();
        var answer = switch (check.answer()) {
            case ACCURATE -> "accurate";
            case OFF -> "off";
            case USELESS -> "of no use";
        };
        return new Part(
                "sensor",
                List.of(
                        "The sensor reads %s too %s: %s"
                                .formatted(
                                        shown.show(Math.abs(check.differenceKpa()), "kPa"),
                                        check.differenceKpa() < 0 ? "little" : "much",
                                        answer),
                        "The warning comes below %s".formatted(shown.show(check.warnsAtKpa(), "kPa"))),
                check);
    }

    private static PressureWarning warning(String word) {
        return new PressureWarning(
                word.equalsIgnoreCase("indirect") ? PressureWarning.Kind.INDIRECT : PressureWarning.Kind.DIRECT,
                learning(word));
    }

    private static PressureWarning.@Nullable Learning learning(String word) {
        return switch (LEARNING.indexOf(word.toLowerCase(Locale.ROOT))) {
            case 0 -> PressureWarning.Learning.BY_ITSELF;
            case 1 -> PressureWarning.Learning.BY_TOOL;
            case 2 -> PressureWarning.Learning.BY_DRIVING;
            default -> null;
        };
    }

    /** The word of the choice for a car; empty where it is not known. */
    static String word(PressureWarning warning) {
        var learning = warning.learning();
        if (warning.kind() == PressureWarning.Kind.INDIRECT) {
            return "indirect";
        }
        return learning == null
                ? ""
                : switch (learning) {
                    case BY_ITSELF -> "itself";
                    case BY_TOOL -> "tool";
                    case BY_DRIVING -> "driving";
                };
    }
}
