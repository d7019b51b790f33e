package cornerbook.app.bench;

import cornerbook.core.air.LeakRate;
import cornerbook.core.air.LoadPressure;
import cornerbook.core.tyre.LoadIndex;
import java.util.List;

/** What to set on the gauge, what to expect over the season, what a load needs, whether a tyre leaks, what its sensor is worth. */
final class PressureQuestion {
    static final double GAUGE_ERROR_KPA = 3;
    private static final double USUAL_EXPONENT = 0.8;

    static final Question QUESTION = new Question(
            "pressure",
            "Pressure",
            "What to set on the gauge, what it will read over the season, what a load needs, whether a tyre leaks, whether its sensor reads right.",
            List.of(),
            List.of(
                    PressureSettingGroup.GROUP,
                    PressureSeasonGroup.GROUP,
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
                            List.of("axle-load", "load-index", "reference", "at-pressure"),
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
                            List.of("first", "first-at", "second", "second-at", "days"),
                            PressureQuestion::leak),
                    PressureSensorGroup.GROUP),
            "nothing to compute, expected --placard, --axle-load, --first, --sensor-reads, --sensor-since or --learning",
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
