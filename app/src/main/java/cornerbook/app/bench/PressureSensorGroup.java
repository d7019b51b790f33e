package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Option;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.air.AirSaid;
import cornerbook.core.air.PressureWarning;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.air.SensorLearning;
import cornerbook.core.say.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Whether a wheel's pressure sensor can be relied on, and what the car needs to learn other wheels. */
final class PressureSensorGroup {
    /** How a car learns other wheels, in the words of the choice. */
    static final List<String> LEARNING = List.of("itself", "tool", "driving", "indirect");

    private static final List<Ask.Option> WAYS = List.of(
            new Ask.Option("itself", Option.ITSELF),
            new Ask.Option("tool", Option.TOOL),
            new Ask.Option("driving", Option.DRIVING),
            new Ask.Option("indirect", Option.INDIRECT));

    static final Group GROUP = new Group(
            "sensor",
            Title.PRESSURE_SENSOR,
            Note.PRESSURE_SENSOR,
            List.of(
                    Ask.quantity(
                            "sensor-reads",
                            Label.PRESSURE_SENSOR_READS,
                            "kPa",
                            AirSaid.Input.SENSOR_PRESSURE,
                            Help.PRESSURE_SENSOR_READS),
                    Ask.quantity(
                            "gauge-reads",
                            Label.PRESSURE_GAUGE_READS,
                            "kPa",
                            AirSaid.Input.GAUGE_PRESSURE,
                            Help.PRESSURE_GAUGE_READS),
                    Ask.quantity(
                            "sensor-at",
                            Label.PRESSURE_SENSOR_AT,
                            "°C",
                            AirSaid.Input.SENSOR_TEMPERATURE,
                            Help.PRESSURE_SENSOR_AT),
                    Ask.quantity("gauge-at", Label.PRESSURE_GAUGE_AT, "°C", null, Help.PRESSURE_GAUGE_AT),
                    Ask.quantity(
                            "sensor-placard",
                            Label.PRESSURE_SENSOR_PLACARD,
                            "kPa",
                            AirSaid.Input.PLACARD_PRESSURE,
                            Help.PRESSURE_SENSOR_PLACARD),
                    new Ask(
                            "sensor-since",
                            Label.PRESSURE_SENSOR_SINCE,
                            new Ask.Day(),
                            Help.PRESSURE_SENSOR_SINCE,
                            AirSaid.Input.SENSOR_BATTERY),
                    Ask.choice("learning", Label.PRESSURE_LEARNING, WAYS, Help.PRESSURE_LEARNING)),
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
            parts.add(Part.of(
                    "sensorAge", age, new AnswerSaid.SensorBattery(new Amount(age.years(), "", 1), age.endsOn())));
        }
        given.findWords("learning").map(PressureSensorGroup::warning).ifPresent(warning -> {
            var learning = SensorLearning.of(warning);
            parts.add(Part.of("sensorLearning", learning, new AnswerSaid.LearnsBy(learning.sentence())));
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
        return Part.of(
                "sensor",
                check,
                new AnswerSaid.SensorOff(
                        given.told(Math.abs(check.differenceKpa()), "kPa"), check.differenceKpa() < 0, check.answer()),
                new AnswerSaid.WarnsBelow(given.told(check.warnsAtKpa(), "kPa")));
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
}
