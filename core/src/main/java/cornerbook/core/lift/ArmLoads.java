package cornerbook.core.lift;

import cornerbook.core.corner.Corner;
import cornerbook.core.lift.LiftSaid.Label;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Load of each arm of a two-post hoist under a car with some parts off. The car is rigid and the four pads are equal
 * springs ({@link Support}); as pads never bear quite evenly, the most that each may carry is given too, and judged. Not
 * for a car that is pulled or pushed while it hangs: leave that margin. Source: statics; equal springs are Euler's
 * hypothesis for a table on four legs (E478, 1773; from memory).
 *
 * @param car as it stands on its wheels
 * @param points where the pads touch it
 * @param totalKg of what is lifted
 * @param centreBehindFrontAxleMm centre of gravity of what is lifted
 * @param marginMm from the centre of gravity to the nearest side of the points' polygon
 * @param hoistShare of the hoist's rating
 * @param holds no arm and not the hoist above its rating
 */
public record ArmLoads(
        CarMass car,
        LiftPoints points,
        Map<Corner, ArmLoad> arms,
        double totalKg,
        double centreBehindFrontAxleMm,
        double centreLeftMm,
        double marginMm,
        double hoistShare,
        boolean holds,
        Explanation explanation)
        implements Explained {
    /** Below this margin the car is called badly placed. Common practice, no source. */
    public static final double LEAST_MARGIN_MM = 150;

    public ArmLoads {
        arms = Collections.unmodifiableMap(new EnumMap<>(arms));
    }

    /**
     * The loads.
     *
     * @param armRatingKg of one arm, on its plate, 200 to 5000 kg
     * @param hoistRatingKg of the hoist, on its plate, 500 to 12000 kg
     * @throws IllegalArgumentException when the centre of gravity lies outside the points, or a value outside its range
     */
    public static ArmLoads of(
            CarMass car, LiftPoints points, List<PartOff> off, double armRatingKg, double hoistRatingKg) {
        return of(car, points, off, new HoistRating(hoistRatingKg, armRatingKg, armRatingKg));
    }

    /**
     * The loads on a hoist whose front and rear arms may be rated apart.
     *
     * @throws IllegalArgumentException when the centre of gravity lies outside the points
     */
    public static ArmLoads of(CarMass car, LiftPoints points, List<PartOff> off, HoistRating rating) {
        var centre = CentreOfGravity.of(car, off);
        double totalKg = centre.totalKg();
        double centreX = centre.behindFrontAxleMm();
        double centreY = centre.leftOfCentreMm();
        double marginMm = centre.marginMm(points);
        if (marginMm <= 0) {
            throw new Refused(new LiftSaid.WouldTip(
                    new Amount(centreX, "mm", 0), new Amount(centreY, "mm", 0), new Amount(-marginMm, "mm", 0)));
        }
        var support = new Support(points, totalKg, centreX, centreY);
        var loads = support.equalSprings();
        var most = support.most();
        var arms = new EnumMap<Corner, ArmLoad>(Corner.class);
        for (var corner : Corner.values()) {
            int i = corner.ordinal();
            arms.put(corner, new ArmLoad(loads[i], most[i], most[i] / rating.armKg(corner)));
        }
        double hoistShare = totalKg / rating.hoistKg();
        boolean holds = hoistShare <= 1 && arms.values().stream().allMatch(arm -> arm.shareOfRating() <= 1);
        return new ArmLoads(
                car,
                points,
                arms,
                totalKg,
                centreX,
                centreY,
                marginMm,
                hoistShare,
                holds,
                new Explanation(
                        cautions(arms, marginMm, hoistShare, loads),
                        steps(car, off, arms, totalKg, centreX, centreY, marginMm)));
    }

    /** What the arm of a corner carries. */
    public ArmLoad arm(Corner corner) {
        return Objects.requireNonNull(arms.get(corner));
    }

    private static List<Said> cautions(Map<Corner, ArmLoad> arms, double marginMm, double hoistShare, double[] loads) {
        var cautions = new ArrayList<Said>();
        if (hoistShare > 1) {
            cautions.add(LiftSaid.Sentence.TOO_HEAVY);
        }
        arms.forEach((corner, arm) -> {
            if (arm.shareOfRating() > 1) {
                cautions.add(new LiftSaid.ArmOverloaded(corner, new Amount(arm.mostKg(), "kg", 0)));
            }
        });
        if (marginMm < LEAST_MARGIN_MM) {
            cautions.add(new LiftSaid.BadlyPlaced(new Amount(marginMm, "mm", 0)));
        }
        for (var corner : Corner.values()) {
            if (loads[corner.ordinal()] < 1e-6) {
                cautions.add(new LiftSaid.CarriesNothing(corner));
            }
        }
        cautions.addAll(LiftCautions.ALWAYS);
        return cautions;
    }

    private static List<Step> steps(
            CarMass car,
            List<PartOff> off,
            Map<Corner, ArmLoad> arms,
            double totalKg,
            double centreX,
            double centreY,
            double marginMm) {
        var steps = new ArrayList<Step>();
        steps.add(new Step(
                Label.CAR_ON_WHEELS,
                new LiftSaid.FrontAndRear(
                        Amount.significant(car.frontKg(), "kg", 4), Amount.significant(car.rearKg(), "kg", 4)),
                car.frontKg() + car.rearKg(),
                "kg",
                Label.AXLE_LOADS_ENTERED));
        for (var part : off) {
            steps.add(new Step(
                    new LiftSaid.PartIsOff(part.name()),
                    new LiftSaid.AtBehindFrontAxle(Amount.significant(part.behindFrontAxleMm(), "mm", 4)),
                    -part.massKg(),
                    "kg",
                    Basis.AS_ENTERED));
        }
        steps.add(new Step(
                Label.BEHIND_FRONT_AXLE,
                new LiftSaid.BehindFormula(Amount.significant(totalKg, "kg", 4)),
                centreX,
                "mm",
                Label.MOMENTS));
        steps.add(new Step(Label.LEFT_OF_CENTRE, Label.LEFT_OF_CENTRE_FORMULA, centreY, "mm", Label.MOMENTS));
        steps.add(new Step(Label.MARGIN, Label.POINT_AND_LINE, marginMm, "mm", Label.GEOMETRY));
        arms.forEach((corner, arm) -> steps.add(new Step(
                new LiftSaid.ArmAt(corner),
                new LiftSaid.ArmFormula(Amount.significant(arm.mostKg(), "kg", 4)),
                arm.loadKg(),
                "kg",
                Label.ARM_SOURCE)));
        return steps;
    }
}
