package cornerbook.core.tyre;

import cornerbook.core.say.Said;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What one size designation says by itself: the geometry of {@link TyreSize}, the way and the turns, the rims of
 * {@link RimRange}, and what load index and speed symbol allow. Makers' tyres differ from the geometry by up to about 1.5 %.
 *
 * @param turnsPerKm of the new tyre: 1 km / (3.05 D)
 * @param measuringRimCode in inches, as the other rim codes
 * @param capacityKg on one tyre up to the speed of full load; null when the size is written without service description
 * @param twinCapacityKg on each of two side by side; null when there is no second load index
 * @param highestKmh speed of the symbol; null without service description
 * @param capacityAtHighestKg on one tyre at that speed; null without service description
 * @param referenceKpa gauge pressure at which the load index holds; null where the marks do not tell it
 */
public record SizeMeaning(
        TyreSize size,
        double rimDiameterMm,
        double sectionHeightMm,
        double overallDiameterMm,
        double rollingCircumferenceMm,
        double turnsPerKm,
        double measuringRimCode,
        double lowestRimCode,
        double highestRimCode,
        @Nullable Double capacityKg,
        @Nullable Double twinCapacityKg,
        @Nullable Double highestKmh,
        @Nullable Double capacityAtHighestKg,
        @Nullable Double referenceKpa,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final double MM_PER_KM = 1e6;
    private static final double KPA_PER_PSI = 6.894757293168;
    private static final String GEOMETRY = "UN R30, 6.1.2";
    private static final String SYMBOLS = "UN R30, table of speed symbols";

    public SizeMeaning {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** The meaning of a size. */
    public static SizeMeaning of(TyreSize size) {
        var rims = RimRange.of(size);
        double turns = MM_PER_KM / size.rollingCircumferenceMm();
        var steps = new ArrayList<>(List.of(
                new Step(
                        "rim diameter",
                        "25.4 mm × %d".formatted(size.rimDiameterCode()),
                        size.rimDiameterMm(),
                        "mm",
                        GEOMETRY),
                new Step(
                        "section height",
                        "S Ra/100, S = %d mm, Ra = %d %%".formatted(size.sectionWidthMm(), size.aspectRatioPercent()),
                        size.sectionHeightMm(),
                        "mm",
                        GEOMETRY),
                new Step("overall diameter", "D = d + 2 S Ra/100", size.overallDiameterMm(), "mm", GEOMETRY),
                new Step(
                        "rolling circumference",
                        "3.05 D",
                        size.rollingCircumferenceMm(),
                        "mm",
                        "ETRTO convention for radial tyres, from memory"),
                new Step("turns per km", "1 km / (3.05 D)", turns, "", "turns of the wheel")));
        steps.addAll(rims.steps());
        var service = size.service();
        var referenceKpa = referenceKpa(size).orElse(null);
        if (service != null) {
            steps.addAll(steps(service));
        }
        if (referenceKpa != null) {
            steps.add(
                    new Step(
                            "pressure at which the load index holds",
                            "table",
                            referenceKpa,
                            "kPa",
                            size.use().equals("HL")
                                    ? "HL as extra load, from memory"
                                    : "published reference pressures: P 35 psi, extra load 41 psi; metric 250 kPa, extra load 290 kPa"));
        }
        return new SizeMeaning(
                size,
                size.rimDiameterMm(),
                size.sectionHeightMm(),
                size.overallDiameterMm(),
                size.rollingCircumferenceMm(),
                turns,
                rims.measuringCode(),
                rims.lowestCode(),
                rims.highestCode(),
                service == null ? null : service.loadIndex().capacityKg(),
                service == null || service.twinLoadIndex() == null
                        ? null
                        : service.twinLoadIndex().capacityKg(),
                service == null ? null : service.speedSymbol().highestKmh(),
                service == null
                        ? null
                        : service.capacityKg(service.speedSymbol().highestKmh()),
                referenceKpa,
                service == null
                        ? Said.verbatims(
                                "Load and speed are not known from this: write the size with load index and speed symbol, as 98V.")
                        : List.of(),
                steps);
    }

    private static List<Step> steps(ServiceDescription service) {
        var symbol = service.speedSymbol();
        var steps = new ArrayList<Step>();
        steps.add(capacity("load capacity, one tyre", service.loadIndex()));
        var twin = service.twinLoadIndex();
        if (twin != null) {
            steps.add(capacity("load capacity, each of two side by side", twin));
        }
        steps.add(new Step("highest speed", "symbol " + symbol, symbol.highestKmh(), "km/h", SYMBOLS));
        steps.add(new Step(
                "load capacity at that speed",
                "capacity × %s".formatted(Step.digits(symbol.loadShare(symbol.highestKmh()))),
                service.capacityKg(symbol.highestKmh()),
                "kg",
                symbol == SpeedSymbol.Y
                        ? "load variation of symbol Y, from memory"
                        : "UN R30, table of load variation with speed"));
        return steps;
    }

    private static Step capacity(String what, LoadIndex index) {
        boolean printed = index.number() >= 50 && index.number() <= 125;
        return new Step(
                what,
                "load index %d".formatted(index.number()),
                index.capacityKg(),
                "kg",
                printed ? "UN R30, table of load-capacity indices" : "published table of load indices");
    }

    /** Light-truck and commercial tyres have a pressure of their own on the sidewall. */
    private static Optional<Double> referenceKpa(TyreSize size) {
        boolean extra = size.extraLoad() || size.use().equals("HL");
        if (size.use().equals("LT") || size.commercial()) {
            return Optional.empty();
        }
        return Optional.of(size.use().equals("P") ? KPA_PER_PSI * (extra ? 41 : 35) : extra ? 290.0 : 250.0);
    }
}
