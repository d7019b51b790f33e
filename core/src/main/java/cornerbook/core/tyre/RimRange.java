package cornerbook.core.tyre;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Step;
import java.util.List;
import java.util.Optional;

/**
 * Rims for a tyre size. Of passenger tyres: shares of the section width, rounded to half an inch (shares from memory; they
 * give the measuring rims of a published table of 15 sizes). Of light-truck tyres those of {@link LightTruckSize}. The tyre
 * maker's table outranks them.
 *
 * @param measuringCode rim on which the tyre is measured, in inches, as the others
 */
record RimRange(double measuringCode, double lowestCode, double highestCode, List<Step> steps) {
    private static final double INCH_MM = 25.4;

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

    /** Empty for temporary spares and for light-truck sizes that are not listed. */
    static Optional<RimRange> find(TyreSize size) {
        if (size.lightTruck()) {
            return LightTruckSize.find(size).map(RimRange::of);
        }
        return size.temporary() ? Optional.empty() : Optional.of(of(size));
    }

    private static RimRange of(LightTruckSize listed) {
        return new RimRange(
                listed.measuringRimCode(),
                listed.lowestRimCode(),
                listed.highestRimCode(),
                List.of(
                        step(Computed.MEASURING_RIM, Basis.TABLE, listed.measuringRimCode(), Origin.LIGHT_TRUCK_SHEETS),
                        step(Computed.NARROWEST_RIM, Basis.TABLE, listed.lowestRimCode(), Origin.LIGHT_TRUCK_SHEETS),
                        step(Computed.WIDEST_RIM, Basis.TABLE, listed.highestRimCode(), Origin.LIGHT_TRUCK_SHEETS)));
    }

    private static Step step(Computed what, Said formula, double rimCode, Origin origin) {
        return new Step(what, formula, rimCode, "in", origin);
    }

    private static RimRange of(TyreSize size) {
        var shares = Shares.of(size.aspectRatioPercent());
        double measuring = halfInch(shares.measuring(), size);
        double lowest = halfInch(shares.lowest(), size);
        double highest = halfInch(shares.highest(), size);
        return new RimRange(
                measuring,
                lowest,
                highest,
                List.of(
                        step(
                                Computed.MEASURING_RIM,
                                new TyreSaid.ShareToHalfInch(Amount.significant(shares.measuring(), "", 4)),
                                measuring,
                                Origin.RIM_SHARES),
                        step(
                                Computed.NARROWEST_RIM,
                                Formula.of("{} × S1", Amount.significant(shares.lowest(), "", 4)),
                                lowest,
                                Origin.RIM_SHARES),
                        step(
                                Computed.WIDEST_RIM,
                                Formula.of("{} × S1", Amount.significant(shares.highest(), "", 4)),
                                highest,
                                Origin.RIM_SHARES)));
    }

    boolean permits(double rimCode) {
        return rimCode >= lowestCode && rimCode <= highestCode;
    }

    private static double halfInch(double share, TyreSize size) {
        return Math.rint(share * size.sectionWidthMm() / INCH_MM * 2) / 2;
    }
}
