package cornerbook.app.bench;

import cornerbook.core.tyre.CircumferenceDifference;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.RimFit;
import cornerbook.core.tyre.SetFit;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.why.Step;
import java.util.List;

/** Whether another size, rim or set of wheels fits. */
final class TyreQuestion {
    private static final double USUAL_SPEED_KMH = 100;
    private static final String SIZE = "225/55R18 98V";
    private static final String MOUNTING = "5x114.3 M14x1.5 cone 64.1 ET45 7.5J";

    static final Question QUESTION = new Question(
            "tyre",
            "Tyre",
            "Whether another tyre size, rim or set of wheels fits the car.",
            List.of(),
            List.of(
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
                    new Group(
                            "rim",
                            "One size on a rim",
                            "The tyre maker's table outranks the range.",
                            List.of(
                                    Ask.words("size", "Size", SIZE, "", "Tyre size."),
                                    Ask.number("rim", "Rim width", "in", "rim width", "Width of the rim, as 7.5.")),
                            List.of("size", "rim"),
                            TyreQuestion::rim),
                    new Group(
                            "circumference",
                            "Difference on an axle or between the axles",
                            "The limit is the car maker's; a measured circumference outranks the computed one.",
                            List.of(
                                    new Ask(
                                            "worn",
                                            "Size, and tread gone",
                                            new Ask.Several("225/55R18=2 mm", 4),
                                            "A tyre and how much of its tread is gone, as 225/55R18=\"2 mm\"; two to four times.",
                                            "worn tyre"),
                                    Ask.quantity(
                                            "circumference-limit",
                                            "Limit",
                                            "mm",
                                            "limit of the circumference",
                                            "Largest difference that the car's maker allows.")),
                            List.of("worn", "circumference-limit"),
                            TyreQuestion::circumference),
                    new Group(
                            "fit",
                            "Another wheel on this hub",
                            "Turn the wheel by hand and look at caliper, strut and wing before the car moves.",
                            List.of(
                                    Ask.words(
                                            "car",
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
                            List.of("car", "wheel"),
                            TyreQuestion::fit)),
            "nothing to compute, expected --placard, --size, --worn or --car",
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

    private static List<Part> rim(Given given) {
        if (!given.any("size", "rim")) {
            return List.of();
        }
        var fit = RimFit.of(size(given, "size"), given.number("rim"));
        return List.of(new Part(
                "rim",
                List.of(
                        "Section width on a rim of %s in: %s"
                                .formatted(
                                        Step.digits(fit.rimCode()),
                                        given.shown().show(fit.sectionWidthMm(), "mm")),
                        "Rims for %s: %s to %s in, measured on %s in"
                                .formatted(
                                        fit.size(),
                                        Step.digits(fit.lowestRimCode()),
                                        Step.digits(fit.highestRimCode()),
                                        Step.digits(fit.measuringRimCode()))),
                fit));
    }

    private static List<Part> circumference(Given given) {
        if (!given.any("worn", "circumference-limit")) {
            return List.of();
        }
        var result = CircumferenceDifference.of(
                given.several("worn").stream().map(text -> worn(given, text)).toList(),
                given.quantity("circumference-limit"));
        var shown = given.shown();
        return List.of(new Part(
                "circumference",
                List.of("Rolling circumferences differ by %s, %s the limit of %s"
                        .formatted(
                                shown.show(result.differenceMm(), "mm"),
                                result.within() ? "within" : "above",
                                shown.show(result.limitMm(), "mm"))),
                result));
    }

    private static List<Part> fit(Given given) {
        if (!given.any("car", "wheel", "caliper-gap")) {
            return List.of();
        }
        var result = SetFit.of(mounting(given, "car"), mounting(given, "wheel"), given.find("caliper-gap"));
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

    private static CircumferenceDifference.Worn worn(Given given, String text) {
        int at = text.indexOf('=');
        if (at < 0) {
            throw new IllegalArgumentException(
                    "worn tyre is \"%s\", expected its size and the depth worn off as in 225/55R18=2 mm"
                            .formatted(text));
        }
        return new CircumferenceDifference.Worn(
                TyreSize.parse(text.substring(0, at)), given.quantity(text.substring(at + 1), "mm"));
    }
}
