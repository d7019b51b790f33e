package cornerbook.core.lift.judge;

import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.lift.ArmLoad;
import cornerbook.core.lift.ArmLoads;
import cornerbook.core.lift.CarBody;
import cornerbook.core.lift.CarMass;
import cornerbook.core.lift.CentreOfGravity;
import cornerbook.core.lift.DriveOver;
import cornerbook.core.lift.Hoist;
import cornerbook.core.lift.LiftPoints;
import cornerbook.core.lift.LiftRaise;
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
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Judges one car on one hoist by what is known of both, and says what is not. */
final class CarOnHoist {
    private static final int ARMS = 4;
    /** From this share of a rating the margin is called thin. Common practice, no source. */
    private static final double THIN_SHARE = 0.9;

    private static final Said SOURCE =
            new LiftSaid.Source(new Amount(THIN_SHARE * 100, "%", 0), new Amount(ArmLoads.LEAST_MARGIN_MM, "mm", 0));

    private final CarBody body;
    private final ShopTool tool;
    private final Hoist hoist;
    private final List<Said> notJudged = new ArrayList<>();

    CarOnHoist(CarBody body, ShopTool tool, Hoist hoist) {
        this.body = body;
        this.tool = tool;
        this.hoist = hoist;
    }

    /** No finding when the mass of the car is not known. */
    Judgement judge() {
        return new Judgement(find().stream().toList(), notJudged);
    }

    private Optional<Finding> find() {
        var massKg = body.kerbMassKg();
        if (massKg == null) {
            notJudged.add(new LiftSaid.NotKnown(tool.id(), List.of(Part.KERB_MASS)));
            return Optional.empty();
        }
        var points = body.liftPoints();
        var whole = points == null ? Optional.<CarMass>empty() : body.findMass();
        var car = whole.or(body::findMassOnAxles).filter(each -> hoist.armCount() == ARMS);
        var cases = new EnumMap<Wheels, ArmLoads>(Wheels.class);
        if (car.isPresent()) {
            var pads = whole.isPresent() ? points : null;
            var parts = parts(car.get());
            if (pads != null) {
                double marginMm = marginMm(car.get(), pads, parts);
                if (marginMm <= 0) {
                    return Optional.of(tips(marginMm));
                }
            }
            parts.forEach((wheels, off) -> cases.put(wheels, ArmLoads.of(car.get(), pads, off, hoist.rating())));
        }
        tellWhatIsMissing(cases);
        return Optional.of(finding(massKg, cases));
    }

    /** What is off the car while it hangs. */
    private Map<Wheels, List<PartOff>> parts(CarMass car) {
        var parts = new EnumMap<Wheels, List<PartOff>>(Wheels.class);
        parts.put(Wheels.ON, List.of());
        var wheelKg = body.wheelMassKg();
        if (wheelKg != null) {
            parts.put(Wheels.OFF, PartOff.wheels(wheelKg, car.wheelbaseMm()));
        }
        return parts;
    }

    private static double marginMm(CarMass car, LiftPoints points, Map<Wheels, List<PartOff>> parts) {
        return parts.values().stream()
                .mapToDouble(off -> CentreOfGravity.of(car, off).marginMm(points))
                .min()
                .orElseThrow();
    }

