package cornerbook.core.lift;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    /** Room to move the arm without touching. Common practice, no source. */
    private static final double PLAY_MM = 10;

    public LiftStack {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** Heights of 0 to 1000 mm; the blocks up to 300 mm. */
    public static LiftStack of(double pointMm, double clearanceMm, double armMm, double adapterMm, double blocksMm) {
        check("height of the lift point", pointMm, 50, 1000, "mm");
        check("clearance on the arm's way", clearanceMm, 50, 1000, "mm");
        check("height of the arm", armMm, 30, 500, "mm");
        check("height of the adapter", adapterMm, 0, 500, "mm");
        check("height of the blocks", blocksMm, 0, 300, "mm");
        double atPointMm = armMm + adapterMm + PLAY_MM - pointMm;
        double onWayMm = armMm + PLAY_MM - clearanceMm;
        double neededMm = Math.max(0, Math.max(atPointMm, onWayMm));
        double spareMm = blocksMm - Math.max(atPointMm, onWayMm);
        var cautions = new ArrayList<Said>();
        if (spareMm < 0) {
            cautions.add(Said.verbatim("The arm does not go under: drive the car onto blocks of %.0f mm under all four wheels."
                    .formatted(Math.ceil(neededMm))));
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
                cautions,
                List.of(
                        new Step(
                                "blocks needed at the lift point",
                                "arm %s + adapter %s + play %s − point %s mm"
                                        .formatted(
                                                Step.digits(armMm),
                                                Step.digits(adapterMm),
                                                Step.digits(PLAY_MM),
                                                Step.digits(pointMm)),
                                atPointMm,
                                "mm",
                                "sum of heights; play of 10 mm is common practice, no source"),
                        new Step(
                                "blocks needed on the arm's way",
                                "arm %s + play %s − clearance %s mm"
                                        .formatted(Step.digits(armMm), Step.digits(PLAY_MM), Step.digits(clearanceMm)),
                                onWayMm,
                                "mm",
                                "sum of heights"),
                        new Step("room left", "blocks − the larger of the two", spareMm, "mm", "sum of heights")));
    }

    /** Whether arm and adapter go under as the car stands. */
    public boolean goesUnder() {
        return spareMm >= 0;
    }
}
