package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * A tyre on a rim of another width: S = S1 + 0.4 (A − A1), rounded to whole mm (UN R30, 6.1.1.1), with nominal section width S1 on
 * the measuring rim A1. Measuring rim and permitted range come from shares of the section width, rounded to half an inch
 * (shares from memory; they give the measuring rims of a published table of 15 sizes); the tyre maker's table outranks them.
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
        List<String> cautions,
        List<Step> steps)
        implements Explained {
    private static final double INCH_MM = 25.4;
    private static final double MM_PER_MM_OF_RIM = 0.4;

    public RimFit {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** Shares of the section width for an aspect ratio: measuring rim, narrowest and widest rim. */
    private record Shares(double measuring, double lowest, double highest) {
        static Shares of(int aspectRatioPercent) {
            if (aspectRatioPercent >= 75) {
                return new Shares(0.70, 0.65, 0.85);
            }
            if (aspectRatioPercent >= 60) {
                return new Shares(0.75, 0.70, 0.90);
            }
            if (aspectRatioPercent >= 50) {
                return new Shares(0.80, 0.70, 0.90);
            }
            return aspectRatioPercent >= 45 ? new Shares(0.85, 0.80, 0.95) : new Shares(0.90, 0.85, 1.00);
        }
    }

    /** The tyre on a rim of width code 3 to 14 (inches). */
    public static RimFit of(TyreSize size, double rimCode) {
        check("rim width", rimCode, 3, 14, "in");
        var shares = Shares.of(size.aspectRatioPercent());
        double measuring = halfInch(shares.measuring(), size);
        double lowest = halfInch(shares.lowest(), size);
        double highest = halfInch(shares.highest(), size);
        double widthMm = sectionWidthMm(size.sectionWidthMm(), rimCode, measuring);
        boolean permitted = rimCode >= lowest && rimCode <= highest;
        var memory = "share from memory; the tyre maker's table outranks it";
        return new RimFit(
                size.toString(),
                rimCode,
                measuring,
                lowest,
                highest,
                widthMm,
                permitted,
                permitted
                        ? List.of()
                        : List.of(
                                "A rim of %s in is outside %s to %s in for this tyre: do not fit without the tyre maker's word."
                                        .formatted(Step.digits(rimCode), Step.digits(lowest), Step.digits(highest))),
                List.of(
                        new Step(
                                "measuring rim",
                                "%s × S1, to half an inch".formatted(Step.digits(shares.measuring())),
                                measuring,
                                "in",
                                memory),
                        new Step(
                                "narrowest rim",
                                "%s × S1".formatted(Step.digits(shares.lowest())),
                                lowest,
                                "in",
                                memory),
                        new Step(
                                "widest rim",
                                "%s × S1".formatted(Step.digits(shares.highest())),
                                highest,
                                "in",
                                memory),
                        new Step(
                                "section width on this rim",
                                "S1 + 0.4 (A − A1), S1 = %d mm, A = %s in, A1 = %s in"
                                        .formatted(size.sectionWidthMm(), Step.digits(rimCode), Step.digits(measuring)),
                                widthMm,
                                "mm",
                                "UN R30, 6.1.1.1")));
    }

    static double sectionWidthMm(double nominalMm, double rimCode, double measuringRimCode) {
        return Math.rint(nominalMm + MM_PER_MM_OF_RIM * (rimCode - measuringRimCode) * INCH_MM);
    }

    private static double halfInch(double share, TyreSize size) {
        return Math.rint(share * size.sectionWidthMm() / INCH_MM * 2) / 2;
    }
}
