package cornerbook.core.wheelplan;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds where each wheel of a set goes for the coming season. All 24 assignments are compared, so the choice is the
 * proven optimum: first the longest distance until the first groove reaches its limit,
 *
 * <pre>  K = min over wheels i at corner c and grooves g of (depth_ig − limit) / rate_cg  (thousand km)</pre>
 *
 * then the smallest spread of depth at that distance, then the fewest moves. Directional tyres stay on the side where
 * they ran; staggered sizes stay on their axle.
 */
public final class WheelPlanner {
    private static final double SAME_DISTANCE_KM = 1;
    private static final double SAME_SPREAD_MM = 0.01;

    private WheelPlanner() {}

    /**
     * The best assignment.
     *
     * @param wheels the four wheels
     * @param ratesMmPer1000Km wear rate by groove at each corner, grooves in the order of {@link WheelState#depthsMm}
     * @param sizeAt tyre size that each axle takes; an axle that is not named takes any
     * @return empty when no assignment keeps the rules
     */
    public static Optional<WheelPlan> plan(
            List<WheelState> wheels,
            Map<Corner, List<Double>> ratesMmPer1000Km,
            Map<Axle, String> sizeAt,
            double limitMm) {
        if (wheels.size() != Corner.values().length) {
            throw new IllegalArgumentException(wheels.size() + " wheels, expected 4");
        }
        var candidates = new ArrayList<Candidate>();
        collect(wheels, new EnumMap<>(Corner.class), ratesMmPer1000Km, sizeAt, limitMm, candidates);
        var best = candidates.stream()
                .filter(candidate -> candidate.reasonAgainst.isEmpty())
                .min(Comparator.comparingLong((Candidate c) -> -Math.round(c.distanceKm / SAME_DISTANCE_KM))
                        .thenComparingLong(c -> Math.round(c.spreadMm / SAME_SPREAD_MM))
                        .thenComparingInt(c -> c.moves));
        return best.map(chosen -> explain(chosen, candidates));
    }

    private static void collect(
            List<WheelState> left,
            Map<Corner, WheelState> placed,
            Map<Corner, List<Double>> rates,
            Map<Axle, String> sizeAt,
            double limitMm,
            List<Candidate> into) {
        if (left.isEmpty()) {
            into.add(Candidate.of(new EnumMap<>(placed), rates, sizeAt, limitMm));
            return;
        }
        var corner = Corner.values()[placed.size()];
        for (int i = 0; i < left.size(); i++) {
            var others = new ArrayList<>(left);
            placed.put(corner, others.remove(i));
            collect(others, placed, rates, sizeAt, limitMm, into);
            placed.remove(corner);
        }
    }

    private static WheelPlan explain(Candidate chosen, List<Candidate> candidates) {
        var unmoved =
                candidates.stream().min(Comparator.comparingInt(c -> c.moves)).orElseThrow();
        var reasons = new ArrayList<String>();
        double gainKm = chosen.distanceKm - unmoved.distanceKm;
        if (chosen.moves == 0) {
            reasons.add("No move lets the set run longer, so each wheel goes back to where it ran.");
        } else if (gainKm >= SAME_DISTANCE_KM) {
            reasons.add("The set runs about %,.0f km longer than with each wheel where it ran.".formatted(gainKm));
        } else {
            reasons.add("The set runs as far either way; this way its depths end closer together.");
        }
        candidates.stream()
                .filter(c -> !c.reasonAgainst.isEmpty() && c.distanceKm > chosen.distanceKm + SAME_DISTANCE_KM)
                .max(Comparator.comparingDouble(c -> c.distanceKm))
                .ifPresent(c -> reasons.add("%s: that costs about %,.0f km against the best free choice."
                        .formatted(c.reasonAgainst, c.distanceKm - chosen.distanceKm)));
        var tags = new EnumMap<Corner, String>(Corner.class);
        chosen.wheelAt.forEach((corner, wheel) -> tags.put(corner, wheel.tag()));
        return new WheelPlan(tags, Math.max(0, chosen.distanceKm), Math.max(0, unmoved.distanceKm), reasons);
    }

    private record Candidate(
            Map<Corner, WheelState> wheelAt, double distanceKm, double spreadMm, int moves, String reasonAgainst) {
        static Candidate of(
                Map<Corner, WheelState> wheelAt,
                Map<Corner, List<Double>> rates,
                Map<Axle, String> sizeAt,
                double limitMm) {
            double thousandKm = Double.POSITIVE_INFINITY;
            int moves = 0;
            var reason = "";
            for (var entry : wheelAt.entrySet()) {
                var wheel = entry.getValue();
                var corner = entry.getKey();
                for (int g = 0; g < wheel.depthsMm().size(); g++) {
                    double rate = rates.getOrDefault(corner, List.of()).get(g);
                    thousandKm = Math.min(thousandKm, (wheel.depthsMm().get(g) - limitMm) / rate);
                }
                var last = wheel.lastCorner();
                moves += last == corner ? 0 : 1;
                if (wheel.directional() && last != null && last.side() != corner.side()) {
                    reason = "Directional tyres stay on their side";
                }
                if (!sizeAt.getOrDefault(corner.axle(), wheel.tyreSize()).equals(wheel.tyreSize())) {
                    reason = "Each tyre size stays on its axle";
                }
            }
            return new Candidate(wheelAt, thousandKm * 1000, spread(wheelAt, rates, thousandKm), moves, reason);
        }

        private static double spread(
                Map<Corner, WheelState> wheelAt, Map<Corner, List<Double>> rates, double thousandKm) {
            double lowest = Double.POSITIVE_INFINITY;
            double highest = Double.NEGATIVE_INFINITY;
            for (var entry : wheelAt.entrySet()) {
                var depths = entry.getValue().depthsMm();
                double least = Double.POSITIVE_INFINITY;
                for (int g = 0; g < depths.size(); g++) {
                    double worn = thousandKm
                            * rates.getOrDefault(entry.getKey(), List.of()).get(g);
                    least = Math.min(least, depths.get(g) - worn);
                }
                lowest = Math.min(lowest, least);
                highest = Math.max(highest, least);
            }
            return highest - lowest;
        }
    }
}
