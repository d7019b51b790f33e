package cornerbook.app.cli;

import cornerbook.core.quantity.Quantities;
import cornerbook.core.tyre.CircumferenceDifference;
import cornerbook.core.tyre.Mounting;
import cornerbook.core.tyre.RimFit;
import cornerbook.core.tyre.SetFit;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.TyreSize;
import cornerbook.core.why.Step;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Whether another size, rim or set of wheels fits. */
@CommandLine.Command(
        name = "tyre",
        description = "Whether another tyre size, rim or set of wheels fits the car.",
        footer = {
            "%nQuantities carry their unit; a bare number is in the book's unit.",
            "Example: cornerbook tyre --placard \"225/55R18 98V\" --other \"235/50R18 101H\" --speed \"62 mph\""
        })
final class Tyre extends CalculatorVerb {
    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable CompareOptions compare;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable RimOptions rim;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable AllWheelOptions allWheel;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable FitOptions fit;

    Tyre(PrintWriter out) {
        super(out);
    }

    private static final class CompareOptions {
        @CommandLine.Option(
                names = "--placard",
                required = true,
                paramLabel = "SIZE",
                description = "Size on the car's placard, as \"225/55R18 98V\".")
        private String placard = "";

        @CommandLine.Option(
                names = "--other",
                required = true,
                paramLabel = "SIZE",
                description = "Size to be compared.")
        private String other = "";

        @CommandLine.Option(
                names = "--speed",
                paramLabel = "SPEED",
                converter = Unit.Speed.class,
                description = "Speed that the speedometer shows; 100 km/h if not given.")
        private double speedKmh = 100;
    }

    private static final class RimOptions {
        @CommandLine.Option(names = "--size", required = true, paramLabel = "SIZE", description = "Tyre size.")
        private String size = "";

        @CommandLine.Option(
                names = "--rim",
                required = true,
                paramLabel = "INCHES",
                description = "Width of the rim, as 7.5.")
        private double rimCode;
    }

    private static final class AllWheelOptions {
        @CommandLine.Option(
                names = "--worn",
                required = true,
                paramLabel = "SIZE=DEPTH",
                description = "A tyre and how much of its tread is gone, as 225/55R18=\"2 mm\"; two to four times.")
        private List<String> worn = new ArrayList<>();

        @CommandLine.Option(
                names = "--circumference-limit",
                required = true,
                paramLabel = "LENGTH",
                converter = Unit.Length.class,
                description = "Largest difference that the car's maker allows.")
        private double limitMm;
    }

    private static final class FitOptions {
        @CommandLine.Option(
                names = "--car",
                required = true,
                paramLabel = "MOUNTING",
                description = "Hub and own wheel, as \"5x114.3 M14x1.5 cone 64.1 ET45 7.5J\".")
        private String car = "";

        @CommandLine.Option(
                names = "--wheel",
                required = true,
                paramLabel = "MOUNTING",
                description = "The other wheel, written alike.")
        private String wheel = "";
    }

    @Override
    List<Part> parts() {
        var parts = new ArrayList<Part>();
        if (compare != null) {
            parts.add(compare(compare));
        }
        if (rim != null) {
            var fit = RimFit.of(TyreSize.parse(rim.size), rim.rimCode);
            parts.add(new Part(
                    "rim",
                    List.of(
                            "Section width on a rim of %s in: %s"
                                    .formatted(Step.digits(fit.rimCode()), Unit.length(fit.sectionWidthMm())),
                            "Rims for %s: %s to %s in, measured on %s in"
                                    .formatted(
                                            fit.size(),
                                            Step.digits(fit.lowestRimCode()),
                                            Step.digits(fit.highestRimCode()),
                                            Step.digits(fit.measuringRimCode()))),
                    fit));
        }
        if (allWheel != null) {
            var result = CircumferenceDifference.of(
                    allWheel.worn.stream().map(Tyre::worn).toList(), allWheel.limitMm);
            parts.add(new Part(
                    "circumference",
                    List.of("Rolling circumferences differ by %s, %s the limit of %s"
                            .formatted(
                                    Unit.length(result.differenceMm()),
                                    result.within() ? "within" : "above",
                                    Unit.length(result.limitMm()))),
                    result));
        }
        if (fit != null) {
            var result = SetFit.of(Mounting.parse(fit.car), Mounting.parse(fit.wheel));
            parts.add(new Part(
                    "fit",
                    List.of(
                            result.mounts() ? "The wheel mounts on the hub" : "The wheel does not belong on the hub",
                            "Inner edge %s, outer edge %s"
                                    .formatted(
                                            moved(result.inwardMm(), "inward", "outward"),
                                            moved(result.outwardMm(), "outward", "inward"))),
                    result));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("nothing to compute, expected --placard, --size, --worn or --car");
        }
        return parts;
    }

    private static Part compare(CompareOptions options) {
        var result =
                SizeComparison.of(TyreSize.parse(options.placard), TyreSize.parse(options.other), options.speedKmh);
        return new Part(
                "comparison",
                List.of(
                        "%s against %s: diameter %s, circumference %s %%"
                                .formatted(
                                        result.other(),
                                        result.placard(),
                                        Unit.length(result.diameterMm()),
                                        Step.digits(result.circumferencePercent())),
                        "Speedometer shows %.0f km/h: true speed %s km/h"
                                .formatted(result.indicatedKmh(), Step.digits(result.trueKmh())),
                        "Tread %s the body; %.0f turns per km"
                                .formatted(moved(result.radiusMm(), "nearer to", "farther from"), result.turnsPerKm())),
                result);
    }

    private static String moved(double millimetres, String positive, String negative) {
        return "%s %s".formatted(Unit.length(Math.abs(millimetres)), millimetres < 0 ? negative : positive);
    }

    private static CircumferenceDifference.Worn worn(String text) {
        int at = text.indexOf('=');
        if (at < 0) {
            throw new IllegalArgumentException(
                    "worn tyre is \"%s\", expected its size and the depth worn off as in 225/55R18=2 mm"
                            .formatted(text));
        }
        return new CircumferenceDifference.Worn(
                TyreSize.parse(text.substring(0, at)), Quantities.parse(text.substring(at + 1), "mm"));
    }
}
