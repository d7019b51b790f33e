package cornerbook.app.bench;

import cornerbook.core.air.PressureSetting;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the gauge has to show now. */
final class PressureSettingGroup {
    static final Group GROUP = new Group(
            "setting",
            "Set now",
            "The placard is cold. The temperature is the tyre's: for a stored wheel that of the store.",
            List.of(
                    Ask.quantity(
                            "placard",
                            "Placard, cold",
                            "kPa",
                            "placard pressure",
                            "Cold pressure on the car's placard."),
                    Ask.quantity(
                            "tyre-at",
                            "Tyre now",
                            "°C",
                            "temperature of the tyre",
                            "Temperature of the tyre now; of the store, for a stored wheel."),
                    Ask.quantity(
                            "stands-at",
                            "Car will stand at",
                            "°C",
                            "temperature where it will stand",
                            "Temperature where the car will stand."),
                    Ask.quantity(
                            "maximum",
                            "Sidewall maximum",
                            "kPa",
                            "pressure to be set",
                            "Maximum pressure on the tyre's sidewall; not looked at if not given."),
                    Ask.quantity(
                            "altitude",
                            "Altitude here",
                            "m",
                            "altitude",
                            "Altitude of the shop; sea level if not given."),
                    Ask.quantity(
                            "stands-altitude",
                            "Altitude there",
                            "m",
                            "",
                            "Altitude where the car will stand; that of the shop if not given."),
                    Ask.quantity(
                            "gauge-offset",
                            "Gauge shows too much",
                            "kPa",
                            "offset of the gauge",
                            "What the gauge shows too much against a master; 0 if not given."),
                    Ask.quantity(
                            "gauge-error",
                            "Gauge error ±",
                            "kPa",
                            "error of the gauge",
                            "How far the gauge may be off beyond that; 3 kPa if not given."),
                    new Ask(
                            "driven",
                            "Driven within about three hours",
                            new Ask.Tick(),
                            "Then the tyre is warm, and no air is let out of it.",
                            "")),
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
            setting.requireAtMost(maximumKpa);
        }
        var shown = given.shown();
        return List.of(new Part(
                "setting",
                List.of("Set now to %s on this gauge, ±%s, so that it is %s cold at %s"
                        .formatted(
                                shown.show(setting.setKpa(), "kPa"),
                                shown.show(setting.gaugeErrorKpa(), "kPa"),
                                shown.show(placardKpa, "kPa"),
                                shown.show(standingC, "°C"))),
                setting));
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
