package cornerbook.core.brake.disc.judge;

import cornerbook.core.say.Said;

import cornerbook.core.brake.disc.HubAndDiscRunout;
import cornerbook.core.brake.disc.Runout;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.finding.Evidence;
import java.util.List;
import java.util.Optional;

/** Which part of a runout is the hub's and which the disc's, and on which studs the disc would run truest. */
record RunoutSplit(BrakeCorner at, HubAndDiscRunout parts) {
    /** Twice as much as the other part: said to be the cause. Common practice, no source. */
    private static final double MOST = 2;

    /**
     * The parts, from two positions of the disc or else from the bare hub face; empty when neither was read, with a line in
     * {@code notJudged} when something of it was.
     */
    static Optional<RunoutSplit> of(BrakeCorner at, List<Said> notJudged) {
        int studs = at.vehicle().fastener().count();
        for (var measure : List.of(Measure.DISC_RUNOUT, Measure.DISC_RUNOUT_MOVED, Measure.HUB_RUNOUT)) {
            int first = firstStud(at, measure);
            if (first > studs) {
                notJudged.add(Said.verbatim("%s runout: its first reading is written at stud %d, expected 1 to %d"
                        .formatted(at.corner(), first, studs)));
                return Optional.empty();
            }
        }
        var installed = runout(at, Measure.DISC_RUNOUT, studs);
        var moved = runout(at, Measure.DISC_RUNOUT_MOVED, studs);
        var by = at.read(Measure.DISC_MOVED_BY);
        var hub = runout(at, Measure.HUB_RUNOUT, studs);
        if (installed.isPresent() && moved.isPresent() && by.isPresent()) {
            return Optional.of(new RunoutSplit(
                    at,
                    HubAndDiscRunout.fromTwoPositions(
                            installed.get(),
                            moved.get(),
                            (int) Math.round(by.get().value()),
                            studs)));
        }
        var hubRadius = at.read(Measure.HUB_DIAL_RADIUS);
        var discRadius = at.read(Measure.DISC_DIAL_RADIUS);
        if (installed.isPresent() && hub.isPresent() && hubRadius.isPresent() && discRadius.isPresent()) {
            return Optional.of(new RunoutSplit(
                    at,
                    HubAndDiscRunout.fromHubFace(
                            installed.get(),
                            hub.get(),
                            hubRadius.get().value(),
                            discRadius.get().value(),
                            studs)));
        }
        if (at.read(Measure.HUB_RUNOUT).isPresent()
                || at.read(Measure.DISC_RUNOUT_MOVED).isPresent()) {
            notJudged.add(Said.verbatim(
                    "%s runout: hub and disc apart, for that needs the dial at equal steps on the disc, and either on the hub with both radii or on the disc moved on by some studs"
                            .formatted(at.corner())));
        }
        return Optional.empty();
    }

    /** Angles count from stud 1, wherever the first reading was taken. */
    private static Optional<Runout> runout(BrakeCorner at, Measure measure, int studs) {
        return at.points(measure)
                .map(points -> Runout.ofEquallySpaced(points).turned(360.0 * (firstStud(at, measure) - 1) / studs));
    }

    private static int firstStud(BrakeCorner at, Measure measure) {
        return at.read(measure)
                .map(reading -> WrittenReading.firstStud(reading.asWritten()))
                .orElse(1);
    }

    String words() {
        double hubMm = parts.hub().totalMm();
        double discMm = parts.disc().totalMm();
        var where = hubMm >= MOST * discMm
                ? "Most of it comes from the hub face"
                : discMm >= MOST * hubMm ? "Most of it comes from the disc itself" : "Hub face and disc share in it";
        int move = parts.bestMove();
        return "%s; %s."
                .formatted(
                        where,
                        move == 0
                                ? "the disc stands on the best studs already"
                                : "moved on by %d of %d studs from its first place the disc would run out by %.3f mm"
                                        .formatted(
                                                move,
                                                parts.studs(),
                                                parts.installed(move).totalMm()));
    }

    List<Evidence> evidence() {
        var source = "first harmonic of the dial's readings; tilts add as vectors (docs/methods/brakes.md, disc)";
        return List.of(
                new Evidence("part of the hub", vector(parts.hub()), source),
                new Evidence("part of the disc", vector(parts.disc()), source),
                new Evidence(
                        "least runout",
                        "%.3f mm, moved on by %d studs"
                                .formatted(parts.installed(parts.bestMove()).totalMm(), parts.bestMove()),
                        "over all %d positions of the disc".formatted(parts.studs())));
    }

    private static String vector(Runout runout) {
        return "%.3f mm, high at %.0f° from stud 1".formatted(runout.totalMm(), runout.highSpotDegrees());
    }
}
