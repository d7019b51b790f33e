package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Input;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * A tyre on a rim of another width: S = S1 + 0.4 (A − A1), rounded to whole mm (UN R30, 6.1.1.1), with nominal section width S1 on
 * the measuring rim A1. Measuring rim and permitted range are those of {@link RimRange}; the tyre maker's table outranks them.
 *
 * @param sectionWidthMm on this rim
 * @param measuringRimCode in inches, as the other rim codes
 */
public record RimFit(
        String size,
        double rimCode,
        double measuringRimCode,
        double lowestRimCode,
        double highestRimCode,
        double sectionWidthMm,
        boolean permitted,
        Explanation explanation)
        implements Explained {
    private static final double INCH_MM = 25.4;
    private static final double MM_PER_MM_OF_RIM = 0.4;

    /** The tyre on a rim of width code 3 to 14 (inches). */
    public static RimFit of(TyreSize size, double rimCode) {
        check(Input.RIM_WIDTH, rimCode, 3, 14, "in");
        var range = RimRange.of(size);
        double widthMm = sectionWidthMm(size.sectionWidthMm(), rimCode, range.measuringCode());
        boolean permitted = range.permits(rimCode);
        var steps = new ArrayList<>(range.steps());
        steps.add(new Step(
                Computed.SECTION_WIDTH_ON_RIM,
                Formula.of(
                        "S1 + {} (A − A1), S1 = {}, A = {}, A1 = {}",
                        Amount.exact(MM_PER_MM_OF_RIM, ""),
                        new Amount(size.sectionWidthMm(), "mm", 0),
                        Amount.significant(rimCode, "in", 4),
                        Amount.significant(range.measuringCode(), "in", 4)),
                widthMm,
                "mm",
                Said.verbatim("UN R30, 6.1.1.1")));
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

    static double sectionWidthMm(double nominalMm, double rimCode, double measuringRimCode) {
        return Math.rint(nominalMm + MM_PER_MM_OF_RIM * (rimCode - measuringRimCode) * INCH_MM);
    }
}
