package cornerbook.core.lift.judge;

import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarMass;
import cornerbook.core.lift.CentreOfGravity;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftSaid;
import cornerbook.core.lift.LiftSaid.Label;
import cornerbook.core.lift.LiftSaid.Part;
import cornerbook.core.lift.LiftSaid.Sentence;
import cornerbook.core.lift.LiftSaid.Wheels;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.lift.PartOff;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Margin;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finding on the car on the hoist of a visit: the load of each arm and of the hoist against their ratings, with the wheels on
 * and, when their mass is known, off. Unsafe when an arm is above its rating though all pads bear evenly; thin when it would be
 * above it with one pad bearing nothing. The centre of gravity against the lift points; whether the arms go under. A visit that
 * names no hoist gives none. The plates of hoist and arms and the vehicle manufacturer's lift points outrank it.
 */
public final class LiftFindings {
    private static final int ARMS = 4;
    /** From this share of a rating the margin is called thin. Common practice, no source. */
    private static final double THIN_SHARE = 0.9;

    private static final Said SOURCE =
            new LiftSaid.Source(new Amount(THIN_SHARE * 100, "%", 0), new Amount(ArmLoads.LEAST_MARGIN_MM, "mm", 0));

    private LiftFindings() {}

    public static Judgement judge(Case given) {
        return given.visit()
                .card()
                .findTool(ShopTool.Kind.HOIST)
                .flatMap(tool -> tool.findHoist()
                        .map(hoist -> judge(given.vehicle().details().body(), tool, hoist)))
                .orElse(Judgement.NONE);
    }

    private static Judgement judge(CarBody body, ShopTool tool, Hoist hoist) {
        var mass = body.findMass();
        var points = body.liftPoints();
        if (hoist.armCount() != ARMS) {
            return Judgement.missing(new LiftSaid.OtherArmCount(tool.id(), hoist.armCount()));
        }
        if (mass.isEmpty() || points == null) {
            return Judgement.missing(new LiftSaid.NotKnown(tool.id(), missing(body)));
        }
        var stack = stack(body, tool, hoist);
        return new Judgement(
                List.of(judge(mass.get(), points, body.wheelMassKg(), tool, hoist, stack)),
                stack.isEmpty() ? List.of(new LiftSaid.UnderNotKnown(tool.id(), missingHeight(body))) : List.of());
    }

    private static Finding judge(
            CarMass car,
            LiftPoints points,
            @Nullable Double wheelKg,
            ShopTool tool,
            Hoist hoist,
            Optional<LiftStack> stack) {
        var cases = new EnumMap<Wheels, List<PartOff>>(Wheels.class);
        cases.put(Wheels.ON, List.of());
        if (wheelKg != null) {
            cases.put(Wheels.OFF, PartOff.wheels(wheelKg, car.wheelbaseMm()));
        }
        double marginMm = cases.values().stream()
                .mapToDouble(off -> CentreOfGravity.of(car, off).marginMm(points))
                .min()
                .orElseThrow();
        if (marginMm <= 0) {
            return tips(tool, marginMm);
        }
        var loads = new EnumMap<Wheels, ArmLoads>(Wheels.class);
        cases.forEach((name, off) -> loads.put(name, ArmLoads.of(car, points, off, hoist.rating())));
        double share = loads.values().stream()
                .mapToDouble(each -> evenShare(each, hoist))
                .max()
                .orElseThrow();
        double unevenShare = loads.values().stream()
                .mapToDouble(LiftFindings::armShare)
                .max()
                .orElseThrow();
        boolean goesUnder = stack.isEmpty() || stack.get().goesUnder();
        var verdict = share > 1
                ? Verdict.UNSAFE
                : !goesUnder
                        ? Verdict.SPENT
                        : share > THIN_SHARE || unevenShare > 1 || marginMm < ArmLoads.LEAST_MARGIN_MM
                                ? Verdict.RUNS_OUT
                                : Verdict.HOLDS;
        return new Finding(
                new Subject(Subject.Part.LIFT, null, null, null),
                verdict,
                new LiftSaid.OnHoist(tool.id(), new Amount(share * 100, "%", 0), new Amount(marginMm, "mm", 0)),
                switch (verdict) {
                    case UNSAFE -> Sentence.CUSTOMER_TOO_HEAVY;
                    case SPENT -> Sentence.CUSTOMER_NOT_UNDER;
                    case RUNS_OUT -> Sentence.CUSTOMER_NEAR_LIMIT;
                    default -> Sentence.CUSTOMER_WITHIN;
                },
                null,
                null,
                Math.clamp(1 - share, 0, 1),
                evidence(loads, hoist, stack),
                SOURCE);
    }

    private static Finding tips(ShopTool tool, double marginMm) {
        return new Finding(
                new Subject(Subject.Part.LIFT, null, null, null),
                Verdict.UNSAFE,
                new LiftSaid.TipsOnHoist(tool.id(), new Amount(-marginMm, "mm", 0)),
                Sentence.CUSTOMER_WOULD_TIP,
                null,
                null,
                0,
                List.of(new Evidence(
                        Label.MARGIN_OF_CENTRE, new Margin(marginMm, "mm", 0, false), Label.MARGIN_SOURCE)),
                SOURCE);
    }

