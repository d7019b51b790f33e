package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.lift.LiftSaid.Label;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether arm and adapter go under the car as it stands, and how high the blocks under its wheels must be if not: arm +
 * adapter + play ≤ lift point + blocks, and arm + play ≤ clearance + blocks on the way there.
 *
 * @param pointMm height of the lift point above the floor
 * @param clearanceMm least height of the car over the arm's way
 * @param armMm height of the arm's upper side when down, without adapter
 * @param adapterMm height that the lowest adapter adds
 * @param blocksMm blocks that are under the wheels already
 * @param neededMm blocks needed
 * @param spareMm room left under the tighter of the two, with the blocks that are there; negative when it does not go
 */
public record LiftStack(
        double pointMm,
        double clearanceMm,
        double armMm,
        double adapterMm,
        double blocksMm,
        double neededMm,
        double spareMm,
        Explanation explanation)
        implements Explained {
    /** Room to move arm or car without touching. Common practice, no source. */
    public static final double PLAY_MM = 10;

    /** Heights of 0 to 1000 mm; the blocks up to 300 mm. */
    public static LiftStack of(double pointMm, double clearanceMm, double armMm, double adapterMm, double blocksMm) {
        check(LiftSaid.Part.HEIGHT_OF_POINT, pointMm, 50, 1000, "mm");
        check(LiftSaid.Part.CLEARANCE_ON_WAY, clearanceMm, 50, 1000, "mm");
        check(LiftSaid.Part.HEIGHT_OF_ARM, armMm, 30, 500, "mm");
        check(LiftSaid.Part.HEIGHT_OF_ADAPTER, adapterMm, 0, 500, "mm");
        check(LiftSaid.Part.BLOCK_HEIGHT, blocksMm, 0, 300, "mm");
        double atPointMm = armMm + adapterMm + PLAY_MM - pointMm;
        double onWayMm = armMm + PLAY_MM - clearanceMm;
        double neededMm = Math.max(0, Math.max(atPointMm, onWayMm));
        double spareMm = blocksMm - Math.max(atPointMm, onWayMm);
        var cautions = new ArrayList<Said>();
        if (spareMm < 0) {
            cautions.add(new LiftSaid.NeedsBlocks(new Amount(Math.ceil(neededMm), "mm", 0)));
        }
        cautions.addAll(LiftCautions.ALWAYS);
        return new LiftStack(
                pointMm,
                clearanceMm,
                armMm,
                adapterMm,
                blocksMm,
                neededMm,
                spareMm,
                new Explanation(
                        cautions,
                        List.of(
                                new Step(
                                        Label.BLOCKS_AT_POINT,
                                        new LiftSaid.PointFormula(
                                                Amount.significant(armMm, "mm", 4),
                                                Amount.significant(adapterMm, "mm", 4),
                                                Amount.significant(PLAY_MM, "mm", 4),
                                                Amount.significant(pointMm, "mm", 4)),
                                        atPointMm,
                                        "mm",
                                        Label.SUM_OF_HEIGHTS_AND_PLAY),
                                new Step(
                                        Label.BLOCKS_ON_WAY,
                                        new LiftSaid.WayFormula(
                                                Amount.significant(armMm, "mm", 4),
                                                Amount.significant(PLAY_MM, "mm", 4),
                                                Amount.significant(clearanceMm, "mm", 4)),
                                        onWayMm,
                                        "mm",
                                        Label.SUM_OF_HEIGHTS),
                                new Step(Label.ROOM_LEFT, Label.LARGER_OF_BOTH, spareMm, "mm", Label.SUM_OF_HEIGHTS))));
    }

    /** Whether arm and adapter go under as the car stands. */
    public boolean goesUnder() {
        return spareMm >= 0;
    }
}
