package cornerbook.app.cli;

import cornerbook.core.battery.BatteryHealth;
import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.LoadTest;
import cornerbook.core.battery.ParkedDays;
import cornerbook.core.battery.RatingConversion;
import cornerbook.core.battery.RatingStandard;
import cornerbook.core.battery.RestVoltage;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** What the 12 V battery's numbers say. */
@CommandLine.Command(
        name = "battery",
        description = "What the numbers of a 12 V battery say: charge, health, rating, days parked.",
        footer = {
            "%nQuantities carry their unit; a bare number is in the book's unit.",
            "Example: cornerbook battery --chemistry agm --temperature \"5 °C\" --volts 12.5 --rested 12 --rated 680 --standard en --measured 560"
        })
final class Battery extends CalculatorVerb {
    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable RestOptions rest;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable RatingOptions rating;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable ParkedOptions parked;

    @CommandLine.Option(
            names = "--chemistry",
            required = true,
            paramLabel = "CHEMISTRY",
            description = "What is on the label: ${COMPLETION-CANDIDATES}.")
    private Chemistry chemistry = Chemistry.FLOODED;

    @CommandLine.Option(
            names = "--temperature",
            paramLabel = "TEMPERATURE",
            converter = Unit.Temperature.class,
            description = "Temperature of the battery; 20 °C if not given.")
    private double temperatureC = 20;

    Battery(PrintWriter out) {
        super(out);
    }

    private static final class RestOptions {
        @CommandLine.Option(
                names = "--volts",
                required = true,
                paramLabel = "VOLTAGE",
                converter = Unit.Voltage.class,
                description = "Voltage at rest.")
        private double volts;

        @CommandLine.Option(
                names = "--rested",
                required = true,
                paramLabel = "HOURS",
                description = "Hours since charger, converter or drive.")
        private double restHours;
    }

    private static final class RatingOptions {
        @CommandLine.Option(
                names = "--rated",
                required = true,
                paramLabel = "CURRENT",
                converter = Unit.Current.class,
                description = "Cold cranking current on the label.")
        private double ratedA;

        @CommandLine.Option(
                names = "--standard",
                required = true,
                paramLabel = "STANDARD",
                description = "Its standard: ${COMPLETION-CANDIDATES}.")
        private RatingStandard standard = RatingStandard.SAE;

        @CommandLine.Option(
                names = "--measured",
                paramLabel = "CURRENT",
                converter = Unit.Current.class,
                description = "Cranking current measured by the same standard.")
        private @Nullable Double measuredA;

        @CommandLine.Option(
                names = "--tester-without-temperature",
                description = "The tester does not allow for the battery's temperature; it is corrected for here.")
        private boolean uncorrected;

        @CommandLine.Option(
                names = "--compare-with",
                paramLabel = "STANDARD",
                description = "Another standard: prints the range of its number.")
        private @Nullable RatingStandard other;

        @CommandLine.Option(
                names = "--load-volts",
                paramLabel = "VOLTAGE",
                converter = Unit.Voltage.class,
                description = "Voltage after 15 s of half the rated current.")
        private @Nullable Double loadVolts;
    }

    private static final class ParkedOptions {
        @CommandLine.Option(
                names = "--capacity",
                required = true,
                paramLabel = "CAPACITY",
                converter = Unit.Capacity.class,
                description = "Capacity on the label, A·h.")
        private double capacityAh;

        @CommandLine.Option(
                names = "--standby",
                required = true,
                paramLabel = "CURRENT",
                converter = Unit.Current.class,
                description = "Standby current, as \"60 mA\".")
        private double standbyA;

        @CommandLine.Option(
                names = "--health",
                paramLabel = "PERCENT",
                description = "Health of the battery; 100 if not given.")
        private double healthPercent = 100;
    }

    @Override
    List<Part> parts() {
        var parts = new ArrayList<Part>();
        if (rest != null) {
            var result = RestVoltage.of(chemistry, rest.volts, temperatureC, rest.restHours);
            parts.add(new Part(
                    "rest", List.of("State of charge: about %.0f %%".formatted(result.stateOfCharge() * 100)), result));
        }
        if (rating != null) {
            parts.addAll(rating(rating));
        }
        if (parked != null) {
            var result = ParkedDays.of(parked.capacityAh, parked.healthPercent / 100, parked.standbyA);
            parts.add(new Part(
                    "parked",
                    List.of("Parked from full to half charge: %.0f days, worst case without converter"
                            .formatted(result.days())),
                    result));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException(
                    "nothing to compute, expected --volts, --capacity, or --rated with --measured, --compare-with or --load-volts");
        }
        return parts;
    }

    private List<Part> rating(RatingOptions options) {
        var parts = new ArrayList<Part>();
        if (options.measuredA != null) {
            var result = BatteryHealth.of(
                    options.measuredA, options.ratedA, options.standard, temperatureC, !options.uncorrected);
            var judgement = switch (result.judgement()) {
                case SOUND -> "sound";
                case WATCH -> "watch it";
                case REPLACE -> "at its end";
            };
            parts.add(new Part(
                    "health", List.of("%.0f %% of its rating: %s".formatted(result.share() * 100, judgement)), result));
        }
        if (options.other != null) {
            var result = RatingConversion.of(options.ratedA, options.standard, options.other);
            parts.add(new Part(
                    "rating",
                    List.of("%.0f A by %s is about %.0f to %.0f A by %s"
                            .formatted(result.ratedA(), result.from(), result.lowA(), result.highA(), result.to())),
                    result));
        }
        if (options.loadVolts != null) {
            var result = LoadTest.of(chemistry, options.ratedA, options.loadVolts, temperatureC);
            parts.add(new Part(
                    "loadTest",
                    List.of("Load test at %.0f A: %.2f V, at least %.2f V: %s"
                            .formatted(
                                    result.loadA(),
                                    result.volts(),
                                    result.leastVolts(),
                                    result.passes() ? "passes" : "does not pass")),
                    result));
        }
        return parts;
    }
}
