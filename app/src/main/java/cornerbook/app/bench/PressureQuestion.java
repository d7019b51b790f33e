package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Description;
import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.NothingAsked;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.ReferencePressures;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.air.AirSaid;
import cornerbook.core.air.LeakRate;
import cornerbook.core.air.LoadPressure;
import cornerbook.core.say.Amount;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.TyreSaid;
import java.util.List;

/** What to set on the gauge, what to expect over the season, what a load needs, whether a tyre leaks, what its sensor is worth. */
final class PressureQuestion {
    static final double GAUGE_ERROR_KPA = 3;
    private static final double USUAL_EXPONENT = 0.8;

    static final Question QUESTION = new Question(
            "pressure",
            Title.PRESSURE,
            Description.PRESSURE,
            List.of(),
            List.of(
                    PressureSettingGroup.GROUP,
                    PressureSeasonGroup.GROUP,
                    new Group(
                            "load",
                            Title.PRESSURE_LOAD,
                            Note.PRESSURE_LOAD,
                            List.of(
                                    Ask.quantity(
                                            "axle-load",
                                            Label.PRESSURE_AXLE_LOAD,
                                            "kg",
                                            AirSaid.Input.AXLE_LOAD,
                                            Help.PRESSURE_AXLE_LOAD),
                                    Ask.number(
                                            "load-index",
                                            Label.PRESSURE_LOAD_INDEX,
                                            "",
                                            TyreSaid.Input.LOAD_INDEX,
                                            Help.PRESSURE_LOAD_INDEX),
                                    Ask.quantity(
                                            "reference",
                                            Label.PRESSURE_REFERENCE,
                                            "kPa",
                                            AirSaid.Input.REFERENCE_PRESSURE,
                                            new ReferencePressures(
                                                    Help.PRESSURE_REFERENCE,
                                                    Amount.of(250, "kPa"),
                                                    Amount.of(290, "kPa"),
                                                    Amount.of(241.3, "kPa"))),
                                    Ask.quantity(
                                            "at-pressure",
                                            Label.PRESSURE_AT_PRESSURE,
                                            "kPa",
                                            AirSaid.Input.PLACARD_PRESSURE,
                                            Help.PRESSURE_AT_PRESSURE),
                                    Ask.number(
                                            "exponent",
                                            Label.PRESSURE_EXPONENT,
                                            "",
                                            AirSaid.Input.LOAD_EXPONENT,
                                            Help.PRESSURE_EXPONENT),
                                    Ask.number(
                                            "heavier-side",
                                            Label.PRESSURE_HEAVIER_SIDE,
                                            "%",
                                            AirSaid.Input.HEAVIER_SHARE,
                                            Help.PRESSURE_HEAVIER_SIDE)),
                            List.of("axle-load", "load-index", "reference", "at-pressure"),
                            PressureQuestion::load),
                    new Group(
                            "leak",
                            Title.PRESSURE_LEAK,
                            Note.PRESSURE_LEAK,
                            List.of(
                                    Ask.quantity("first", Label.PRESSURE_FIRST, "kPa", null, Help.PRESSURE_FIRST),
                                    Ask.quantity(
                                            "first-at", Label.PRESSURE_FIRST_AT, "°C", null, Help.PRESSURE_FIRST_AT),
                                    Ask.quantity("second", Label.PRESSURE_SECOND, "kPa", null, Help.PRESSURE_SECOND),
                                    Ask.quantity(
                                            "second-at", Label.PRESSURE_SECOND_AT, "°C", null, Help.PRESSURE_SECOND_AT),
                                    Ask.number(
                                            "days",
                                            Label.PRESSURE_DAYS,
                                            "",
                                            AirSaid.Input.DAYS_BETWEEN,
                                            Help.PRESSURE_DAYS),
                                    Ask.quantity(
                                            "error",
                                            Label.PRESSURE_ERROR,
                                            "kPa",
                                            AirSaid.Input.GAUGE_ERROR,
                                            new Otherwise(Help.PRESSURE_ERROR, Amount.of(GAUGE_ERROR_KPA, "kPa")))),
                            List.of("first", "first-at", "second", "second-at", "days"),
                            PressureQuestion::leak),
                    PressureSensorGroup.GROUP),
            NothingAsked.PRESSURE,
            "cornerbook pressure --placard \"36 psi\" --tyre-at \"15 °C\" --stands-at \"-5 °C\" --months \"2,-4,-9,-8,-2\" --coldest \"-24 °C\"");

    private PressureQuestion() {}

    private static List<Part> load(Given given) {
        if (!given.any("axle-load", "load-index", "reference", "at-pressure", "exponent", "heavier-side")) {
            return List.of();
        }
        double placardKpa = given.quantity("at-pressure");
        var result = LoadPressure.of(
                given.quantity("axle-load"),
                given.number("heavier-side", 50) / 100,
                new LoadIndex(given.whole("load-index")),
                given.quantity("reference"),
                given.number("exponent", USUAL_EXPONENT),
                placardKpa);
        return List.of(Part.of(
                "load",
                result,
                new AnswerSaid.LoadNeeds(given.told(result.tyreLoadKg(), "kg"), given.told(result.neededKpa(), "kPa")),
                new AnswerSaid.LoadCarried(
                        given.told(placardKpa, "kPa"), given.told(result.capacityAtPlacardKg(), "kg"))));
    }

    private static List<Part> leak(Given given) {
        if (!given.any("first", "first-at", "second", "second-at", "days", "error")) {
            return List.of();
        }
        var result = LeakRate.of(
                new LeakRate.At(given.quantity("first"), given.quantity("first-at")),
                new LeakRate.At(given.quantity("second"), given.quantity("second-at")),
                given.number("days"),
                given.quantity("error", GAUGE_ERROR_KPA));
        return List.of(Part.of(
                "leak",
                result,
                new AnswerSaid.Leaks(
                        given.told(result.lossKpa(), "kPa"), given.told(result.errorKpa(), "kPa"), result.answer())));
    }
}
