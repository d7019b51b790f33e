package cornerbook.core.tyre;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Caution;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
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
        Explanation explanation)
        implements Explained {
    private static final double MM_PER_KM = 1e6;
    private static final double KPA_PER_PSI = 6.894757293168;
    private static final Said GEOMETRY = Said.verbatim("UN R30, 6.1.2");

    /** The meaning of a size. */
    public static SizeMeaning of(TyreSize size) {
        var rims = RimRange.of(size);
        double turns = MM_PER_KM / size.rollingCircumferenceMm();
        var steps = new ArrayList<>(List.of(
                new Step(
                        Computed.RIM_DIAMETER,
                        Formula.of(
                                "{} mm × {}",
                                Amount.exact(TyreSize.INCH_MM, ""),
                                Amount.of(size.rimDiameterCode(), "")),
                        size.rimDiameterMm(),
                        "mm",
                        GEOMETRY),
                new Step(
                        Computed.SECTION_HEIGHT,
                        Formula.of(
                                "S Ra/100, S = {}, Ra = {}",
                                new Amount(size.sectionWidthMm(), "mm", 0),
                                Amount.of(size.aspectRatioPercent(), "%")),
                        size.sectionHeightMm(),
                        "mm",
                        GEOMETRY),
                new Step(
                        Computed.OVERALL_DIAMETER,
                        Said.verbatim("D = d + 2 S Ra/100"),
                        size.overallDiameterMm(),
                        "mm",
                        GEOMETRY),
                new Step(
                        Computed.ROLLING_CIRCUMFERENCE,
                        Formula.of("{} D", Amount.exact(TyreSize.ROLLING_FACTOR, "")),
                        size.rollingCircumferenceMm(),
                        "mm",
                        Origin.ROLLING_FACTOR),
                new Step(Computed.TURNS_PER_KM, TyreSize.TURNS_FORMULA, turns, "", Origin.TURNS_OF_WHEEL)));
        steps.addAll(rims.steps());
        var service = size.service();
        var referenceKpa = referenceKpa(size).orElse(null);
        if (service != null) {
            steps.addAll(steps(service));
        }
        if (referenceKpa != null) {
            steps.add(new Step(
                    Computed.REFERENCE_PRESSURE,
                    Basis.TABLE,
                    referenceKpa,
                    "kPa",
                    size.use().equals("HL") ? Origin.EXTRA_LOAD_FROM_MEMORY : Origin.PUBLISHED_PRESSURES));
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
                new Explanation(service == null ? List.of(Caution.SERVICE_NOT_KNOWN) : List.of(), steps));
    }

    private static List<Step> steps(ServiceDescription service) {
        var symbol = service.speedSymbol();
        var steps = new ArrayList<Step>();
        steps.add(capacity(Computed.CAPACITY, service.loadIndex()));
        var twin = service.twinLoadIndex();
        if (twin != null) {
            steps.add(capacity(Computed.TWIN_CAPACITY, twin));
        }
        steps.add(new Step(
                Computed.HIGHEST_SPEED,
                new TyreSaid.SymbolIs(symbol.name()),
                symbol.highestKmh(),
                "km/h",
                Origin.SPEED_SYMBOLS));
        steps.add(new Step(
                Computed.CAPACITY_AT_SPEED,
                new TyreSaid.CapacityTimes(Amount.significant(symbol.loadShare(symbol.highestKmh()), "", 4)),
                service.capacityKg(symbol.highestKmh()),
                "kg",
                symbol == SpeedSymbol.Y ? Origin.LOAD_VARIATION_FROM_MEMORY : Origin.LOAD_VARIATION));
        return steps;
    }

    private static Step capacity(Said what, LoadIndex index) {
        boolean printed = index.number() >= 50 && index.number() <= 125;
        return new Step(
                what,
                new TyreSaid.LoadIndexIs(index.number()),
                index.capacityKg(),
                "kg",
                printed ? Origin.LOAD_INDICES : Origin.PUBLISHED_LOAD_INDICES);
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
