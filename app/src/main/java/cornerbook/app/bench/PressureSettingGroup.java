package cornerbook.app.bench;

import cornerbook.app.bench.AskSaid.Help;
import cornerbook.app.bench.AskSaid.Label;
import cornerbook.app.bench.AskSaid.Note;
import cornerbook.app.bench.AskSaid.Otherwise;
import cornerbook.app.bench.AskSaid.Title;
import cornerbook.core.air.AirSaid;
import cornerbook.core.air.PressureSetting;
import cornerbook.core.say.Amount;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the gauge has to show now. */
final class PressureSettingGroup {
    static final Group GROUP = new Group(
            "setting",
            Title.PRESSURE_SETTING,
            Note.PRESSURE_SETTING,
            List.of(
                    Ask.quantity(
                            "placard",
                            Label.PRESSURE_PLACARD,
                            "kPa",
                            AirSaid.Input.PLACARD_PRESSURE,
                            Help.PRESSURE_PLACARD),
                    Ask.quantity(
                            "tyre-at",
                            Label.PRESSURE_TYRE_AT,
                            "°C",
                            AirSaid.Input.TYRE_TEMPERATURE,
                            Help.PRESSURE_TYRE_AT),
                    Ask.quantity(
                            "stands-at",
                            Label.PRESSURE_STANDS_AT,
                            "°C",
                            AirSaid.Input.STANDING_TEMPERATURE,
                            Help.PRESSURE_STANDS_AT),
                    Ask.quantity(
                            "maximum",
                            Label.PRESSURE_MAXIMUM,
                            "kPa",
                            AirSaid.Input.MAXIMUM_PRESSURE,
                            Help.PRESSURE_MAXIMUM),
                    Ask.quantity(
                            "altitude", Label.PRESSURE_ALTITUDE, "m", AirSaid.Input.ALTITUDE, Help.PRESSURE_ALTITUDE),
                    Ask.quantity(
                            "stands-altitude",
                            Label.PRESSURE_STANDS_ALTITUDE,
                            "m",
                            null,
                            Help.PRESSURE_STANDS_ALTITUDE),
                    Ask.quantity(
                            "gauge-offset",
                            Label.PRESSURE_GAUGE_OFFSET,
                            "kPa",
                            AirSaid.Input.GAUGE_OFFSET,
                            Help.PRESSURE_GAUGE_OFFSET),
                    Ask.quantity(
                            "gauge-error",
                            Label.PRESSURE_GAUGE_ERROR,
                            "kPa",
                            AirSaid.Input.GAUGE_ERROR,
                            new Otherwise(
                                    Help.PRESSURE_GAUGE_ERROR, Amount.of(PressureQuestion.GAUGE_ERROR_KPA, "kPa"))),
                    new Ask("driven", Label.PRESSURE_DRIVEN, new Ask.Tick(), Help.PRESSURE_DRIVEN, null)),
            List.of("placard", "tyre-at", "stands-at"),
            PressureSettingGroup::setting);

    private PressureSettingGroup() {}

    private static List<Part> setting(Given given) {
        if (!given.any(
                "placard",
                "tyre-at",
                "stands-at",
                "maximum",
                "altitude",
                "stands-altitude",
                "gauge-offset",
                "gauge-error",
                "driven")) {
            return List.of();
        }
        double placardKpa = given.quantity("placard");
        double standingC = given.quantity("stands-at");
        double altitudeM = given.quantity("altitude", 0);
        var setting = PressureSetting.of(
                placardKpa,
                new PressureSetting.Circumstances(
                        given.quantity("tyre-at"),
                        standingC,
                        altitudeM,
                        given.quantity("stands-altitude", altitudeM),
                        given.ticked("driven"),
                        coldestC(given, standingC)),
                new PressureSetting.Gauge(
                        given.quantity("gauge-offset", 0),
                        given.quantity("gauge-error", PressureQuestion.GAUGE_ERROR_KPA)));
        var maximumKpa = given.find("maximum");
        if (maximumKpa != null) {
            given.at("maximum", () -> setting.requireAtMost(maximumKpa));
        }
        return List.of(Part.of(
                "setting",
                setting,
                new AnswerSaid.SetNow(
                        given.told(setting.setKpa(), "kPa"),
                        given.told(setting.gaugeErrorKpa(), "kPa"),
                        given.told(placardKpa, "kPa"),
                        given.told(standingC, "°C"))));
    }

    /** As typed for the season below, else of the place; the picture does without when it is milder than where the car stands. */
    private static @Nullable Double coldestC(Given given, double standingC) {
        var climate = given.climate();
        var coldestC = given.find("coldest");
        if (coldestC == null && climate != null) {
            coldestC = climate.coldestMorningC();
        }
        return coldestC != null && coldestC < standingC ? coldestC : null;
    }
}
