package cornerbook.core.lift.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.lift.ArmLoad;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.DriveOver;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.LiftRaise;
import cornerbook.core.lift.LiftSaid;
import cornerbook.core.lift.LiftSaid.Label;
import cornerbook.core.lift.LiftSaid.Wheels;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The numbers behind the finding on a car on a hoist. */
final class HoistEvidence {
    private HoistEvidence() {}

    /**
     * What each arm, the hoist and the adapters carry.
     *
     * @param cases loads with wheels on and off; empty when the arms are not judged
     * @param adapterShare of the weakest adapter's rating; 0 when it is not judged
     */
    static List<Evidence> loads(double massKg, Hoist hoist, Map<Wheels, ArmLoads> cases, double adapterShare) {
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(Label.FIRST_OF_ALL, Label.MAKERS_POINTS, Label.RAISE_AND_ROCK));
        cases.values().stream()
                .max(Comparator.comparing(HoistEvidence::mostShare))
                .ifPresent(heaviest -> {
                    for (var corner : Corner.values()) {
                        evidence.add(arm(corner, heaviest.arm(corner)));
                    }
                });
        if (cases.isEmpty()) {
            evidence.add(new Evidence(
                    new LiftSaid.HoistWith(Wheels.ON),
                    ofRating(massKg, hoist.rating().hoistKg()),
                    Label.KERB_MASS_ON_PLATE));
        }
        cases.forEach((wheels, loads) -> evidence.add(new Evidence(
                new LiftSaid.HoistWith(wheels),
                ofRating(loads.totalKg(), hoist.rating().hoistKg()),
                centre(loads))));
        if (cases.containsKey(Wheels.ON) && !cases.containsKey(Wheels.OFF)) {
            evidence.add(new Evidence(Wheels.OFF, Label.NOT_JUDGED, Label.WHEEL_MASS_NOT_KNOWN));
        }
        var adapterKg = hoist.adapterRatingKg();
        if (adapterKg != null && adapterShare > 0) {
            evidence.add(
                    new Evidence(Label.ADAPTERS, ofRating(adapterShare * adapterKg, adapterKg), Label.MOST_OF_AN_ARM));
        }
        return evidence;
    }

    /** Whether car and arms get over and under each other, and how high the car may go. */
    static List<Evidence> heights(Optional<LiftStack> stack, Optional<DriveOver> over, Optional<LiftRaise> raise) {
        var evidence = new ArrayList<Evidence>();
        stack.ifPresent(heights -> evidence.add(under(heights)));
        over.ifPresent(heights -> evidence.add(new Evidence(
                Label.ROOM_TO_DRIVE_OVER,
                new Margin(heights.spareMm(), "mm", 0, false),
                Label.SUM_OF_HEIGHTS_AND_PLAY)));
        raise.ifPresent(heights -> evidence.add(new Evidence(
                Label.HIGHEST_PADS,
                new LiftSaid.RaisedTo(mm(Math.floor(heights.padsMm())), mm(Math.floor(heights.underMm()))),
                new LiftSaid.RaisedUnder(mm(heights.ceilingMm()), mm(heights.roofMm()), mm(LiftRaise.GAP_MM)))));
        return evidence;
    }

    private static Evidence arm(Corner corner, ArmLoad arm) {
        return new Evidence(
                new LiftSaid.ArmAt(corner),
                ofRating(arm.loadKg(), arm.ratingKg()),
                new LiftSaid.EvenPads(new Amount(arm.mostKg(), "kg", 0), CarOnHoist.percent(arm.mostShare())));
    }

    private static double mostShare(ArmLoads loads) {
        return loads.arms().values().stream()
                .mapToDouble(ArmLoad::mostShare)
                .max()
                .orElseThrow();
    }

    private static Said centre(ArmLoads loads) {
        var marginMm = loads.marginMm();
        return marginMm == null
                ? Label.PADS_UNDER_AXLES
                : new LiftSaid.CentreAt(mm(loads.centreBehindFrontAxleMm()), mm(marginMm));
    }

    private static Evidence under(LiftStack heights) {
        return new Evidence(
                Label.ARMS_UNDER_CAR,
                heights.goesUnder()
                        ? heights.blocksMm() > 0
                                ? new LiftSaid.WithBlocks(mm(heights.blocksMm()))
                                : new LiftSaid.ToSpare(mm(heights.spareMm()))
                        : new LiftSaid.BlocksNeeded(mm(Math.ceil(heights.neededMm()))),
                new LiftSaid.Heights(
                        mm(heights.armMm()),
                        mm(heights.adapterMm()),
                        mm(heights.pointMm()),
                        mm(heights.clearanceMm()),
                        mm(LiftStack.PLAY_MM)));
    }

    private static Said ofRating(double loadKg, double ratingKg) {
        return new LiftSaid.OfRating(
                new Amount(loadKg, "kg", 0), CarOnHoist.percent(loadKg / ratingKg), new Amount(ratingKg, "kg", 0));
    }

    private static Amount mm(double lengthMm) {
        return new Amount(lengthMm, "mm", 0);
    }
}
