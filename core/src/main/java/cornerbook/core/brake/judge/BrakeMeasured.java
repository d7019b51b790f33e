package cornerbook.core.brake.judge;

import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What was measured at the brake of one corner at one visit, beside what is new, what is least, and the visit before: what a
 * picture of it needs.
 *
 * @param pads outer first; a pad that was not read is left out
 * @param discMm where it is thinnest; null when it was not read
 * @param discPointsMm in their order around the disc, from stud 1; empty when only one value was written
 * @param padsReplaced at this visit: what was read is what came off
 * @param discReplaced the same for the disc
 */
public record BrakeMeasured(
        Corner corner,
        BrakeSpecification brake,
        List<Pad> pads,
        @Nullable Double discMm,
        List<Double> discPointsMm,
        boolean padsReplaced,
        boolean discReplaced) {
    public BrakeMeasured {
        pads = List.copyOf(pads);
        discPointsMm = List.copyOf(discPointsMm);
    }

    /**
     * One pad.
     *
     * @param leadingMm at the leading edge, or where it was read
     * @param trailingMm at the trailing edge; equal to the other when it was read at one place
     * @param beforeMm its thinnest at the last visit before at which it was read; new when it was replaced then; null when there is none
     */
    public record Pad(
            Spot side,
            double leadingMm,
            double trailingMm,
            @Nullable Double beforeMm) {
        public double thinnestMm() {
            return Math.min(leadingMm, trailingMm);
        }
    }

    /** Every corner at which a pad or the disc was read. */
    public static List<BrakeMeasured> of(CarHistory history, String visitId) {
        var visit = history.getVisit(visitId);
        var before = history.visits().subList(0, history.visits().indexOf(visit));
        return Arrays.stream(Corner.values())
                .map(corner -> of(corner, history.vehicle(), visit, before))
                .filter(measured -> measured.brake.hasDisc())
                .filter(measured -> !measured.pads.isEmpty() || measured.discMm != null)
                .toList();
    }

    private static BrakeMeasured of(Corner corner, Vehicle vehicle, Visit visit, List<Visit> before) {
        var at = new BrakeCorner(corner, vehicle, new StandingReadings(visit));
        var disc = at.discMm();
        return new BrakeMeasured(
                corner,
                at.brake(),
                BrakeCorner.SIDES.reversed().stream()
                        .filter(side -> at.padMm(side).isPresent())
                        .map(side -> pad(at, side, before))
                        .toList(),
                disc.isPresent() ? (Double) disc.getAsDouble() : null,
                at.discPoints().orElse(List.of()),
                at.done(Measure.PADS_REPLACED),
                at.done(Measure.DISC_REPLACED));
    }

    private static Pad pad(BrakeCorner at, Spot side, List<Visit> before) {
        double thinnestMm = at.padMm(side).orElseThrow();
        double leadingMm =
                at.read(Measure.PAD_THICKNESS, side).map(Reading::value).orElse(thinnestMm);
        double trailingMm = at.read(Measure.PAD_THICKNESS_TRAILING, side)
                .map(Reading::value)
                .orElse(leadingMm);
        return new Pad(side, leadingMm, trailingMm, beforeMm(at, side, before));
    }

    private static @Nullable Double beforeMm(BrakeCorner at, Spot side, List<Visit> before) {
        for (var visit : before.reversed()) {
            var then = new BrakeCorner(at.corner(), at.vehicle(), new StandingReadings(visit));
            OptionalDouble read = then.padMm(side);
            if (then.done(Measure.PADS_REPLACED)) {
                return then.brake().padNewMm();
            }
            if (read.isPresent()) {
                return read.getAsDouble();
            }
        }
        return null;
    }
}
