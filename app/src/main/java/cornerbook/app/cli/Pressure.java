package cornerbook.app.cli;

import cornerbook.core.quantity.Quantities;
import cornerbook.core.tyre.LeakRate;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.LoadPressure;
import cornerbook.core.tyre.PressureSetting;
import cornerbook.core.tyre.SeasonPressures;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** What to set on the gauge, what to expect over the season, what a load needs, whether a tyre leaks. */
@CommandLine.Command(
        name = "pressure",
        description =
                "What to set on the gauge, what it will read over the season, what a load needs, whether a tyre leaks.",
        footer = {
            "%nQuantities carry their unit; a bare number is in the book's unit.",
            "Example: cornerbook pressure --placard \"36 psi\" --tyre-at \"15 °C\" --stands-at \"-5 °C\" --months \"2,-4,-9,-8,-2\" --coldest \"-24 °C\""
        })
final class Pressure extends CalculatorVerb {
    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable SetOptions set;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable LoadOptions load;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable LeakOptions leak;

    Pressure(PrintWriter out) {
        super(out);
    }

    private static final class SetOptions {
        @CommandLine.Option(
                names = "--placard",
                required = true,
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "Cold pressure on the car's placard.")
        private double placardKpa;

        @CommandLine.Option(
                names = "--tyre-at",
                required = true,
                paramLabel = "TEMPERATURE",
                converter = Unit.Temperature.class,
                description = "Temperature of the tyre now; of the store, for a stored wheel.")
        private double tyreC;

        @CommandLine.Option(
                names = "--stands-at",
                required = true,
                paramLabel = "TEMPERATURE",
                converter = Unit.Temperature.class,
                description = "Temperature where the car will stand.")
        private double standingC;

        @CommandLine.Option(
                names = "--altitude",
                paramLabel = "ALTITUDE",
                converter = Unit.Altitude.class,
                description = "Altitude of the shop; sea level if not given.")
        private double altitudeM;

        @CommandLine.Option(
                names = "--stands-altitude",
                paramLabel = "ALTITUDE",
                converter = Unit.Altitude.class,
                description = "Altitude where the car will stand; that of the shop if not given.")
        private @Nullable Double standingAltitudeM;

        @CommandLine.Option(
                names = "--gauge-offset",
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "What the gauge shows too much against a master.")
        private double offsetKpa;

        @CommandLine.Option(
                names = "--gauge-error",
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "How far the gauge may be off beyond that; 3 kPa if not given.")
        private double errorKpa = 3;

        @CommandLine.Option(names = "--driven", description = "The car was driven within about three hours.")
        private boolean driven;

        @CommandLine.Option(
                names = "--months",
                paramLabel = "TEMPERATURES",
                description = "Mean temperature of each month to come, parted by commas.")
        private @Nullable String months;

        @CommandLine.Option(
                names = "--coldest",
                paramLabel = "TEMPERATURE",
                converter = Unit.Temperature.class,
                description = "Coldest morning of these months.")
        private @Nullable Double coldestC;
    }

    private static final class LoadOptions {
        @CommandLine.Option(
                names = "--axle-load",
                required = true,
                paramLabel = "MASS",
                converter = Unit.Mass.class,
                description = "Load of the axle.")
        private double axleKg;

        @CommandLine.Option(
                names = "--load-index",
                required = true,
                paramLabel = "N",
                description = "Load index of its tyres.")
        private int loadIndex;

        @CommandLine.Option(
                names = "--reference",
                required = true,
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description =
                        "Pressure at which the load index holds: 250 kPa standard, 290 kPa extra load, 35 psi P-metric.")
        private double referenceKpa;

        @CommandLine.Option(
                names = "--at-pressure",
                required = true,
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "Cold pressure to be judged, as on the placard.")
        private double placardKpa;

        @CommandLine.Option(
                names = "--exponent",
                paramLabel = "N",
                description = "Exponent of load on pressure; 0.8 if not given; a lower one asks for less air.")
        private double exponent = 0.8;

        @CommandLine.Option(
                names = "--heavier-side",
                paramLabel = "PERCENT",
                description = "Share of the axle load on its heavier wheel; 50 if not given.")
        private double heavierPercent = 50;
    }

    private static final class LeakOptions {
        @CommandLine.Option(
                names = "--first",
                required = true,
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "First cold reading.")
        private double firstKpa;

