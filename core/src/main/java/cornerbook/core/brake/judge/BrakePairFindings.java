package cornerbook.core.brake.judge;

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
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an axle needs as a pair: pads, and discs, are replaced on both sides together, so that it brakes evenly (common practice, no
 * source); and after a drive its discs are as warm as each other, or one brake drags.
 */
public final class BrakePairFindings {
    /**
     * How far the discs of an axle may differ after a drive, 30 °F, and from where on one brake drags, 100 °F: technicians' training
     * library on thermal diagnosis of brakes. Which of the two is at fault, the temperatures alone do not tell.
     */
    private static final double EVENLY_WARM_C = 30 / 1.8;

    private static final double DRAGS_C = 100 / 1.8;

    private BrakePairFindings() {}

    record HeatTitle(Axle axle, boolean even) implements Said {}

    record EvenlyWarm(Axle axle) implements Said {}

    /** One disc of an axle that is warmer than the other; {@code drags} from where on that is no doubt. */
    public record OneIsHotter(Corner hot, Amount hotAt, Corner cool, Amount coolAt, boolean drags) implements Said {}

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
            due(axle, Pair.PADS, corners, worn).ifPresent(findings::add);
            due(axle, Pair.DISCS, corners, worn).ifPresent(findings::add);
            heat(axle, corners).ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> due(Axle axle, Pair pair, List<BrakeCorner> corners, List<Finding> worn) {
        var replaced = pair == Pair.PADS ? Measure.PADS_REPLACED : Measure.DISC_REPLACED;
        var spent = corners.stream()
                .map(BrakeCorner::corner)
                .filter(corner -> worn.stream().anyMatch(finding -> isSpent(finding, pair, corner)))
                .toList();
        var done = corners.stream().filter(at -> at.done(replaced)).toList();
        boolean half = done.size() == 1;
        if (spent.isEmpty() && !half) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                        new Subject(Subject.Part.BRAKE_PAIR, null, null, null),
                        Verdict.SPENT,
                        new BrakeSaid.ReplacePair(axle, pair),
                        half
                                ? new BrakeSaid.PairReplacedOnOneSide(
                                        axle, pair, done.getFirst().corner())
                                : new BrakeSaid.PairAskedFor(axle, pair, Listed.and(spent), spent.size()),
                        null,
                        null,
                        0,
                        corners.stream()
                                .map(at -> new Evidence(
                                        at.corner(),
                                        shown(pair == Pair.PADS ? at.thinnestPadMm() : at.discMm()),
                                        at.done(replaced) ? Ground.REPLACED_AT_THIS_VISIT : Ground.THINNEST_READING))
                                .toList(),
                        Ground.BOTH_SIDES_TOGETHER)
                .todo(Todo.Action.REPLACE_PAIR));
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
        boolean even = differenceC <= EVENLY_WARM_C;
        boolean drags = differenceC >= DRAGS_C;
        return Optional.of(new Finding(
                        new Subject(Subject.Part.BRAKE_PAIR, null, null, null),
                        even ? Verdict.HOLDS : drags ? Verdict.SPENT : Verdict.RUNS_OUT,
                        new HeatTitle(axle, even),
                        even
                                ? new EvenlyWarm(axle)
                                : new OneIsHotter(where(hot), warm(hot), where(cool), warm(cool), drags),
                        null,
                        null,
                        Math.clamp(1 - differenceC / DRAGS_C, 0, 1),
                        read.stream()
                                .map(each -> new Evidence(where(each), warm(each), Evidence.howRead(each)))
                                .toList(),
                        HeatGround.SAME_AXLE)
                .todo(Todo.Action.REPAIR));
    }

    private static Corner where(Reading reading) {
        return Objects.requireNonNull(reading.corner());
    }

    private static Amount warm(Reading reading) {
        return Amount.of(reading.value(), "°C");
    }

    private static boolean isSpent(Finding finding, Pair pair, Corner corner) {
        return finding.subject().part() == (pair == Pair.PADS ? Subject.Part.PAD : Subject.Part.DISC)
                && finding.subject().corner() == corner
                && finding.verdict().compareTo(Verdict.SPENT) >= 0;
    }

    private static Said shown(OptionalDouble thicknessMm) {
        return thicknessMm.isEmpty() ? Label.NOT_MEASURED : new Amount(thicknessMm.getAsDouble(), "mm", 1);
    }
}
