package cornerbook.core.brake.disc.judge;

import cornerbook.core.brake.disc.HubAndDiscRunout;
import cornerbook.core.brake.disc.Runout;
import cornerbook.core.brake.disc.judge.DiscSaid.Label;
import cornerbook.core.brake.disc.judge.DiscSaid.Origin;
import cornerbook.core.brake.judge.BrakeCorner;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.finding.Evidence;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
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
        var fastener = at.vehicle().fastener();
        if (fastener == null) {
            return Optional.empty();
        }
        int studs = fastener.count();
        for (var measure : List.of(Measure.DISC_RUNOUT, Measure.DISC_RUNOUT_MOVED, Measure.HUB_RUNOUT)) {
            int first = firstStud(at, measure);
            if (first > studs) {
                notJudged.add(new DiscSaid.NoSuchStud(at.corner(), first, studs));
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
            notJudged.add(new DiscSaid.RunoutNotSplit(at.corner()));
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

    DiscSaid.Runout words() {
        int move = parts.bestMove();
        return new DiscSaid.Runout(
                origin(), move, parts.studs(), fine(parts.installed(move).totalMm()));
    }

    private Origin origin() {
        double hubMm = parts.hub().totalMm();
        double discMm = parts.disc().totalMm();
        return hubMm >= MOST * discMm ? Origin.HUB : discMm >= MOST * hubMm ? Origin.DISC : Origin.BOTH;
    }

    List<Evidence> evidence() {
        int move = parts.bestMove();
        return List.of(
                new Evidence(Label.HUB_PART, vector(parts.hub()), DiscSaid.Ground.FIRST_HARMONIC),
                new Evidence(Label.DISC_PART, vector(parts.disc()), DiscSaid.Ground.FIRST_HARMONIC),
                new Evidence(
                        Label.LEAST_RUNOUT,
                        new DiscSaid.MovedOn(fine(parts.installed(move).totalMm()), move),
                        new DiscSaid.OverPositions(parts.studs())));
    }

    private static Said vector(Runout runout) {
        return new DiscSaid.Vector(fine(runout.totalMm()), Amount.of(runout.highSpotDegrees(), ""));
    }

    private static Amount fine(double runoutMm) {
        return new Amount(runoutMm, "mm", 3);
    }
}
