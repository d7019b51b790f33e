package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.lift.LiftSaid.Label;
import cornerbook.core.say.Amount;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * How high a car may be raised under a ceiling: pads + adapter + (roof − lift point) + gap ≤ ceiling. Overhead clearance is
 * looked at before each lift (Automotive Lift Institute, as trade press quotes it); an open lid or a box on the roof is higher
 * than the roof.
 *
 * @param padsMm highest that the pads may go: to the hoist's own end, or to where the roof comes near the ceiling
 * @param underMm how far the lift points then stand above where they stood
 */
public record LiftRaise(
        double pointMm,
        double adapterMm,
        double raisedMm,
        double roofMm,
        double ceilingMm,
        double padsMm,
        double underMm,
        Explanation explanation)
        implements Explained {
    /** Room left under the ceiling. Common practice, no source. */
    public static final double GAP_MM = 100;

    /**
     * The height.
     *
     * @param pointMm floor to the lift point, 50 to 1000 mm
     * @param adapterMm what the adapter adds, 0 to 500 mm
     * @param raisedMm height of the raised pads, 500 to 3000 mm
     * @param roofMm floor to the roof, 1000 to 3500 mm
     * @param ceilingMm floor to the lowest thing above, 1800 to 10000 mm
     */
    public static LiftRaise of(double pointMm, double adapterMm, double raisedMm, double roofMm, double ceilingMm) {
        check(LiftSaid.Part.HEIGHT_OF_POINT, pointMm, 50, 1000, "mm");
        check(LiftSaid.Part.HEIGHT_OF_ADAPTER, adapterMm, 0, 500, "mm");
        check(LiftSaid.Part.RAISED_PADS, raisedMm, 500, 3000, "mm");
        check(LiftSaid.Part.CAR_HEIGHT, roofMm, 1000, 3500, "mm");
        check(LiftSaid.Part.CEILING, ceilingMm, 1800, 10000, "mm");
        double underCeilingMm = ceilingMm - GAP_MM - (roofMm - pointMm) - adapterMm;
        double padsMm = Math.min(raisedMm, underCeilingMm);
        return new LiftRaise(
                pointMm,
                adapterMm,
                raisedMm,
                roofMm,
                ceilingMm,
                padsMm,
                padsMm + adapterMm - pointMm,
                new Explanation(
                        padsMm < raisedMm
                                ? List.of(new LiftSaid.RaiseNoHigher(mm(Math.floor(padsMm)), mm(GAP_MM)))
                                : List.of(),
                        List.of(
                                new Step(
                                        Label.PADS_UNDER_CEILING,
                                        new LiftSaid.CeilingFormula(
                                                mm(ceilingMm), mm(GAP_MM), mm(roofMm), mm(pointMm), mm(adapterMm)),
                                        underCeilingMm,
                                        "mm",
                                        Label.SUM_OF_HEIGHTS_AND_GAP),
                                new Step(
                                        Label.HIGHEST_PADS,
                                        Label.SMALLER_OF_BOTH,
                                        padsMm,
                                        "mm",
                                        Label.SUM_OF_HEIGHTS))));
    }

    private static Amount mm(double heightMm) {
        return new Amount(heightMm, "mm", 0);
    }

    /** Whether the ceiling ends it before the hoist does. */
    public boolean limited() {
        return padsMm < raisedMm;
    }
}
