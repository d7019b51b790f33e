package cornerbook.core.lift;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.lift.LiftSaid.Label;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Whether a car gets to its place over what lies in its way, base plate or lowered arms: height + play ≤ clearance. A hoist's
 * arms and adapters are not driven over (Automotive Lift Institute, as trade press quotes it).
 *
 * @param clearanceMm least height of the car, 50 to 1000 mm
 * @param heightMm of what it drives over, 5 to 300 mm
 * @param spareMm room left; negative when it would touch
 */
public record DriveOver(double clearanceMm, double heightMm, double spareMm, Explanation explanation)
        implements Explained {
    public static DriveOver of(double clearanceMm, double heightMm) {
        check(LiftSaid.Part.CLEARANCE_ON_WAY, clearanceMm, 50, 1000, "mm");
        check(LiftSaid.Part.DRIVE_OVER_HEIGHT, heightMm, 5, 300, "mm");
        double spareMm = clearanceMm - heightMm - LiftStack.PLAY_MM;
        var clearance = new Amount(clearanceMm, "mm", 0);
        var height = new Amount(heightMm, "mm", 0);
        var play = new Amount(LiftStack.PLAY_MM, "mm", 0);
        return new DriveOver(
                clearanceMm,
                heightMm,
                spareMm,
                new Explanation(
                        spareMm < 0 ? List.<Said>of(new LiftSaid.WouldTouch(height, clearance, play)) : List.of(),
                        List.of(new Step(
                                Label.ROOM_TO_DRIVE_OVER,
                                new LiftSaid.OverFormula(clearance, height, play),
                                spareMm,
                                "mm",
                                Label.SUM_OF_HEIGHTS_AND_PLAY))));
    }

    public boolean clears() {
        return spareMm >= 0;
    }
}
