package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.BatterySaid;
import cornerbook.core.battery.CapacityTest;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.LoadTest;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.RatingConversion;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.RestVoltage;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
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
            Title.BATTERY,
            Description.BATTERY,
            List.of(
                    Ask.choice(
                            "chemistry", Label.BATTERY_CHEMISTRY, options(Chemistry.values()), Help.BATTERY_CHEMISTRY),
                    Ask.quantity(
                            "temperature",
                            Label.BATTERY_TEMPERATURE,
                            "°C",
                            BatterySaid.Part.TEMPERATURE,
                            new Otherwise(Help.BATTERY_TEMPERATURE, Amount.of(USUAL_TEMPERATURE_C, "°C")))),
            List.of(
                    new Group(
                            "rest",
                            Title.BATTERY_REST,
                            Note.BATTERY_REST,
                            List.of(
                                    Ask.quantity(
                                            "volts",
                                            Label.BATTERY_VOLTS,
                                            "V",
                                            BatterySaid.Part.VOLTAGE,
                                            Help.BATTERY_VOLTS),
                                    Ask.number(
                                            "rested",
                                            Label.BATTERY_RESTED,
                                            "h",
                                            BatterySaid.Part.REST,
                                            Help.BATTERY_RESTED)),
                            List.of("chemistry", "volts", "rested"),
                            BatteryQuestion::rest),
                    new Group(
                            "health",
                            Title.BATTERY_HEALTH,
                            Note.BATTERY_HEALTH,
                            List.of(
                                    Ask.quantity(
                                            "rated",
                                            Label.BATTERY_RATED,
                                            "A",
                                            BatterySaid.Part.RATED_CURRENT,
                                            Help.BATTERY_RATED),
                                    Ask.choice(
                                            "standard",
                                            Label.BATTERY_STANDARD,
                                            options(RatingStandard.values()),
                                            Help.BATTERY_STANDARD),
                                    Ask.quantity(
                                            "measured",
                                            Label.BATTERY_MEASURED,
                                            "A",
                                            BatterySaid.Part.MEASURED_CURRENT,
                                            Help.BATTERY_MEASURED),
                                    Ask.choice(
                                            "compare-with",
                                            Label.BATTERY_COMPARE_WITH,
                                            options(RatingStandard.values()),
                                            Help.BATTERY_COMPARE_WITH),
                                    Ask.quantity(
                                            "load-volts",
                                            Label.BATTERY_LOAD_VOLTS,
                                            "V",
                                            BatterySaid.Part.VOLTAGE_UNDER_LOAD,
                                            Help.BATTERY_LOAD_VOLTS),
                                    new Ask(
                                            "tester-without-temperature",
                                            Label.BATTERY_TESTER_WITHOUT_TEMPERATURE,
                                            new Ask.Tick(),
                                            Help.BATTERY_TESTER_WITHOUT_TEMPERATURE,
                                            null)),
                            List.of("rated", "standard", "measured"),
                            BatteryQuestion::rating),
                    new Group(
                            "parked",
                            Title.BATTERY_PARKED,
                            Note.BATTERY_PARKED,
                            List.of(
                                    Ask.quantity(
                                            "capacity",
                                            Label.BATTERY_CAPACITY,
                                            "A·h",
                                            BatterySaid.Part.CAPACITY,
                                            Help.BATTERY_CAPACITY),
                                    Ask.quantity(
                                            "standby",
                                            Label.BATTERY_STANDBY,
                                            "A",
                                            BatterySaid.Part.STANDBY,
                                            Help.BATTERY_STANDBY),
                                    Ask.quantity(
                                            "discharged",
                                            Label.BATTERY_DISCHARGED,
                                            "A·h",
                                            BatterySaid.Part.DISCHARGED,
                                            Help.BATTERY_DISCHARGED),
                                    Ask.number(
                                            "health",
                                            Label.BATTERY_HEALTH,
                                            "%",
                                            BatterySaid.Part.HEALTH,
                                            Help.BATTERY_HEALTH),
                                    Ask.number(
                                            "parked-at",
                                            Label.BATTERY_PARKED_AT,
                                            "%",
                                            BatterySaid.Part.CHARGE_WHEN_PARKED,
                                            Help.BATTERY_PARKED_AT)),
                            List.of("capacity", "standby"),
                            BatteryQuestion::parked)),
            NothingAsked.BATTERY,
            "cornerbook battery --chemistry agm --temperature \"5 °C\" --volts 12.5 --rested 12 --rated 680 --standard en --measured 560");

    private BatteryQuestion() {}

    private static <E extends Enum<E> & Said> List<Ask.Option> options(E[] constants) {
        return Arrays.stream(constants)
                .map(each -> new Ask.Option(word(each.name()), each))
                .toList();
    }

    private static String word(String name) {
        return name.length() > LONGEST_SHORT_FORM ? name.toLowerCase(Locale.ROOT) : name;
    }

    private static Amount percent(double share) {
        return Amount.of(share * 100, "%");
    }

    private static List<Part> rest(Given given) {
        if (!given.any("volts", "rested")) {
            return List.of();
        }
        var result = given.at(
                "volts",
                () -> RestVoltage.of(
                        given.neededChoice("chemistry", Chemistry.class),
                        given.quantity("volts"),
                        given.quantity("temperature", USUAL_TEMPERATURE_C),
                        given.number("rested")));
        return List.of(Part.of(
                "rest",
                result,
                new AnswerSaid.Charge(percent(result.stateOfCharge())),
                new AnswerSaid.Freezes(Amount.of(result.freezesAtC(), "°C"))));
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
            parts.add(
                    Part.of("health", result, new AnswerSaid.OfItsRating(percent(result.share()), result.judgement())));
        }
        given.choice("compare-with", RatingStandard.class).ifPresent(other -> {
            var standard = given.neededChoice("standard", RatingStandard.class);
            var result = given.at("compare-with", () -> RatingConversion.of(ratedA, standard, other));
            parts.add(Part.of(
                    "rating",
                    result,
                    new AnswerSaid.RatingCompared(
                            Amount.of(result.ratedA(), "A"),
                            result.from(),
                            new Between(result.lowA(), result.highA(), "A", 0),
                            result.to())));
        });
        if (given.any("load-volts")) {
            var result = LoadTest.of(
                    given.neededChoice("chemistry", Chemistry.class),
                    ratedA,
                    given.quantity("load-volts"),
                    temperatureC);
            parts.add(Part.of(
                    "loadTest",
                    result,
                    new AnswerSaid.LoadTested(
                            Amount.of(result.loadA(), "A"),
                            Amount.of(result.volts(), "V"),
                            Amount.of(result.leastVolts(), "V"),
                            result.passes())));
        }
        return parts;
    }

    private static List<Part> parked(Given given) {
        var parts = new ArrayList<Part>();
        if (given.any("discharged")) {
            var result = CapacityTest.of(given.quantity("discharged"), given.quantity("capacity"));
            parts.add(Part.of(
                    "capacityTest", result, new AnswerSaid.OfItsCapacity(percent(result.share()), result.judgement())));
        }
        if (!given.any("standby", "parked-at") && (given.any("discharged") || !given.any("capacity"))) {
            return parts;
        }
        var result = ParkedDays.of(
                given.quantity("capacity"),
                given.number("health", 100) / 100,
                given.quantity("standby"),
                given.number("parked-at", 100) / 100);
        parts.add(Part.of(
                "parked", result, new AnswerSaid.ParkedFor(percent(result.charge()), (int) Math.round(result.days()))));
        return parts;
    }
}
