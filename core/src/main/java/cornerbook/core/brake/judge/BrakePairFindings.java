package cornerbook.core.brake.judge;

import cornerbook.core.brake.judge.BrakeSaid.Ground;
import cornerbook.core.brake.judge.BrakeSaid.Label;
import cornerbook.core.brake.judge.BrakeSaid.Pair;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an axle needs as a pair: pads, and discs, are replaced on both sides together, so that it brakes evenly. Common practice, no
 * source.
 */
public final class BrakePairFindings {
    private BrakePairFindings() {}

    /**
     * What differs between the two brakes of an axle.
     *
     * @param worn the findings on thickness, lining and cracks of the single corners; what a hand says of a movement does not wear
     *     a part out
     */
    public static List<Finding> of(Vehicle vehicle, StandingReadings readings, List<Finding> worn) {
        var findings = new ArrayList<Finding>();
        for (var axle : Axle.values()) {
            var corners = Arrays.stream(Corner.values())
                    .filter(corner -> corner.axle() == axle)
                    .map(corner -> new BrakeCorner(corner, vehicle, readings))
                    .toList();
            due(axle, Pair.PADS, corners, worn).ifPresent(findings::add);
            due(axle, Pair.DISCS, corners, worn).ifPresent(findings::add);
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
                Ground.BOTH_SIDES_TOGETHER));
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
