package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Input;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tyre on a rim of another width. On its measuring rim A a tyre is S = S1 + 0.4 (A − A1) wide, to whole mm, with the nominal
 * section width S1 and the theoretical rim A1 = x S1 (UN R30, 6.1.1.1; UN R54 has the same for light trucks, from memory);
 * x is 0.70 from series 50 up and 0.85 below (published rule, two pages). Another rim changes it by 0.4 of the difference of
 * rims: 0.2 in for each half inch (published rule). Measuring rim and permitted range are those of {@link RimRange}; the tyre
 * maker's table outranks them.
 *
 * @param measuringRimCode in inches, as the other rim codes; null, as all but the rim itself, where no table tells the rims
 * @param sectionWidthMm on this rim
 */
public record RimFit(
        String size,
        double rimCode,
        @Nullable Double measuringRimCode,
        @Nullable Double lowestRimCode,
        @Nullable Double highestRimCode,
        @Nullable Double sectionWidthMm,
        @Nullable Boolean permitted,
        Explanation explanation)
        implements Explained {
    private static final double INCH_MM = 25.4;
    private static final double MM_PER_MM_OF_RIM = 0.4;
    private static final int LOW_SERIES = 45;

    /** The tyre on a rim of width code 3 to 14 (inches). */
    public static RimFit of(TyreSize size, double rimCode) {
        check(Input.RIM_WIDTH, rimCode, 3, 14, "in");
        return RimRange.find(size)
                .map(range -> of(size, rimCode, range))
                .orElseGet(() -> new RimFit(
                        size.toString(),
                        rimCode,
                        null,
                        null,
                        null,
                        null,
                        null,
                        new Explanation(List.of(SizeLoad.ownTables(size)), List.of())));
    }

    private static RimFit of(TyreSize size, double rimCode, RimRange range) {
        double share = size.aspectRatioPercent() > LOW_SERIES ? 0.70 : 0.85;
        double theoreticalMm = share * size.sectionWidthMm();
        double measuredMm =
                Math.rint(size.sectionWidthMm() + MM_PER_MM_OF_RIM * (range.measuringCode() * INCH_MM - theoreticalMm));
        double widthMm = Math.rint(measuredMm + MM_PER_MM_OF_RIM * (rimCode - range.measuringCode()) * INCH_MM);
        boolean permitted = range.permits(rimCode);
        var perRim = Amount.exact(MM_PER_MM_OF_RIM, "");
        var measuring = Amount.significant(range.measuringCode(), "in", 4);
        var steps = new ArrayList<>(range.steps());
        steps.add(new Step(
                Computed.THEORETICAL_RIM,
                Formula.of("{} × S1", Amount.significant(share, "", 2)),
                theoreticalMm,
                "mm",
                Origin.THEORETICAL_RIM));
        steps.add(new Step(
                Computed.SECTION_WIDTH_ON_MEASURING_RIM,
                Formula.of(
                        "S1 + {} (A − A1), S1 = {}, A = {}, A1 = {}",
                        perRim,
                        new Amount(size.sectionWidthMm(), "mm", 0),
                        measuring,
                        new Amount(theoreticalMm, "mm", 1)),
                measuredMm,
                "mm",
                size.lightTruck() ? Origin.SECTION_WIDTH_LIGHT_TRUCK : Said.verbatim("UN R30, 6.1.1.1")));
        steps.add(new Step(
                Computed.SECTION_WIDTH_ON_RIM,
                Formula.of(
                        "{} + {} ({} − {})",
                        new Amount(measuredMm, "mm", 0),
                        perRim,
                        Amount.significant(rimCode, "in", 4),
                        measuring),
                widthMm,
                "mm",
                Origin.WIDTH_BY_RIM));
        return new RimFit(
                size.toString(),
                rimCode,
                range.measuringCode(),
                range.lowestCode(),
                range.highestCode(),
                widthMm,
                permitted,
                new Explanation(
                        permitted
                                ? List.of()
                                : List.of(new TyreSaid.RimOutside(
                                        Amount.significant(rimCode, "in", 4),
                                        Between.exact(range.lowestCode(), range.highestCode(), "in"))),
                        steps));
    }
}