    private void tellWhatIsMissing(Map<Wheels, ArmLoads> cases) {
        if (hoist.armCount() != ARMS) {
            notJudged.add(new LiftSaid.OtherArmCount(tool.id(), hoist.armCount()));
        } else if (cases.isEmpty()) {
            notJudged.add(new LiftSaid.ArmsNotKnown(tool.id(), List.of(Part.FRONT_SHARE)));
        } else if (cases.values().stream().anyMatch(loads -> loads.points() == null)) {
            notJudged.add(new LiftSaid.PointsNotKnown(
                    tool.id(),
                    notKnown(List.of(
                            Map.entry(Part.LIFT_POINTS, Optional.ofNullable(body.liftPoints())),
                            Map.entry(Part.WHEELBASE, Optional.ofNullable(body.wheelbaseMm())),
                            Map.entry(Part.TRACK, Optional.ofNullable(body.trackMm()))))));
        }
        var unread = new ArrayList<Said>();
        if (!cases.isEmpty() && !hoist.rating().armsRead()) {
            unread.add(Part.ARM_RATING);
        }
        if (!hoist.adapterHeightsMm().isEmpty() && hoist.adapterRatingKg() == null) {
            unread.add(Part.ADAPTER_RATING);
        }
        if (!unread.isEmpty()) {
            notJudged.add(new LiftSaid.PlatesNotRead(tool.id(), unread));
        }
        var pointHeight = Map.entry(
                Part.LIFT_POINT_HEIGHT, Optional.ofNullable(body.heights().liftPointMm()));
        if (stack().isEmpty()) {
            notJudged.add(new LiftSaid.UnderNotKnown(
                    tool.id(),
                    notKnown(List.of(
                            pointHeight,
                            Map.entry(
                                    Part.GROUND_CLEARANCE,
                                    Optional.ofNullable(body.heights().groundClearanceMm()))))));
        }
        if (hoist.ceilingMm() != null && raise().isEmpty()) {
            notJudged.add(new LiftSaid.CeilingNotKnown(
                    tool.id(),
                    notKnown(List.of(
                            pointHeight,
                            Map.entry(
                                    Part.CAR_HEIGHT,
                                    Optional.ofNullable(body.heights().roofMm()))))));
        }
    }

    private static List<Said> notKnown(List<Map.Entry<Part, ? extends Optional<?>>> parts) {
        return parts.stream()
                .filter(part -> part.getValue().isEmpty())
                .<Said>map(Map.Entry::getKey)
                .toList();
    }

    private Finding finding(double massKg, Map<Wheels, ArmLoads> cases) {
        var stack = stack();
        var over = over();
        var raise = raise();
        var arms = cases.values().stream()
                .flatMap(loads -> loads.arms().entrySet().stream())
                .toList();
        double hoistShare = massKg / hoist.rating().hoistKg();
        double armShare = most(arms.stream().map(arm -> arm.getValue().share()));
        double adapterShare = adapterShare(arms.stream().map(Map.Entry::getValue));
        double share = most(Stream.of(hoistShare, armShare, adapterShare));
        var uneven = arms.stream().max(Map.Entry.comparingByValue(Comparator.comparingDouble(ArmLoad::mostShare)));
        var marginMm = cases.values().stream()
                .map(ArmLoads::marginMm)
                .flatMap(Stream::ofNullable)
                .min(Comparator.naturalOrder());
        Verdict verdict;
        Said plainWords;
        if (above(hoistShare) || above(armShare)) {
            verdict = Verdict.UNSAFE;
            plainWords = Sentence.CUSTOMER_TOO_HEAVY;
        } else if (above(adapterShare)) {
            verdict = Verdict.UNSAFE;
            plainWords = Sentence.CUSTOMER_ADAPTERS_TOO_WEAK;
        } else if (over.isPresent() && !over.get().clears()) {
            verdict = Verdict.SPENT;
            plainWords = Sentence.CUSTOMER_NOT_OVER;
        } else if (stack.isPresent() && !stack.get().goesUnder()) {
            verdict = Verdict.SPENT;
            plainWords = Sentence.CUSTOMER_NOT_UNDER;
        } else if (uneven.isPresent() && above(uneven.get().getValue().mostShare())) {
            verdict = Verdict.RUNS_OUT;
            plainWords = new LiftSaid.ArmUneven(
                    uneven.get().getKey(),
                    new Amount(uneven.get().getValue().mostKg(), "kg", 0),
                    Amount.significant(uneven.get().getValue().mostShare() * 100, "%", 4));
        } else if (share > THIN_SHARE || (marginMm.isPresent() && marginMm.get() < ArmLoads.LEAST_MARGIN_MM)) {
            verdict = Verdict.RUNS_OUT;
            plainWords = Sentence.CUSTOMER_NEAR_LIMIT;
        } else if (raise.isPresent() && raise.get().limited()) {
            verdict = Verdict.RUNS_OUT;
            plainWords = raise.get().cautions().getFirst();
        } else {
            verdict = Verdict.HOLDS;
            plainWords = Sentence.CUSTOMER_WITHIN;
        }
        var finding = new Finding(
                new Subject(Subject.Part.LIFT, null, null, null),
                verdict,
                new LiftSaid.OnHoist(
                        tool.id(),
                        percent(share),
                        uneven.map(arm -> percent(arm.getValue().mostShare())).orElse(null),
                        marginMm.map(inside -> new Amount(inside, "mm", 0)).orElse(null)),
                plainWords,
                null,
                null,
                Math.clamp(1 - share, 0, 1),
                Stream.of(
                                HoistEvidence.loads(massKg, hoist, cases, adapterShare),
                                HoistEvidence.heights(stack, over, raise))
                        .flatMap(List::stream)
                        .toList(),
                SOURCE);
        return switch (verdict) {
            case HOLDS -> finding;
            case RUNS_OUT -> finding.todo(Todo.Action.LIFT_WITH_CARE, Todo.When.BEFORE_LIFTING);
            case SPENT, UNSAFE -> finding.todo(Todo.Action.LIFT_OTHERWISE, Todo.When.BEFORE_LIFTING);
        };
    }