    /** The largest share of a rating, of the hoist or of an arm, while all four pads bear evenly. */
    private static double evenShare(ArmLoads loads, Hoist hoist) {
        return Arrays.stream(Corner.values())
                .mapToDouble(
                        corner -> loads.arm(corner).loadKg() / hoist.rating().armKg(corner))
                .reduce(loads.hoistShare(), Math::max);
    }

    /** The same of an arm when one pad bears nothing. */
    private static double armShare(ArmLoads loads) {
        return Arrays.stream(Corner.values())
                .mapToDouble(corner -> loads.arm(corner).shareOfRating())
                .max()
                .orElseThrow();
    }

    private static List<Evidence> evidence(Map<Wheels, ArmLoads> cases, Hoist hoist, Optional<LiftStack> stack) {
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(Label.FIRST_OF_ALL, Label.MAKERS_POINTS, Label.RAISE_AND_ROCK));
        var heaviest = cases.values().stream()
                .max(Comparator.comparing(LiftFindings::armShare))
                .orElseThrow();
        for (var corner : Corner.values()) {
            var arm = heaviest.arm(corner);
            evidence.add(new Evidence(
                    new LiftSaid.ArmAt(corner),
                    new LiftSaid.OfRating(
                            new Amount(arm.loadKg(), "kg", 0),
                            new Amount(100 * arm.loadKg() / hoist.rating().armKg(corner), "%", 0),
                            new Amount(hoist.rating().armKg(corner), "kg", 0)),
                    new LiftSaid.EvenPads(
                            new Amount(arm.mostKg(), "kg", 0), new Amount(arm.shareOfRating() * 100, "%", 0))));
        }
        cases.forEach((name, loads) -> evidence.add(new Evidence(
                new LiftSaid.HoistWith(name),
                new LiftSaid.OfRating(
                        new Amount(loads.totalKg(), "kg", 0),
                        new Amount(loads.hoistShare() * 100, "%", 0),
                        new Amount(hoist.rating().hoistKg(), "kg", 0)),
                new LiftSaid.CentreAt(
                        new Amount(loads.centreBehindFrontAxleMm(), "mm", 0), new Amount(loads.marginMm(), "mm", 0)))));
        if (!cases.containsKey(Wheels.OFF)) {
            evidence.add(new Evidence(Wheels.OFF, Label.NOT_JUDGED, Label.WHEEL_MASS_NOT_KNOWN));
        }
        stack.ifPresent(heights -> evidence.add(new Evidence(
                Label.ARMS_UNDER_CAR,
                heights.goesUnder()
                        ? heights.blocksMm() > 0
                                ? new LiftSaid.WithBlocks(new Amount(heights.blocksMm(), "mm", 0))
                                : new LiftSaid.ToSpare(new Amount(heights.spareMm(), "mm", 0))
                        : new LiftSaid.BlocksNeeded(new Amount(Math.ceil(heights.neededMm()), "mm", 0)),
                new LiftSaid.Heights(
                        new Amount(heights.armMm(), "mm", 0),
                        new Amount(heights.adapterMm(), "mm", 0),
                        new Amount(heights.pointMm(), "mm", 0),
                        new Amount(heights.clearanceMm(), "mm", 0),
                        new Amount(LiftStack.PLAY_MM, "mm", 0)))));
        return evidence;
    }

    /** With no blocks if it goes under so, and else with the lowest of the shop's that are enough, or its highest. */
    private static Optional<LiftStack> stack(CarBody body, ShopTool tool, Hoist hoist) {
        var pointMm = body.liftPointHeightMm();
        var clearanceMm = body.groundClearanceMm();
        if (pointMm == null || clearanceMm == null) {
            return Optional.empty();
        }
        double neededMm = LiftStack.of(pointMm, clearanceMm, tool.lowest(), hoist.lowestAdapterMm(), 0)
                .neededMm();
        double blocksMm = neededMm == 0
                ? 0
                : hoist.blockHeightsMm().stream()
                        .filter(heightMm -> heightMm >= neededMm)
                        .min(Comparator.naturalOrder())
                        .orElse(hoist.highestBlocksMm());
        return Optional.of(LiftStack.of(pointMm, clearanceMm, tool.lowest(), hoist.lowestAdapterMm(), blocksMm));
    }

    private static List<Said> missing(CarBody body) {
        var missing = new ArrayList<Said>();
        addIfNull(body.kerbMassKg(), Part.KERB_MASS, missing);
        addIfNull(body.frontShare(), Part.FRONT_SHARE, missing);
        addIfNull(body.wheelbaseMm(), Part.WHEELBASE, missing);
        addIfNull(body.trackMm(), Part.TRACK, missing);
        addIfNull(body.liftPoints(), Part.LIFT_POINTS, missing);
        return missing;
    }

    private static List<Said> missingHeight(CarBody body) {
        var missing = new ArrayList<Said>();
        addIfNull(body.liftPointHeightMm(), Part.LIFT_POINT_HEIGHT, missing);
        addIfNull(body.groundClearanceMm(), Part.GROUND_CLEARANCE, missing);
        return missing;
    }

    private static void addIfNull(@Nullable Object value, Part part, List<Said> missing) {
        if (value == null) {
            missing.add(part);
        }
    }
}
