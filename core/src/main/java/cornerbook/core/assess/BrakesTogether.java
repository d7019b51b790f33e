package cornerbook.core.assess;

import cornerbook.core.brake.fluid.judge.BrakeFluidFindings;
import cornerbook.core.brake.fluid.judge.FluidSaid;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.brake.judge.BrakePairFindings;
import cornerbook.core.brake.judge.BrakePairFindings.AtFault;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.say.Listed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Faults of the brakes that make each other worse. A brake that drags is a heater: it boils fluid that boils too early, and drives the
 * cracks of its own disc. With either of them it is unsafe, whatever each is alone. Common practice, no source.
 */
final class BrakesTogether {
    private BrakesTogether() {}

    static Optional<Finding> of(Case given, List<Finding> findings) {
        var drags = dragging(given, findings);
        var cracked = EnumSet.noneOf(Corner.class);
        Arrays.stream(Corner.values())
                .filter(corner -> isCracked(given, corner))
                .forEach(cracked::add);
        boolean boils = boilsTooEarly(given);
        if (drags.isEmpty() || (!boils && cracked.stream().noneMatch(drags::contains))) {
            return Optional.empty();
        }
        var parts = new ArrayList<AssessSaid>();
        if (!cracked.isEmpty()) {
            parts.add(new AssessSaid.CrackAt(Listed.and(List.copyOf(cracked))));
        }
        parts.add(new AssessSaid.DragAt(Listed.and(List.copyOf(drags))));
        if (boils) {
            parts.add(new AssessSaid.FluidBoilsTooEarly());
        }
        return Optional.of(new Finding(
                        new Subject(Subject.Part.BRAKES, null, null, null),
                        Verdict.UNSAFE,
                        new AssessSaid.TogetherTitle(Listed.and(parts)),
                        new AssessSaid.TogetherUnsafe(Listed.and(parts)),
                        null,
                        null,
                        0,
                        findings.stream()
                                .filter(finding -> finding.verdict().compareTo(Verdict.SPENT) >= 0)
                                .filter(finding -> finding.subject().part() == Subject.Part.BRAKE_RELEASE
                                        || finding.subject().part() == Subject.Part.DISC
                                        || finding.subject().part() == Subject.Part.DRUM)
                                .map(finding ->
                                        new Evidence(finding.subject().part(), finding.title(), finding.source()))
                                .toList(),
                        AssessSaid.TogetherGround.HEAT)
                .todo(Todo.Action.REPAIR));
    }

    /** Where the wheel is held by hand, the hose holds pressure, or the heat of the drive is told as drag. */
    private static Set<Corner> dragging(Case given, List<Finding> findings) {
        var drags = EnumSet.noneOf(Corner.class);
        for (var finding : findings) {
            if (finding.subject().part() == Subject.Part.BRAKE_RELEASE && finding.verdict() != Verdict.HOLDS) {
                drags.add(Objects.requireNonNull(finding.subject().corner()));
            }
            if (finding.plainWords() instanceof BrakePairFindings.OneIsHotter hotter
                    && hotter.drags()
                    && (hotter.atFault() == AtFault.HOT_DRAGS || hotter.atFault() == AtFault.BOTH)) {
                drags.add(hotter.hot());
            }
        }
        for (var corner : Corner.values()) {
            var at = at(given, corner);
            if (at.done(Measure.HOSE_HOLDS_PRESSURE) && !at.done(Measure.BRAKE_HOSE_REPLACED)) {
                drags.add(corner);
            }
        }
        return drags;
    }

    private static boolean isCracked(Case given, Corner corner) {
        var at = at(given, corner);
        return (at.place(Measure.DISC_CRACKS) > 0 && !at.done(Measure.DISC_REPLACED))
                || (at.place(Measure.DRUM_CRACKS) > 0 && !at.done(Measure.DRUM_REPLACED));
    }

    private static boolean boilsTooEarly(Case given) {
        return BrakeFluidFindings.judge(given).findings().stream()
                .anyMatch(finding -> finding.plainWords() instanceof Listed words
                        && words.items().stream().anyMatch(FluidSaid.TooWet.class::isInstance));
    }

    private static BrakeCorner at(Case given, Corner corner) {
        return new BrakeCorner(corner, given.vehicle(), given.readings());
    }
}