    private Finding tips(double marginMm) {
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
                        SOURCE)
                .todo(Todo.Action.LIFT_OTHERWISE, Todo.When.BEFORE_LIFTING);
    }

    /** Of the weakest adapter under the heaviest arm; 0 while nobody read what it may carry. */
    private double adapterShare(Stream<ArmLoad> arms) {
        var ratingKg = hoist.adapterRatingKg();
        return ratingKg == null ? 0 : most(arms.map(arm -> arm.loadKg() / ratingKg));
    }

    private static double most(Stream<Double> shares) {
        return shares.max(Comparator.naturalOrder()).orElse(0.0);
    }

    private static boolean above(double share) {
        return ArmLoad.above(share);
    }

    static Amount percent(double share) {
        return new Amount(share * 100, "%", 0);
    }

    /** With no blocks if it goes under so, and else with the lowest of the shop's that are enough, or its highest. */
    private Optional<LiftStack> stack() {
        var pointMm = body.heights().liftPointMm();
        var clearanceMm = body.heights().groundClearanceMm();
        if (pointMm == null || clearanceMm == null) {
            return Optional.empty();
        }
        double neededMm = stack(pointMm, clearanceMm, 0).neededMm();
        double blocksMm = neededMm == 0
                ? 0
                : hoist.blockHeightsMm().stream()
                        .filter(heightMm -> heightMm >= neededMm)
                        .min(Comparator.naturalOrder())
                        .orElse(hoist.highestBlocksMm());
        return Optional.of(stack(pointMm, clearanceMm, blocksMm));
    }

    private LiftStack stack(double pointMm, double clearanceMm, double blocksMm) {
        return LiftStack.of(pointMm, clearanceMm, tool.lowest(), hoist.lowestAdapterMm(), blocksMm);
    }

    private Optional<DriveOver> over() {
        var clearanceMm = body.heights().groundClearanceMm();
        var driveOverMm = hoist.driveOverMm();
        return clearanceMm == null || driveOverMm == null
                ? Optional.empty()
                : Optional.of(DriveOver.of(clearanceMm, driveOverMm));
    }

    private Optional<LiftRaise> raise() {
        var pointMm = body.heights().liftPointMm();
        var roofMm = body.heights().roofMm();
        var ceilingMm = hoist.ceilingMm();
        return pointMm == null || roofMm == null || ceilingMm == null
                ? Optional.empty()
                : Optional.of(LiftRaise.of(pointMm, hoist.lowestAdapterMm(), tool.highest(), roofMm, ceilingMm));
    }
}
