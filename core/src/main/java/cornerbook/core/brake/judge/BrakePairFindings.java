package cornerbook.core.brake.judge;

import cornerbook.core.say.Verbatim;

import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What an axle needs as a pair: pads, and discs, are replaced on both sides together, so that it brakes evenly. Common practice, no
 * source.
 */
public final class BrakePairFindings {
    private BrakePairFindings() {}

    /**
     * What differs between the two brakes of an axle.
     *
     * @param corners the findings of the single corners
     */
    public static List<Finding> of(Vehicle vehicle, StandingReadings readings, List<Finding> corners) {
        var findings = new ArrayList<Finding>();
        for (var axle : Axle.values()) {
            var pair = Arrays.stream(Corner.values())
                    .filter(corner -> corner.axle() == axle)
                    .map(corner -> new BrakeCorner(corner, vehicle, readings))
                    .toList();
            due(axle, "pads", Subject.Part.PAD, Measure.PADS_REPLACED, pair, corners)
                    .ifPresent(findings::add);
            due(axle, "discs with their pads", Subject.Part.DISC, Measure.DISC_REPLACED, pair, corners)
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private static Optional<Finding> due(
            Axle axle,
            String what,
            Subject.Part part,
            Measure replaced,
            List<BrakeCorner> pair,
            List<Finding> corners) {
        var spent = pair.stream()
                .filter(at -> corners.stream().anyMatch(finding -> isSpent(finding, part, at.corner())))
                .toList();
        var done = pair.stream().filter(at -> at.done(replaced)).toList();
        boolean half = done.size() == 1;
        if (spent.isEmpty() && !half) {
            return Optional.empty();
        }
        var name = axle.name().toLowerCase(Locale.ROOT);
        var because = half
                ? "they were replaced at %s only".formatted(done.getFirst().corner())
                : "%s %s for it"
                        .formatted(
                                spent.stream().map(at -> at.corner().name()).collect(Collectors.joining(" and ")),
                                spent.size() == 1 ? "asks" : "ask");
        return Optional.of(new Finding(
                new Subject(Subject.Part.BRAKE_PAIR, null, null, null),
                Verdict.SPENT,
                "%s axle: replace the %s on both sides".formatted(capital(name), what),
                "At the %s axle the brake %s have to be replaced on both sides together: %s."
                        .formatted(name, what, because),
                null,
                null,
                0,
                pair.stream()
                        .map(at -> new Evidence(
                                at.corner().name(),
                                part == Subject.Part.PAD
                                        ? shown(at.thinnestPadMm().orElse(Double.NaN))
                                        : shown(at.discMm().orElse(Double.NaN)),
                                at.done(replaced) ? "replaced at this visit" : "thinnest reading"))
                        .toList(),
                "both sides of an axle together: common practice, no source"));
    }

    /** By its thickness, its lining or its cracks: what a movement by hand says does not wear a part out. */
    private static boolean isSpent(Finding finding, Subject.Part part, Corner corner) {
        return finding.subject().part() == part
                && finding.subject().corner() == corner
                && finding.verdict().compareTo(Verdict.SPENT) >= 0
                && finding.evidence().stream()
                        .noneMatch(evidence -> evidence.what() instanceof Verbatim what && what.text().startsWith("by hand"));
    }

    private static String shown(double thicknessMm) {
        return Double.isNaN(thicknessMm) ? "not measured" : "%.1f mm".formatted(thicknessMm);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
