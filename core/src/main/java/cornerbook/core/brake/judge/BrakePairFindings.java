package cornerbook.core.brake.judge;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.brake.drag.AxleDrag;
import cornerbook.core.brake.drag.Drag;
import cornerbook.core.brake.drag.DragDrive;
import cornerbook.core.brake.judge.BrakeSaid.Ground;
import cornerbook.core.brake.judge.BrakeSaid.Label;
import cornerbook.core.brake.judge.BrakeSaid.Pair;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSize;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What an axle needs as a pair: pads, and discs, are replaced on both sides together, so that it brakes evenly (common practice, no
 * source); and after a drive its discs are as warm as each other, or one brake drags.
 */
public final class BrakePairFindings {
    private static final double WAY_KM = 100;

    /** New discs and drums bring their pads and shoes with them, which are then not asked for once more. */
    private static final List<Pair> AT_DISCS = List.of(Pair.DISCS, Pair.PADS);

    private static final List<Pair> AT_DISCS_WITH_SHOES = List.of(Pair.DISCS, Pair.PADS, Pair.SHOES);
    private static final List<Pair> AT_DRUMS = List.of(Pair.DRUMS, Pair.SHOES);

    private BrakePairFindings() {}

    record HeatTitle(Axle axle, boolean even) implements Said {}

    record EvenlyWarm(Axle axle) implements Said {}

    /** Which of two brakes that differ in warmth is at fault, by what else was read there. */
    public enum AtFault {
        HOT_DRAGS,
        COOL_DOES_TOO_LITTLE,
        BOTH,
        NOT_TOLD
    }

    /**
     * One disc, or drum, of an axle that is warmer than the other.
     *
     * @param drags from where on that is no doubt
     * @param takes what the hotter one takes more where it drags; null where its disc is not known, or where it is not at fault
     */
    public record OneIsHotter(
            Corner hot,
            Amount hotAt,
            Corner cool,
            Amount coolAt,
            boolean drags,
            AtFault atFault,
            @Nullable DragTakes takes)
            implements Said {
        /** Nothing else was read that tells which of the two is at fault. */
        public OneIsHotter(Corner hot, Amount hotAt, Corner cool, Amount coolAt, boolean drags) {
            this(hot, hotAt, cool, coolAt, drags, AtFault.NOT_TOLD, null);
        }

        /** Both corners: the one at fault, and where nobody can tell the hot one, first. */
        public List<Corner> atFaultFirst() {
            return atFault == AtFault.COOL_DOES_TOO_LITTLE ? List.of(cool, hot) : List.of(hot, cool);
        }
    }

    /** Force that a brake that drags takes, and energy at the wheel over a distance. */
    public record DragTakes(Between force, Between energy, Amount distance) implements Said {}

    enum HeatGround implements Said {
        SAME_AXLE
    }

