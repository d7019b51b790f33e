package cornerbook.core.tyre;

import cornerbook.core.why.Step;
import java.util.List;

/**
 * Rims for a tyre size: shares of the section width, rounded to half an inch (shares from memory; they give the measuring
 * rims of a published table of 15 sizes). The tyre maker's table outranks them.
 *
 * @param measuringCode rim on which the section width is given, in inches, as the others
 */
record RimRange(double measuringCode, double lowestCode, double highestCode, List<Step> steps) {
    private static final double INCH_MM = 25.4;
    private static final String SOURCE = "share from memory; the tyre maker's table outranks it";

    RimRange {
        steps = List.copyOf(steps);
    }

    /** Shares of the section width for an aspect ratio. */
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

    static RimRange of(TyreSize size) {
        var shares = Shares.of(size.aspectRatioPercent());
        double measuring = halfInch(shares.measuring(), size);
        double lowest = halfInch(shares.lowest(), size);
        double highest = halfInch(shares.highest(), size);
        return new RimRange(
                measuring,
                lowest,
                highest,
                List.of(
                        new Step(
                                "measuring rim",
                                "%s × S1, to half an inch".formatted(Step.digits(shares.measuring())),
                                measuring,
                                "in",
                                SOURCE),
                        new Step(
                                "narrowest rim",
                                "%s × S1".formatted(Step.digits(shares.lowest())),
                                lowest,
                                "in",
                                SOURCE),
                        new Step(
                                "widest rim",
                                "%s × S1".formatted(Step.digits(shares.highest())),
                                highest,
                                "in",
                                SOURCE)));
    }

    boolean permits(double rimCode) {
        return rimCode >= lowestCode && rimCode <= highestCode;
    }

    private static double halfInch(double share, TyreSize size) {
        return Math.rint(share * size.sectionWidthMm() / INCH_MM * 2) / 2;
    }
}
