package cornerbook.app.bench;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.LoadTest;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.RatingConversion;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.RestVoltage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What the 12 V battery's numbers say. */
final class BatteryQuestion {
    private static final double USUAL_TEMPERATURE_C = 20;
    /** Names up to this length are short forms and stay in capitals, as on the label. */
    private static final int LONGEST_SHORT_FORM = 3;

    static final Question QUESTION = new Question(
            "battery",
            "12 V battery",
            "What the numbers of a 12 V battery say: charge, health, rating, days parked.",
            List.of(
                    Ask.choice(
                            "chemistry",
                            "Chemistry",
                            words(Chemistry.values()),
                            "chemistry",
                            "What is on the label: flooded, EFB, AGM or lithium."),
                    Ask.quantity(
                            "temperature",
                            "Battery's temperature",
                            "°C",
                            "temperature of the battery",
                            "Temperature of the battery; 20 °C if not given.")),
            List.of(
                    new Group(
                            "rest",
                            "Charge at rest",
                            "Let the car sleep first: awake, its converter holds the voltage up.",
                            List.of(
                                    Ask.quantity(
                                            "volts",
                                            "Voltage at rest",
                                            "V",
                                            "battery voltage",
                                            "With the car asleep and nothing switched on."),
                                    Ask.number(
                                            "rested",
                                            "Rested",
                                            "h",
                                            "rest of the battery",
                                            "Hours since charger, converter or drive.")),
                            List.of("chemistry", "volts", "rested"),
                            BatteryQuestion::rest),
                    new Group(
                            "health",
                            "Health and rating",
                            "Set the tester to the standard on the label: the numbers of two standards do not compare.",
                            List.of(
                                    Ask.quantity(
                                            "rated",
                                            "Rated",
                                            "A",
                                            "rated cranking current",
                                            "Cold cranking current on the label."),
                                    Ask.choice(
                                            "standard",
                                            "Its standard",
                                            words(RatingStandard.values()),
                                            "rating standard",
                                            "Its standard: SAE, EN, IEC, DIN or JIS."),
                                    Ask.quantity(
                                            "measured",
                                            "Measured",
                                            "A",
                                            "measured cranking current",
                                            "Cranking current measured by the same standard."),
                                    Ask.choice(
                                            "compare-with",
                                            "Compare with",
                                            words(RatingStandard.values()),
                                            "other standard",
                                            "Another standard: the range of its number."),
                                    Ask.quantity(
                                            "load-volts",
                                            "Under load",
                                            "V",
                                            "voltage under load",
                                            "Voltage after 15 s of half the rated current."),
                                    new Ask(
                                            "tester-without-temperature",
                                            "Tester does not allow for temperature",
                                            new Ask.Tick(),
                                            "Then the battery's temperature is allowed for here.",
                                            "")),
                            List.of("rated", "standard", "measured"),
                            BatteryQuestion::rating),
                    new Group(
                            "parked",
                            "Days parked",
                            "To half charge, the reserve for electronics and contactors: nothing is cranked, but below it the car may neither open nor drive. The worst case, without converter.",
                            List.of(
                                    Ask.quantity(
                                            "capacity",
                                            "Capacity",
                                            "A·h",
                                            "battery capacity",
                                            "Capacity on the label, A·h."),
                                    Ask.quantity(
                                            "standby",
                                            "Standby current",
                                            "A",
                                            "standby current",
                                            "Standby current, as \"60 mA\"."),
                                    Ask.number(
                                            "health",
                                            "Health",
                                            "%",
                                            "health of the battery",
                                            "Health of the battery; 100 if not given."),
                                    Ask.number(
                                            "parked-at",
                                            "Charge when parked",
                                            "%",
                                            "charge when it is parked",
                                            "State of charge when it is parked; 100 if not given.")),
                            List.of("capacity", "standby"),
                            BatteryQuestion::parked)),
            "nothing to compute, expected --volts, --capacity, or --rated with --measured, --compare-with or --load-volts",
            "cornerbook battery --chemistry agm --temperature \"5 °C\" --volts 12.5 --rested 12 --rated 680 --standard en --measured 560");

    private BatteryQuestion() {}

    private static List<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(Enum::name)
                .map(name -> name.length() > LONGEST_SHORT_FORM ? name.toLowerCase(Locale.ROOT) : name)
                .toList();
    }

    private static List<Part> rest(Given given) {
        if (!given.any("volts", "rested")) {
            return List.of();
        }
        var result = RestVoltage.of(
                given.neededChoice("chemistry", Chemistry.class),
                given.quantity("volts"),
                given.quantity("temperature", USUAL_TEMPERATURE_C),
                given.number("rested"));
        return List.of(new Part(
                "rest", List.of("State of charge: about %.0f %%".formatted(result.stateOfCharge() * 100)), result));
    }

    private static List<Part> rating(Given given) {
        var parts = new ArrayList<Part>();
        if (!given.any("measured", "compare-with", "load-volts")) {
            return parts;
        }
        double ratedA = given.quantity("rated");
        double temperatureC = given.quantity("temperature", USUAL_TEMPERATURE_C);
        if (given.any("measured")) {
            var result = BatteryHealth.of(
                    given.quantity("measured"),
                    ratedA,
                    given.neededChoice("standard", RatingStandard.class),
                    temperatureC,
                    !given.ticked("tester-without-temperature"));
            var judgement = switch (result.judgement()) {
                case SOUND -> "sound";
                case WATCH -> "watch it";
                case REPLACE -> "at its end";
            };
            parts.add(new Part(
                    "health", List.of("%.0f %% of its rating: %s".formatted(result.share() * 100, judgement)), result));
        }
        given.choice("compare-with", RatingStandard.class).ifPresent(other -> {
            var result = RatingConversion.of(ratedA, given.neededChoice("standard", RatingStandard.class), other);
            parts.add(new Part(
                    "rating",
                    List.of("%.0f A by %s is about %.0f to %.0f A by %s"
                            .formatted(result.ratedA(), result.from(), result.lowA(), result.highA(), result.to())),
                    result));
        });
        if (given.any("load-volts")) {
            var result = LoadTest.of(
                    given.neededChoice("chemistry", Chemistry.class),
                    ratedA,
                    given.quantity("load-volts"),
                    temperatureC);
            parts.add(new Part(
                    "loadTest",
                    List.of("Load test at %.0f A: %.2f V, at least %.2f V: %s"
                            .formatted(
                                    result.loadA(),
                                    result.volts(),
                                    result.leastVolts(),
                                    result.passes() ? "passes" : "does not pass")),
                    result));
        }
        return parts;
    }

    private static List<Part> parked(Given given) {
        if (!given.any("capacity", "standby", "parked-at")) {
            return List.of();
        }
        var result = ParkedDays.of(
                given.quantity("capacity"),
                given.number("health", 100) / 100,
                given.quantity("standby"),
                given.number("parked-at", 100) / 100);
        return List.of(new Part(
                "parked",
                List.of("Parked from %.0f %% to half charge: %.0f days, worst case without converter"
                        .formatted(result.charge() * 100, result.days())),
                result));
    }
}
