package cornerbook.core.tyre;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final double INCH_MM = 25.4;
    private static final double MM_PER_MM_OF_RIM = 0.4;

    public RimFit {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** The tyre on a rim of width code 3 to 14 (inches). */
    public static RimFit of(TyreSize size, double rimCode) {
        check("rim width", rimCode, 3, 14, "in");
        var range = RimRange.of(size);
        double widthMm = sectionWidthMm(size.sectionWidthMm(), rimCode, range.measuringCode());
        boolean permitted = range.permits(rimCode);
        var steps = new ArrayList<>(range.steps());
        steps.add(new Step(
                "section width on this rim",
                "S1 + 0.4 (A − A1), S1 = %d mm, A = %s in, A1 = %s in"
                        .formatted(size.sectionWidthMm(), Step.digits(rimCode), Step.digits(range.measuringCode())),
                widthMm,
                "mm",
                "UN R30, 6.1.1.1"));
        return new RimFit(
                size.toString(),
                rimCode,
                range.measuringCode(),
                range.lowestCode(),
                range.highestCode(),
                widthMm,
                permitted,
                permitted
                        ? List.of()
                        : Said.verbatims(
                                "A rim of %s in is outside %s to %s in for this tyre: do not fit without the tyre maker's word."
                                        .formatted(
                                                Step.digits(rimCode),
                                                Step.digits(range.lowestCode()),
                                                Step.digits(range.highestCode()))),
                steps);
    }

    static double sectionWidthMm(double nominalMm, double rimCode, double measuringRimCode) {
        return Math.rint(nominalMm + MM_PER_MM_OF_RIM * (rimCode - measuringRimCode) * INCH_MM);
    }
}
