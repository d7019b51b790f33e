package cornerbook.app.bench;

import cornerbook.core.tyre.LeakRate;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.LoadPressure;
import cornerbook.core.tyre.PressureSetting;
import cornerbook.core.tyre.SeasonPressures;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What to set on the gauge, what to expect over the season, what a load needs, whether a tyre leaks. */
final class PressureQuestion {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*|\\s+");
    private static final double GAUGE_ERROR_KPA = 3;
    private static final double USUAL_EXPONENT = 0.8;

    static final Question QUESTION = new Question(
            "pressure",
            "Pressure",
            "What to set on the gauge, what it will read over the season, what a load needs, whether a tyre leaks.",
            List.of(),
            List.of(
                    new Group(
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
                                            "The car was driven within about three hours.",
                                            "")),
                            PressureQuestion::setting),
                    new Group(
                            "season",
                            "Over the season",
                            "For the placard and the temperature above; no air lost, at sea level.",
                            List.of(
                                    Ask.words(
                                            "months",
                                            "Mean temperature of each month to come",
                                            "2, -4, -9, -8, -2, 5",
                                            "mean temperature of a month",
                                            "Mean temperature of each month to come, parted by commas."),
                                    Ask.quantity(
                                            "coldest",
                                            "Coldest morning",
                                            "°C",
                                            "coldest morning",
                                            "Coldest morning of these months.")),
                            PressureQuestion::season),
                    new Group(
                            "load",
                            "Load",
                            "The placard and the maker's table for full load outrank the formula.",
                            List.of(
                                    Ask.quantity("axle-load", "Axle load", "kg", "axle load", "Load of the axle."),
                                    Ask.number(
                                            "load-index", "Load index", "", "load index", "Load index of its tyres."),
                                    Ask.quantity(
                                            "reference",
                                            "Index holds at",
                                            "kPa",
                                            "reference pressure",
                                            "Pressure at which the load index holds: 250 kPa standard, 290 kPa extra load, 35 psi P-metric."),
                                    Ask.quantity(
                                            "at-pressure",
                                            "Judged at",
                                            "kPa",
                                            "placard pressure",
                                            "Cold pressure to be judged, as on the placard."),
                                    Ask.number(
                                            "exponent",
                                            "Exponent",
                                            "",
                                            "exponent of load on pressure",
                                            "Exponent of load on pressure; 0.8 if not given; a lower one asks for less air."),
                                    Ask.number(
                                            "heavier-side",
                                            "Heavier side",
                                            "%",
                                            "share of the heavier wheel",
                                            "Share of the axle load on its heavier wheel; 50 if not given.")),
                            PressureQuestion::load),
                    new Group(
                            "leak",
                            "Slow leak",
                            "Two cold readings with no air added between them.",
                            List.of(
                                    Ask.quantity("first", "First reading", "kPa", "", "First cold reading."),
                                    Ask.quantity("first-at", "Tyre then", "°C", "", "Temperature of the tyre then."),
                                    Ask.quantity(
                                            "second",
                                            "Second reading",
                                            "kPa",
                                            "",
                                            "Second cold reading, with no air added between."),
                                    Ask.quantity("second-at", "Tyre then", "°C", "", "Temperature of the tyre then."),
                                    Ask.number("days", "Days between", "", "days between", "Days between the two."),
                                    Ask.quantity(
                                            "error",
                                            "Gauge error ±",
                                            "kPa",
                                            "error of the gauge",
                                            "How far the gauge may be off; 3 kPa if not given.")),
                            PressureQuestion::leak)),
            "nothing to compute, expected --placard, --axle-load or --first",
            "cornerbook pressure --placard \"36 psi\" --tyre-at \"15 °C\" --stands-at \"-5 °C\" --months \"2,-4,-9,-8,-2\" --coldest \"-24 °C\"");

    private PressureQuestion() {}

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
                        given.ticked("driven")),
                new PressureSetting.Gauge(
                        given.quantity("gauge-offset", 0), given.quantity("gauge-error", GAUGE_ERROR_KPA)));
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

    private static List<Part> season(Given given) {
        if (!given.any("months", "coldest")) {
            return List.of();
        }
        if (!given.any("months") || !given.any("coldest")) {
            throw new AskException(
                    given.any("months") ? "coldest" : "months",
                    "months of the season are half given, expected their mean temperatures and the coldest morning");
        }
        double placardKpa = given.quantity("placard");
        double standingC = given.quantity("stands-at");
        double coldestC = given.quantity("coldest");
        var means = BETWEEN.splitAsStream(given.words("months"))
                .map(text -> month(given, text))
                .toList();
        var season = SeasonPressures.of(placardKpa, standingC, placardKpa, means, coldestC);
        var shown = given.shown();
        var lines = new ArrayList<String>();
        season.months()
                .forEach(month -> lines.add("At %s to be read: %s"
                        .formatted(shown.show(month.temperatureC(), "°C"), shown.show(month.pressureKpa(), "kPa"))));
        lines.add("Coldest morning, %s: %s; the warning comes below %s"
                .formatted(
                        shown.show(coldestC, "°C"),
                        shown.show(season.coldest().pressureKpa(), "kPa"),
                        shown.show(season.warningKpa(), "kPa")));
        return List.of(new Part("season", lines, season));
    }

    private static double month(Given given, String text) {
        try {
            return given.quantity(text, "°C");
        } catch (IllegalArgumentException e) {
            throw new AskException("months", String.valueOf(e.getMessage()));
        }
    }

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
        var shown = given.shown();
        return List.of(new Part(
                "load",
                List.of(
                        "Needed for %s on the tyre: %s cold"
                                .formatted(
                                        shown.show(result.tyreLoadKg(), "kg"), shown.show(result.neededKpa(), "kPa")),
                        "At %s the tyre may carry %s"
                                .formatted(
                                        shown.show(placardKpa, "kPa"), shown.show(result.capacityAtPlacardKg(), "kg"))),
                result));
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
        var answer = switch (result.answer()) {
            case TIGHT -> "tight";
            case SLOW_LEAK -> "a slow leak";
            case NOT_TOLD_APART -> "not to be told yet";
        };
        return List.of(new Part(
                "leak",
                List.of("Loss in 30 days, temperature taken out: %s, ±%s: %s"
                        .formatted(
                                given.shown().show(result.lossKpa(), "kPa"),
                                given.shown().show(result.errorKpa(), "kPa"),
                                answer)),
                result));
    }
}