        @CommandLine.Option(
                names = "--first-at",
                required = true,
                paramLabel = "TEMPERATURE",
                converter = Unit.Temperature.class,
                description = "Temperature of the tyre then.")
        private double firstC;

        @CommandLine.Option(
                names = "--second",
                required = true,
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "Second cold reading, with no air added between.")
        private double secondKpa;

        @CommandLine.Option(
                names = "--second-at",
                required = true,
                paramLabel = "TEMPERATURE",
                converter = Unit.Temperature.class,
                description = "Temperature of the tyre then.")
        private double secondC;

        @CommandLine.Option(names = "--days", required = true, paramLabel = "N", description = "Days between the two.")
        private double days;

        @CommandLine.Option(
                names = "--error",
                paramLabel = "PRESSURE",
                converter = Unit.Pressure.class,
                description = "How far the gauge may be off; 3 kPa if not given.")
        private double errorKpa = 3;
    }

    @Override
    List<Part> parts() {
        var parts = new ArrayList<Part>();
        if (set != null) {
            parts.addAll(set(set));
        }
        if (load != null) {
            var result = LoadPressure.of(
                    load.axleKg,
                    load.heavierPercent / 100,
                    new LoadIndex(load.loadIndex),
                    load.referenceKpa,
                    load.exponent,
                    load.placardKpa);
            parts.add(new Part(
                    "load",
                    List.of(
                            "Needed for %s on the tyre: %s cold"
                                    .formatted(Unit.mass(result.tyreLoadKg()), Unit.pressure(result.neededKpa())),
                            "At %s the tyre may carry %s"
                                    .formatted(
                                            Unit.pressure(load.placardKpa), Unit.mass(result.capacityAtPlacardKg()))),
                    result));
        }
        if (leak != null) {
            var result = LeakRate.of(
                    new LeakRate.At(leak.firstKpa, leak.firstC),
                    new LeakRate.At(leak.secondKpa, leak.secondC),
                    leak.days,
                    leak.errorKpa);
            var answer = switch (result.answer()) {
                case TIGHT -> "tight";
                case SLOW_LEAK -> "a slow leak";
                case NOT_TOLD_APART -> "not to be told yet";
            };
            parts.add(new Part(
                    "leak",
                    List.of("Loss in 30 days, temperature taken out: %s, ±%.0f kPa: %s"
                            .formatted(Unit.pressure(result.lossKpa()), result.errorKpa(), answer)),
                    result));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("nothing to compute, expected --placard, --axle-load or --first");
        }
        return parts;
    }

    private static List<Part> set(SetOptions options) {
        double thereM = options.standingAltitudeM == null ? options.altitudeM : options.standingAltitudeM;
        var setting = PressureSetting.of(
                options.placardKpa,
                new PressureSetting.Circumstances(
                        options.tyreC, options.standingC, options.altitudeM, thereM, options.driven),
                new PressureSetting.Gauge(options.offsetKpa, options.errorKpa));
        var parts = new ArrayList<Part>();
        parts.add(new Part(
                "setting",
                List.of("Set now to %s on this gauge, ±%.0f kPa, so that it is %s cold at %s"
                        .formatted(
                                Unit.pressure(setting.setKpa()),
                                setting.gaugeErrorKpa(),
                                Unit.pressure(options.placardKpa),
                                Unit.temperature(options.standingC))),
                setting));
        if (options.months != null && options.coldestC != null) {
            var means = Arrays.stream(options.months.split(",", -1))
                    .map(text -> Quantities.parse(text, "°C"))
                    .toList();
            var season = SeasonPressures.of(
                    options.placardKpa, options.standingC, options.placardKpa, means, options.coldestC);
            var lines = new ArrayList<String>();
            season.months()
                    .forEach(month -> lines.add("At %s to be read: %s"
                            .formatted(Unit.temperature(month.temperatureC()), Unit.pressure(month.pressureKpa()))));
            lines.add("Coldest morning, %s: %s; the warning comes below %s"
                    .formatted(
                            Unit.temperature(options.coldestC),
                            Unit.pressure(season.coldest().pressureKpa()),
                            Unit.pressure(season.warningKpa())));
            parts.add(new Part("season", lines, season));
        } else if (options.months != null || options.coldestC != null) {
            throw new IllegalArgumentException("months of the season are half given, expected --months and --coldest");
        }
        return parts;
    }
}
