package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.PlanRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/** The optimum straight from its definition: each of the 24^S sequences, 120^S of five wheels, is driven season by season. */
final class EverySequence {
    /** By number of wheels: place of each wheel, the corners by their ordinal and 4 for the spare. */
    private static final Map<Integer, List<List<Integer>>> ASSIGNMENTS = Map.of(4, assignments(4), 5, assignments(5));

    private static final int SPARE = 4;

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
    static Optional<Outcome> drive(PlanRequest request, List<List<Integer>> placesBySeason) {
        double thousandKm = 0;
        int moves = 0;
        int wheels = request.wheels().size();
        var depths = new double[wheels][];
        for (int i = 0; i < wheels; i++) {
            depths[i] = request.wheels().get(i).depthsMm().stream()
                    .mapToDouble(depth -> depth - request.limitMm())
                    .toArray();
        }
        for (int s = 0; s < placesBySeason.size(); s++) {
            var corners = placesBySeason.get(s);
            moves += s == 0 ? firstMoves(request, corners) : movesBetween(placesBySeason.get(s - 1), corners);
            if (!standsRight(request, corners) || !keeps(request, corners, depths, true)) {
                return Optional.empty();
            }
            double reach = Double.POSITIVE_INFINITY;
            for (int i = 0; i < wheels; i++) {
                for (int g = 0; g < depths[i].length && corners.get(i) != SPARE; g++) {
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

    /** The same sequences cut off after some seasons, with what they leave of each wheel: those that stay whole within the rules. */
    static Map<List<List<Integer>>, double[][]> before(PlanRequest request, int seasons) {
        var start = new double[request.wheels().size()][];
        for (int i = 0; i < start.length; i++) {
            start[i] = request.wheels().get(i).depthsMm().stream()
                    .mapToDouble(depth -> depth - request.limitMm())
                    .toArray();
        }
        var before = new HashMap<List<List<Integer>>, double[][]>();
        before.put(List.of(), start);
        for (int s = 0; s < seasons; s++) {
            var longer = new HashMap<List<List<Integer>>, double[][]>();
            for (var sequence : before.entrySet()) {
                for (var places : Objects.requireNonNull(ASSIGNMENTS.get(start.length))) {
                    double[][] worn = worn(
                            request,
                            places,
                            sequence.getValue(),
                            request.seasonsThousandKm().get(s));
                    if (standsRight(request, places)
                            && keeps(request, places, sequence.getValue(), true)
                            && keeps(request, places, worn, false)
                            && Arrays.stream(worn).allMatch(wheel -> least(wheel) >= -1e-9)) {
                        var more = new ArrayList<>(sequence.getKey());
                        more.add(places);
                        longer.put(List.copyOf(more), worn);
                    }
                }
            }
            before = longer;
        }
        return before;
    }

    private void extend() {
        var all = Objects.requireNonNull(ASSIGNMENTS.get(request.wheels().size()));
        if (choice.size() == request.seasonsThousandKm().size()) {
            drive(request, choice.stream().map(all::get).toList()).ifPresent(outcomes::add);
            return;
        }
        for (int a = 0; a < all.size(); a++) {
            choice.add(a);
            extend();
            choice.removeLast();
        }
    }

    private static boolean standsRight(PlanRequest request, List<Integer> corners) {
        for (int i = 0; i < request.wheels().size(); i++) {
            if (corners.get(i) == SPARE) {
                continue;
            }
            var corner = Corner.values()[corners.get(i)];
            var wheel = request.wheels().get(i);
            // Wheels that never ran start in the order of the list; nobody knows the side of a spare that never ran.
            var started = i == SPARE ? null : Corner.values()[i];
            var last = wheel.lastCorner() == null ? started : wheel.lastCorner();
            boolean sideKept = last != null && last.side() == corner.side();
            if (request.rules().directional() && wheel.directional() && !sideKept) {
                return false;
            }
            var size = request.sizeAt().get(corner.axle());
            if (request.rules().size() && size != null && !size.equals(wheel.tyreSize())) {
                return false;
            }
        }
        return true;
    }

    private static boolean keeps(PlanRequest request, List<Integer> corners, double[][] depths, boolean whenFitted) {
        var rules = request.rules();
        var at = new double[depths.length];
        var onCar = new double[4][];
        for (int i = 0; i < depths.length; i++) {
            at[corners.get(i)] = least(depths[i]);
            if (corners.get(i) != SPARE) {
                onCar[corners.get(i)] = depths[i];
            }
        }
        var sameAxle = rules.sameAxleMm();
        if (sameAxle != null
                && (Math.abs(at[0] - at[1]) > sameAxle + 1e-9 || Math.abs(at[2] - at[3]) > sameAxle + 1e-9)) {
            return false;
        }
        var allWheel = rules.allWheel();
        if (allWheel != null) {
            double difference = spread(onCar);
            double asLimited =
                    allWheel.kind() == AllWheelLimit.Kind.TREAD_DEPTH ? difference : difference * 2 * Math.PI;
            if (asLimited > allWheel.valueMm() + 1e-8) {
                return false;
            }
        }
        var frontDeeper = rules.frontDeeperMm();
        return !whenFitted || frontDeeper == null || (at[0] + at[1]) / 2 - (at[2] + at[3]) / 2 <= frontDeeper + 5e-10;
    }

    private static double[][] worn(PlanRequest request, List<Integer> corners, double[][] depths, double thousandKm) {
        var worn = new double[depths.length][];
        for (int i = 0; i < depths.length; i++) {
            worn[i] = depths[i].clone();
            for (int g = 0; g < worn[i].length; g++) {
                worn[i][g] -= thousandKm * rate(request, corners.get(i), g);
            }
        }
        return worn;
    }

    private static double rate(PlanRequest request, int place, int groove) {
        return place == SPARE ? 0 : request.rate(Corner.values()[place], groove);
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

    private static int firstMoves(PlanRequest request, List<Integer> places) {
        int moves = 0;
        for (int i = 0; i < places.size(); i++) {
            var last = request.wheels().get(i).lastCorner();
            boolean moved = i == SPARE ? places.get(i) != SPARE : last != null && last.ordinal() != places.get(i);
            moves += moved ? 1 : 0;
        }
        return moves;
    }

    private static int movesBetween(List<Integer> before, List<Integer> after) {
        int moves = 0;
        for (int i = 0; i < before.size(); i++) {
            moves += before.get(i).equals(after.get(i)) ? 0 : 1;
        }
        return moves;
    }

    private static List<List<Integer>> assignments(int wheels) {
        var all = new ArrayList<List<Integer>>();
        permute(new ArrayList<>(IntStream.range(0, wheels).boxed().toList()), 0, all);
        return all;
    }

    private static void permute(List<Integer> places, int from, List<List<Integer>> into) {
        if (from == places.size()) {
            into.add(List.copyOf(places));
            return;
        }
        for (int i = from; i < places.size(); i++) {
            Collections.swap(places, from, i);
            permute(places, from + 1, into);
            Collections.swap(places, from, i);
        }
    }
}
