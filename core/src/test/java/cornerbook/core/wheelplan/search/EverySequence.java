package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.PlanRequest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** The optimum straight from its definition: each of the 24^S sequences is driven season by season. */
final class EverySequence {
    private static final List<List<Corner>> ASSIGNMENTS = assignments();

    private final PlanRequest request;
    private final List<Outcome> outcomes = new ArrayList<>();
    private final List<Integer> choice = new ArrayList<>();

    private EverySequence(PlanRequest request) {
        this.request = request;
    }

    /** What a sequence comes to. */
    record Outcome(double thousandKm, double spreadMm, int moves) {}

    /** The best level by level, each with the band of the levels before; empty when no sequence keeps the rules. */
    static Optional<Outcome> best(PlanRequest request) {
        var outcomes = outcomes(request);
        if (outcomes.isEmpty()) {
            return Optional.empty();
        }
        double longest =
                outcomes.stream().mapToDouble(Outcome::thousandKm).max().orElseThrow();
        var long1 =
                outcomes.stream().filter(o -> o.thousandKm >= longest - 1e-3).toList();
        double even = long1.stream().mapToDouble(Outcome::spreadMm).min().orElseThrow();
        int moves = long1.stream()
                .filter(o -> o.spreadMm <= even + 0.01)
                .mapToInt(Outcome::moves)
                .min()
                .orElseThrow();
        return Optional.of(new Outcome(longest, even, moves));
    }

    /** What each sequence that keeps the rules comes to. */
    static List<Outcome> outcomes(PlanRequest request) {
        var every = new EverySequence(request);
        every.extend();
        return every.outcomes;
    }

    /** What these assignments come to, or empty when they break a rule. */
    static Optional<Outcome> drive(PlanRequest request, List<List<Corner>> cornersBySeason) {
        double thousandKm = 0;
        int moves = 0;
        var depths = new double[4][];
        for (int i = 0; i < 4; i++) {
            depths[i] = request.wheels().get(i).depthsMm().stream()
                    .mapToDouble(depth -> depth - request.limitMm())
                    .toArray();
        }
        for (int s = 0; s < cornersBySeason.size(); s++) {
            var corners = cornersBySeason.get(s);
            moves += s == 0 ? firstMoves(request, corners) : movesBetween(cornersBySeason.get(s - 1), corners);
            if (!standsRight(request, corners) || !keeps(request, corners, depths, true)) {
                return Optional.empty();
            }
            double reach = Double.POSITIVE_INFINITY;
            for (int i = 0; i < 4; i++) {
                for (int g = 0; g < depths[i].length; g++) {
                    reach = Math.min(reach, Math.max(0, depths[i][g]) / rate(request, corners.get(i), g));
                }
            }
            double season = request.seasonsThousandKm().get(s);
            boolean ends = reach < season || s == request.seasonsThousandKm().size() - 1;
            if (!keeps(request, corners, worn(request, corners, depths, Math.min(reach, season)), false)) {
                return Optional.empty();
            }
            if (ends) {
                double spread = spread(worn(request, corners, depths, reach));
                return Optional.of(new Outcome(thousandKm + reach, spread, moves));
            }
            thousandKm += season;
            depths = worn(request, corners, depths, season);
        }
        throw new IllegalArgumentException("the sequence is shorter than the set's life");
    }

    private void extend() {
        if (choice.size() == request.seasonsThousandKm().size()) {
            drive(request, choice.stream().map(ASSIGNMENTS::get).toList()).ifPresent(outcomes::add);
            return;
        }
        for (int a = 0; a < ASSIGNMENTS.size(); a++) {
            choice.add(a);
            extend();
            choice.removeLast();
        }
    }

    private static boolean standsRight(PlanRequest request, List<Corner> corners) {
        for (int i = 0; i < 4; i++) {
            var wheel = request.wheels().get(i);
            // Wheels that never ran start in the order of the list.
            var last = wheel.lastCorner() == null ? Corner.values()[i] : wheel.lastCorner();
            boolean sideKept = last.side() == corners.get(i).side();
            if (request.rules().directional() && wheel.directional() && !sideKept) {
                return false;
            }
            var size = request.sizeAt().get(corners.get(i).axle());
            if (request.rules().size() && size != null && !size.equals(wheel.tyreSize())) {
                return false;
            }
        }
        return true;
    }

    private static boolean keeps(PlanRequest request, List<Corner> corners, double[][] depths, boolean whenFitted) {
        var rules = request.rules();
        var at = new double[4];
        for (int i = 0; i < 4; i++) {
            at[corners.get(i).ordinal()] = least(depths[i]);
        }
        var sameAxle = rules.sameAxleMm();
        if (sameAxle != null
                && (Math.abs(at[0] - at[1]) > sameAxle + 1e-9 || Math.abs(at[2] - at[3]) > sameAxle + 1e-9)) {
            return false;
        }
        var allWheel = rules.allWheel();
        if (allWheel != null) {
            double difference = spread(depths);
            double asLimited =
                    allWheel.kind() == AllWheelLimit.Kind.TREAD_DEPTH ? difference : difference * 2 * Math.PI;
            if (asLimited > allWheel.valueMm() + 1e-8) {
                return false;
            }
        }
        var frontDeeper = rules.frontDeeperMm();
        return !whenFitted || frontDeeper == null || (at[0] + at[1]) / 2 - (at[2] + at[3]) / 2 <= frontDeeper + 5e-10;
    }

    private static double[][] worn(PlanRequest request, List<Corner> corners, double[][] depths, double thousandKm) {
        var worn = new double[4][];
        for (int i = 0; i < 4; i++) {
            worn[i] = depths[i].clone();
            for (int g = 0; g < worn[i].length; g++) {
                worn[i][g] -= thousandKm * rate(request, corners.get(i), g);
            }
        }
        return worn;
    }

    private static double rate(PlanRequest request, Corner corner, int groove) {
        return request.rate(corner, groove);
    }

    private static double least(double[] depths) {
        double least = Double.POSITIVE_INFINITY;
        for (double depth : depths) {
            least = Math.min(least, depth);
        }
        return least;
    }

    private static double spread(double[][] depths) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (var wheel : depths) {
            low = Math.min(low, least(wheel));
            high = Math.max(high, least(wheel));
        }
        return high - low;
    }

    private static int firstMoves(PlanRequest request, List<Corner> corners) {
        int moves = 0;
        for (int i = 0; i < 4; i++) {
            var last = request.wheels().get(i).lastCorner();
            moves += last == null || last == corners.get(i) ? 0 : 1;
        }
        return moves;
    }

    private static int movesBetween(List<Corner> before, List<Corner> after) {
        int moves = 0;
        for (int i = 0; i < 4; i++) {
            moves += before.get(i) == after.get(i) ? 0 : 1;
        }
        return moves;
    }

    private static List<List<Corner>> assignments() {
        var all = new ArrayList<List<Corner>>();
        permute(new ArrayList<>(List.of(Corner.values())), 0, all);
        return all;
    }

    private static void permute(List<Corner> corners, int from, List<List<Corner>> into) {
        if (from == corners.size()) {
            into.add(List.copyOf(corners));
            return;
        }
        for (int i = from; i < corners.size(); i++) {
            Collections.swap(corners, from, i);
            permute(corners, from + 1, into);
            Collections.swap(corners, from, i);
        }
    }
}