    /**
     * What differs between the two brakes of an axle.
     *
     * @param worn the findings on thickness, lining and cracks of the single corners; what a hand says of a movement does not wear
     *     a part out
     */
    public static List<Finding> of(Case given, List<Finding> worn) {
        var findings = new ArrayList<Finding>();
        for (var axle : Axle.values()) {
            var corners = Arrays.stream(Corner.values())
                    .filter(corner -> corner.axle() == axle)
                    .map(corner -> new BrakeCorner(corner, given.vehicle(), given.readings()))
                    .toList();
            for (var pair : pairs(given.vehicle().axle(axle).brake())) {
                var due = due(axle, pair, corners, worn);
                due.ifPresent(findings::add);
                if (due.isPresent() && due.get().plainWords() instanceof BrakeSaid.PairAskedFor) {
                    break;
                }
            }
            heat(axle, corners).ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> due(Axle axle, Pair pair, List<BrakeCorner> corners, List<Finding> worn) {
        var replaced = replaced(pair);
        var asking =
                worn.stream().filter(finding -> isSpent(finding, pair, axle)).toList();
        var spent = corners.stream()
                .map(BrakeCorner::corner)
                .filter(corner ->
                        asking.stream().anyMatch(finding -> finding.subject().corner() == corner))
                .toList();
        boolean again = asking.stream().allMatch(BrakePairFindings::isReadAgain);
        var done = corners.stream().filter(at -> at.done(replaced)).toList();
        boolean half = done.size() == 1;
        if (spent.isEmpty() && !half) {
            return Optional.empty();
        }
        var asked = new BrakeSaid.PairAskedFor(axle, pair, Listed.and(spent), spent.size());
        return Optional.of(new Finding(
                        new Subject(Subject.Part.BRAKE_PAIR, null, null, null),
                        Verdict.SPENT,
                        new BrakeSaid.ReplacePair(axle, pair),
                        half
                                ? new BrakeSaid.PairReplacedOnOneSide(
                                        axle, pair, done.getFirst().corner())
                                : again ? Listed.sentences(asked, new BrakeSaid.OnceReadAgain()) : asked,
                        null,
                        null,
                        0,
                        corners.stream()
                                .map(at -> new Evidence(
                                        at.corner(),
                                        shown(worn(pair, at)),
                                        at.done(replaced) ? Ground.REPLACED_AT_THIS_VISIT : Ground.THINNEST_READING))
                                .toList(),
                        Ground.BOTH_SIDES_TOGETHER)
                .todo(again && !half ? Todo.Action.MEASURE_AGAIN : Todo.Action.REPLACE_PAIR));
    }

    private static List<Pair> pairs(BrakeSpecification brake) {
        return brake.hasDrum() ? AT_DRUMS : brake.hasParkingShoes() ? AT_DISCS_WITH_SHOES : AT_DISCS;
    }

    private static Measure replaced(Pair pair) {
        return switch (pair) {
            case PADS -> Measure.PADS_REPLACED;
            case DISCS -> Measure.DISC_REPLACED;
            case SHOES -> Measure.SHOES_REPLACED;
            case DRUMS -> Measure.DRUM_REPLACED;
        };
    }

    /** What a gauge reads of its wear. */
    private static OptionalDouble worn(Pair pair, BrakeCorner at) {
        return switch (pair) {
            case PADS -> at.thinnestPadMm();
            case DISCS -> at.discMm();
            case SHOES -> at.valueMm(at.lining());
            case DRUMS -> at.valueMm(Measure.DRUM_DIAMETER);
        };
    }

    private static Optional<Finding> heat(Axle axle, List<BrakeCorner> corners) {
        var read = corners.stream()
                .flatMap(at -> at.read(Measure.DISC_TEMPERATURE).stream())
                .sorted(Comparator.comparingDouble(Reading::value))
                .toList();
        if (read.size() < 2) {
            return Optional.empty();
        }
        var cool = read.getFirst();
        var hot = read.getLast();
        double differenceC = hot.value() - cool.value();
        var answer = AxleDrag.answer(differenceC);
        boolean even = answer == AxleDrag.Answer.EVEN;
        boolean drags = answer == AxleDrag.Answer.DRAGS;
        var atFault = atFault(at(corners, hot), at(corners, cool));
        return Optional.of(new Finding(
                        new Subject(Subject.Part.BRAKE_PAIR, null, null, null),
                        even ? Verdict.HOLDS : drags ? Verdict.SPENT : Verdict.RUNS_OUT,
                        new HeatTitle(axle, even),
                        even
                                ? new EvenlyWarm(axle)
                                : new OneIsHotter(
                                        where(hot),
                                        warm(hot),
                                        where(cool),
                                        warm(cool),
                                        drags,
                                        atFault,
                                        atFault == AtFault.COOL_DOES_TOO_LITTLE
                                                ? null
                                                : takes(at(corners, hot), differenceC)),
                        null,
                        null,
                        Math.clamp(1 - differenceC / AxleDrag.DRAGS_K, 0, 1),
                        read.stream()
                                .map(each -> new Evidence(where(each), warm(each), Evidence.howRead(each)))
                                .toList(),
                        HeatGround.SAME_AXLE)
                .todo(Todo.Action.REPAIR)
                .beforeLeaving());
    }

    /** At the usual speed of a drive so long that the discs grew no warmer: a shorter one means more. */
    private static @Nullable DragTakes takes(BrakeCorner hot, double differenceC) {
        var brake = hot.brake();
        var massKg = brake.details().discMassKg();
        var diameterMm = brake.details().discDiameterMm();
        var size = TyreSize.find(hot.vehicle().axle(hot.corner().axle()).tyreSize());
        if (!brake.hasDisc() || massKg == null || diameterMm == null || size.isEmpty()) {
            return null;
        }
        var body = DiscBody.castIron(massKg, diameterMm, brake.discNewMm() >= DiscBody.VENTED_FROM_MM);
        var drive = new DragDrive(DragDrive.USUAL_SPEED_KMH, null, size.get().rollingCircumferenceMm() / 1000);
        var drag = Drag.of(body, diameterMm, drive, differenceC);
        return new DragTakes(
                new Between(drag.forceN().least(), drag.forceN().most(), "N", 0),
                new Between(drag.kwhPer100Km().least(), drag.kwhPer100Km().most(), "kWh", 1),
                Amount.of(WAY_KM, "km"));
    }

    private static AtFault atFault(BrakeCorner hot, BrakeCorner cool) {
        boolean hotDrags = !BrakeRelease.signsOfDrag(hot).isEmpty();
        boolean coolIsIdle = !BrakeRelease.signsOfTooLittle(cool).isEmpty();
        return hotDrags && coolIsIdle
                ? AtFault.BOTH
                : hotDrags ? AtFault.HOT_DRAGS : coolIsIdle ? AtFault.COOL_DOES_TOO_LITTLE : AtFault.NOT_TOLD;
    }

    private static BrakeCorner at(List<BrakeCorner> corners, Reading reading) {
        return corners.stream()
                .filter(at -> at.corner() == reading.corner())
                .findFirst()
                .orElseThrow();
    }

    private static Corner where(Reading reading) {
        return Objects.requireNonNull(reading.corner());
    }

    private static Amount warm(Reading reading) {
        return Amount.of(reading.value(), "°C");
    }

    private static boolean isSpent(Finding finding, Pair pair, Axle axle) {
        var corner = finding.subject().corner();
        return finding.subject().part() == pair.part()
                && corner != null
                && corner.axle() == axle
                && finding.verdict().compareTo(Verdict.SPENT) >= 0;
    }

    /** It asks for no part before it was read again. */
    private static boolean isReadAgain(Finding finding) {
        var todo = finding.todo();
        return todo != null && todo.action() == Todo.Action.MEASURE_AGAIN;
    }

    private static Said shown(OptionalDouble thicknessMm) {
        return thicknessMm.isEmpty() ? Label.NOT_MEASURED : new Amount(thicknessMm.getAsDouble(), "mm", 1);
    }
}
