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
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Load of each arm of a two-post hoist under a car with some parts off. The car is rigid and the four pads are equal
 * springs ({@link Support}): by that each arm is judged, as the plates of hoists mean it. As pads never bear quite evenly, the
 * most that each may carry is given too, with one pad bearing nothing: that is a caution, not a reason against. Where the lift
 * points are not known the pads are taken to stand under the axles, as the trade reckons (half of an axle's load on each arm).
 * Not for a car that is pulled or pushed while it hangs: leave that margin. Source: statics; equal springs are Euler's
 * hypothesis for a table on four legs (E478, 1773; from memory).
 *
 * @param car as it stands on its wheels
 * @param points where the pads touch it; null where that is not known
 * @param totalKg of what is lifted
 * @param centreBehindFrontAxleMm centre of gravity of what is lifted
 * @param marginMm from the centre of gravity to the nearest side of the points' polygon; null where they are not known
 * @param hoistShare of the hoist's rating
 * @param holds no arm while all pads bear evenly, and not the hoist, above its rating
 */
public record ArmLoads(
        CarMass car,
        @Nullable LiftPoints points,
        Map<Corner, ArmLoad> arms,
        double totalKg,
        double centreBehindFrontAxleMm,
        double centreLeftMm,
        @Nullable Double marginMm,
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
     * @param points null where they are not known
     * @throws IllegalArgumentException when the centre of gravity lies outside the points
     */
    public static ArmLoads of(CarMass car, @Nullable LiftPoints points, List<PartOff> off, HoistRating rating) {
        var centre = CentreOfGravity.of(car, off);
        double totalKg = centre.totalKg();
        double centreX = centre.behindFrontAxleMm();
        double centreY = centre.leftOfCentreMm();
        var pads = points == null ? LiftPoints.symmetric(0, car.wheelbaseMm(), car.trackMm()) : points;
        double marginMm = centre.marginMm(pads);
        if (marginMm <= 0) {
            throw new Refused(new LiftSaid.WouldTip(
                    new Amount(centreX, "mm", 0), new Amount(centreY, "mm", 0), new Amount(-marginMm, "mm", 0)));
        }
        var support = new Support(pads, totalKg, centreX, centreY);
        var loads = support.equalSprings();
        var most = support.most();
        var arms = new EnumMap<Corner, ArmLoad>(Corner.class);
        for (var corner : Corner.values()) {
            int i = corner.ordinal();
            arms.put(corner, new ArmLoad(loads[i], most[i], rating.armKg(corner)));
        }
        double hoistShare = totalKg / rating.hoistKg();
        boolean holds = !ArmLoad.above(hoistShare) && arms.values().stream().noneMatch(ArmLoad::overloaded);
        var known = points == null ? null : Double.valueOf(marginMm);
        return new ArmLoads(
                car,
                points,
                arms,
                totalKg,
                centreX,
                centreY,
                known,
                hoistShare,
                holds,
                new Explanation(
                        cautions(arms, known, hoistShare, rating),
                        steps(car, off, arms, totalKg, centreX, centreY, known)));
    }

    /** What the arm of a corner carries. */
    public ArmLoad arm(Corner corner) {
        return Objects.requireNonNull(arms.get(corner));
    }

    /** The arm that carries the largest share of its rating when one pad bears nothing. */
    private static Optional<Map.Entry<Corner, ArmLoad>> worstWhenUneven(Map<Corner, ArmLoad> arms) {
        return arms.entrySet().stream().max(Map.Entry.comparingByValue(Comparator.comparingDouble(ArmLoad::mostShare)));
    }

    private static List<Said> cautions(
            Map<Corner, ArmLoad> arms, @Nullable Double marginMm, double hoistShare, HoistRating rating) {
        var cautions = new ArrayList<Said>();
        if (ArmLoad.above(hoistShare)) {
            cautions.add(LiftSaid.Sentence.TOO_HEAVY);
        }
        arms.forEach((corner, arm) -> {
            if (arm.overloaded()) {
                cautions.add(new LiftSaid.ArmOverloaded(
                        corner, new Amount(arm.loadKg(), "kg", 0), new Amount(arm.ratingKg(), "kg", 0)));
            }
        });
        worstWhenUneven(arms)
                .filter(worst -> arms.values().stream().noneMatch(ArmLoad::overloaded)
                        && ArmLoad.above(worst.getValue().mostShare()))
                .ifPresent(worst -> cautions.add(new LiftSaid.ArmUneven(
                        worst.getKey(),
                        new Amount(worst.getValue().mostKg(), "kg", 0),
                        Amount.significant(worst.getValue().mostShare() * 100, "%", 4))));
        if (marginMm == null) {
            cautions.add(LiftSaid.Sentence.PADS_UNDER_AXLES);
        } else if (marginMm < LEAST_MARGIN_MM) {
            cautions.add(new LiftSaid.BadlyPlaced(new Amount(marginMm, "mm", 0)));
        }
        if (!rating.armsRead()) {
            cautions.add(LiftSaid.Sentence.ARM_PLATES_NOT_READ);
        }
        arms.forEach((corner, arm) -> {
            if (arm.loadKg() < 1e-6) {
                cautions.add(new LiftSaid.CarriesNothing(corner));
            }
        });
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
            @Nullable Double marginMm) {
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
        if (marginMm != null) {
            steps.add(new Step(
                    Label.BEHIND_FRONT_AXLE,
                    new LiftSaid.BehindFormula(Amount.significant(totalKg, "kg", 4)),
                    centreX,
                    "mm",
                    Label.MOMENTS));
            steps.add(new Step(Label.LEFT_OF_CENTRE, Label.LEFT_OF_CENTRE_FORMULA, centreY, "mm", Label.MOMENTS));
            steps.add(new Step(Label.MARGIN, Label.POINT_AND_LINE, marginMm, "mm", Label.GEOMETRY));
        }
        arms.forEach((corner, arm) -> {
            var most = Amount.significant(arm.mostKg(), "kg", 4);
            steps.add(new Step(
                    new LiftSaid.ArmAt(corner),
                    marginMm == null ? new LiftSaid.HalfOfAxle(most) : new LiftSaid.ArmFormula(most),
                    arm.loadKg(),
                    "kg",
                    Label.ARM_SOURCE));
        });
        return steps;
    }
}
