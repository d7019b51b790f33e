package cornerbook.core.tyre;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one size designation says by itself: the geometry of {@link TyreSize}, the way and the turns, the rims of
 * {@link RimRange}, and the load of {@link SizeLoad}. Makers' tyres differ from the geometry by up to about 1.5 %.
 *
 * @param turnsPerKm of the new tyre: 1 km / rolling circumference
 * @param measuringRimCode in inches, as the other rim codes; null where no table tells the rims
 * @param capacityKg on one tyre up to the speed of full load; null without service description, or where no table tells it
 * @param twinCapacityKg on each of two side by side; null when there is no second load index, or as {@code capacityKg}
 * @param highestKmh speed of the symbol; null without service description
 * @param capacityAtHighestKg on one tyre at that speed; null as {@code capacityKg}
 * @param referenceKpa gauge pressure at which the load holds; null where neither marks nor table tell it
 */
public record SizeMeaning(
        TyreSize size,
        double rimDiameterMm,
        double sectionHeightMm,
        double overallDiameterMm,
        double rollingCircumferenceMm,
        double turnsPerKm,
        @Nullable Double measuringRimCode,
        @Nullable Double lowestRimCode,
        @Nullable Double highestRimCode,
        @Nullable Double capacityKg,
        @Nullable Double twinCapacityKg,
        @Nullable Double highestKmh,
        @Nullable Double capacityAtHighestKg,
        @Nullable Double referenceKpa,
        Explanation explanation)
        implements Explained {
    private static final double MM_PER_KM = 1e6;
    private static final Said GEOMETRY = Said.verbatim("UN R30, 6.1.2");

    /** The meaning of a size. */
    public static SizeMeaning of(TyreSize size) {
        var rims = RimRange.find(size).orElse(null);
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
                        Formula.of("{} D", Amount.exact(size.rollingFactor(), "")),
                        size.rollingCircumferenceMm(),
                        "mm",
                        Origin.ROLLING_FACTOR),
                new Step(Computed.TURNS_PER_KM, size.turnsFormula(), turns, "", Origin.TURNS_OF_WHEEL)));
        if (rims != null) {
            steps.addAll(rims.steps());
        }
        var load = SizeLoad.of(size);
        steps.addAll(load.steps());
        return new SizeMeaning(
                size,
                size.rimDiameterMm(),
                size.sectionHeightMm(),
                size.overallDiameterMm(),
                size.rollingCircumferenceMm(),
                turns,
                rims == null ? null : rims.measuringCode(),
                rims == null ? null : rims.lowestCode(),
                rims == null ? null : rims.highestCode(),
                load.capacityKg(),
                load.twinCapacityKg(),
                load.highestKmh(),
                load.capacityAtHighestKg(),
                load.referenceKpa(),
                new Explanation(load.cautions(), steps));
    }
}
