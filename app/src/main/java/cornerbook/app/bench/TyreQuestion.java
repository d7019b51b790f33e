package cornerbook.app.bench;

import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.SetFit;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.why.Step;
import java.util.List;

/** What a sidewall says, and whether another size, rim or set of wheels fits. */
final class TyreQuestion {
    private static final double USUAL_SPEED_KMH = 100;
    private static final String SIZE = "225/55R18 98V";
    private static final String MOUNTING = "5x114.3 M14x1.5 cone 64.1 ET45 7.5J";

    static final Question QUESTION = new Question(
            "tyre",
            "Tyre",
            "What a tyre's sidewall says, and whether another size, rim or set of wheels fits the car.",
            List.of(),
            List.of(
                    TyreSizeGroup.GROUP,
                    new Group(
                            "comparison",
                            "Two sizes",
                            "Makers' tyres differ from the size's geometry by up to about 1.5 %.",
                            List.of(
                                    Ask.words(
                                            "placard",
                                            "On the placard",
                                            SIZE,
                                            "",
                                            "Size on the car's placard, as \"225/55R18 98V\"."),
                                    Ask.words("other", "The other", "235/50R18 101H", "", "Size to be compared."),
                                    Ask.quantity(
                                            "speed",
                                            "Speed shown",
                                            "km/h",
                                            "speed shown",
                                            "Speed that the speedometer shows; 100 km/h if not given.")),
                            List.of("placard", "other"),
                            TyreQuestion::comparison),
                    TyreAgeGroup.GROUP,
                    TyreDifferenceGroup.GROUP,
                    new Group(
                            "fit",
                            "Another wheel on this hub",
                            "Turn the wheel by hand and look at caliper, strut and wing before the car moves.",
                            List.of(
                                    Ask.words(
                                            "hub",
                                            "Hub and own wheel",
                                            MOUNTING,
                                            "",
                                            "Hub and own wheel, as \"5x114.3 M14x1.5 cone 64.1 ET45 7.5J\"."),
                                    Ask.words(
                                            "wheel",
                                            "The other wheel",
                                            MOUNTING,
                                            "",
                                            "The other wheel, written alike."),
                                    Ask.quantity(
                                            "caliper-gap",
                                            "Gap to the caliper",
                                            "mm",
                                            "caliper gap",
                                            "Least gap, measured with the wheel turned by hand; not judged if not given.")),
                            List.of("hub", "wheel"),
                            TyreQuestion::fit)),
            "nothing to compute, expected --size, --placard, --tin, --worn or --hub",
            "cornerbook tyre --placard \"225/55R18 98V\" --other \"235/50R18 101H\" --speed \"62 mph\"");

    private TyreQuestion() {}

    private static List<Part> comparison(Given given) {
        if (!given.any("placard", "other", "speed")) {
            return List.of();
        }
        var result = SizeComparison.of(
                size(given, "placard"), size(given, "other"), given.quantity("speed", USUAL_SPEED_KMH));
        var shown = given.shown();
        return List.of(new Part(
                "comparison",
                List.of(
                        "%s against %s: diameter %s, circumference %s %%"
                                .formatted(
                                        result.other(),
                                        result.placard(),
                                        shown.show(result.diameterMm(), "mm"),
                                        Step.digits(result.circumferencePercent())),
                        "Speedometer shows %s: true speed %s"
                                .formatted(
                                        shown.show(result.indicatedKmh(), "km/h"),
                                        shown.show(result.trueKmh(), "km/h")),
                        "Tread %s the body; %.0f turns per km"
                                .formatted(
                                        moved(given, result.radiusMm(), "nearer to", "farther from"),
                                        result.turnsPerKm())),
                result));
    }

    private static List<Part> fit(Given given) {
        if (!given.any("hub", "wheel", "caliper-gap")) {
            return List.of();
        }
        var result = SetFit.of(mounting(given, "hub"), mounting(given, "wheel"), given.find("caliper-gap"));
        return List.of(new Part(
                "fit",
                List.of(
                        result.mounts() ? "The wheel mounts on the hub" : "The wheel does not belong on the hub",
                        "Inner edge %s, outer edge %s"
                                .formatted(
                                        moved(given, result.inwardMm(), "inward", "outward"),
                                        moved(given, result.outwardMm(), "outward", "inward"))),
                result));
    }

    private static String moved(Given given, double millimetres, String positive, String negative) {
        return "%s %s"
                .formatted(given.shown().show(Math.abs(millimetres), "mm"), millimetres < 0 ? negative : positive);
    }

    private static TyreSize size(Given given, String name) {
        return given.reading(name, TyreSize::parse);
    }

    private static Mounting mounting(Given given, String name) {
        return given.reading(name, Mounting::parse);
    }
}
