package cornerbook.core.lift.judge;

import cornerbook.core.say.Said;

import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarMass;
import cornerbook.core.lift.CentreOfGravity;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftStack;
import cornerbook.core.lift.PartOff;
import cornerbook.core.tool.ShopTool;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
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

    private static final String SOURCE =
            "ratings on the plates of hoist and arms, vehicle manufacturer's lift points; statics, docs/methods/lift.md; thin from 90 %% of a rating and under %.0f mm of margin: common practice, no source"
                    .formatted(ArmLoads.LEAST_MARGIN_MM);

    private LiftFindings() {}

    public static Optional<Finding> of(Vehicle vehicle, Visit visit, List<Said> notJudged) {
        return visit.findTool(ShopTool.Kind.HOIST)
                .flatMap(tool ->
                        tool.findHoist().flatMap(hoist -> of(vehicle.details().body(), tool, hoist, notJudged)));
    }

    private static Optional<Finding> of(CarBody body, ShopTool tool, Hoist hoist, List<Said> notJudged) {
        var mass = body.findMass();
        var points = body.liftPoints();
        if (hoist.armCount() != ARMS) {
            notJudged.add(Said.verbatim(
                    "lift on %s: loads are computed for 4 arms, it has %d".formatted(tool.id(), hoist.armCount())));
            return Optional.empty();
        }
        if (mass.isEmpty() || points == null) {
            notJudged.add(Said.verbatim("lift on %s: cannot be said, as the car's %s not known".formatted(tool.id(), missing(body))));
            return Optional.empty();
        }
        var stack = stack(body, tool, hoist);
        if (stack.isEmpty()) {
            notJudged.add(Said.verbatim("lift on %s: whether the arms go under cannot be said, as the car's %s not known"
                    .formatted(tool.id(), missingHeight(body))));
        }
        return Optional.of(judge(mass.get(), points, body.wheelMassKg(), tool, hoist, stack));
    }

    private static Finding judge(
            CarMass car,
            LiftPoints points,
            @Nullable Double wheelKg,
            ShopTool tool,
            Hoist hoist,
            Optional<LiftStack> stack) {
        var cases = new LinkedHashMap<String, List<PartOff>>();
        cases.put("wheels on", List.of());
        if (wheelKg != null) {
            cases.put("wheels off", PartOff.wheels(wheelKg, car.wheelbaseMm()));
        }
        double marginMm = cases.values().stream()
                .mapToDouble(off -> CentreOfGravity.of(car, off).marginMm(points))
                .min()
                .orElseThrow();
        if (marginMm <= 0) {
            return tips(tool, marginMm);
        }
        var loads = new LinkedHashMap<String, ArmLoads>();
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
                "Hoist %s: %.0f %% of a rating with even pads, centre of gravity %.0f mm inside the lift points"
                        .formatted(tool.id(), share * 100, marginMm),
                switch (verdict) {
                    case UNSAFE -> "The car is too heavy for that hoist and must not be lifted on it.";
                    case SPENT ->
                        "The arms of that hoist do not go under the car; another hoist or higher blocks are needed.";
                    case RUNS_OUT ->
                        "The car is near the limit of that hoist: all four pads must bear, and nothing heavy may be taken off while it hangs.";
                    default -> "The car was lifted within what the hoist may carry.";
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
                "Hoist %s: centre of gravity %.0f mm outside the lift points, do not lift"
                        .formatted(tool.id(), -marginMm),
                "The car would tip off the hoist; it must not be lifted at these points.",
                null,
                null,
                0,
                List.of(new Evidence(
                        "margin of the centre of gravity",
                        "−%.0f mm".formatted(-marginMm),
                        "moments of the axle loads; distance to the nearest side of the lift points")),
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

    private static List<Evidence> evidence(Map<String, ArmLoads> cases, Hoist hoist, Optional<LiftStack> stack) {
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(
                "before anything else",
                "the vehicle manufacturer's lift points, never a battery case",
                "raise until the wheels are clear, rock the car, look at each pad"));
        var heaviest = cases.values().stream()
                .max(Comparator.comparing(LiftFindings::armShare))
                .orElseThrow();
        for (var corner : Corner.values()) {
            var arm = heaviest.arm(corner);
            evidence.add(new Evidence(
                    "arm at " + corner,
                    "%.0f kg, %.0f %% of %.0f kg"
                            .formatted(
                                    arm.loadKg(),
                                    100 * arm.loadKg() / hoist.rating().armKg(corner),
                                    hoist.rating().armKg(corner)),
                    "all pads bear evenly; %.0f kg, %.0f %%, when one bears nothing"
                            .formatted(arm.mostKg(), arm.shareOfRating() * 100)));
        }
        cases.forEach((name, loads) -> evidence.add(new Evidence(
                "hoist, " + name,
                "%.0f kg: %.0f %% of %.0f kg"
                        .formatted(
                                loads.totalKg(),
                                loads.hoistShare() * 100,
                                hoist.rating().hoistKg()),
                "centre of gravity %.0f mm behind the front axle, %.0f mm inside the lift points"
                        .formatted(loads.centreBehindFrontAxleMm(), loads.marginMm()))));
        if (!cases.containsKey("wheels off")) {
            evidence.add(new Evidence("wheels off", "not judged", "the mass of a wheel is not known"));
        }
        stack.ifPresent(heights -> evidence.add(new Evidence(
                "arms under the car",
                heights.goesUnder()
                        ? heights.blocksMm() > 0
                                ? "with blocks of %.0f mm".formatted(heights.blocksMm())
                                : "with %.0f mm to spare".formatted(heights.spareMm())
                        : "blocks of %.0f mm are needed".formatted(Math.ceil(heights.neededMm())),
                "lowered pad %.0f mm, adapter %.0f mm, lift point %.0f mm, ground clearance %.0f mm, play 10 mm"
                        .formatted(heights.armMm(), heights.adapterMm(), heights.pointMm(), heights.clearanceMm()))));
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

    private static String missing(CarBody body) {
        var missing = new LinkedHashMap<String, @Nullable Object>();
        missing.put("kerb mass", body.kerbMassKg());
        missing.put("share on the front axle", body.frontShare());
        missing.put("wheelbase", body.wheelbaseMm());
        missing.put("track", body.trackMm());
        missing.put("lift points", body.liftPoints());
        return named(missing);
    }

    private static String missingHeight(CarBody body) {
        var missing = new LinkedHashMap<String, @Nullable Object>();
        missing.put("height of its lift points", body.liftPointHeightMm());
        missing.put("ground clearance", body.groundClearanceMm());
        return named(missing);
    }

    /** The names of those that are null, with the verb. */
    private static String named(Map<String, @Nullable Object> values) {
        var names = values.entrySet().stream()
                .filter(entry -> entry.getValue() == null)
                .map(Map.Entry::getKey)
                .toList();
        return names.size() == 1 && !names.getFirst().endsWith("points")
                ? names.getFirst() + " is"
                : String.join(", ", names) + " are";
    }
}
