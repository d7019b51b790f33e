package cornerbook.core.tread.learn;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.SlowingSlope;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.TreadScale;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How likely one wheel set's readings are: its readings taken apart into {@link GroovePart}s that are independent of each
 * other, and summed up once. Which parts depends on what was read together: all grooves of each tyre at each visit; both
 * shoulders or none; anything.
 */
final class SetLikelihood {
    private static final double[] SUM = scaled(Math.sqrt(3), 1, 1, 1);
    private static final double[] SHOULDERS = scaled(Math.sqrt(2), 1, 0, 1);
    private static final double[] BETWEEN_SHOULDERS = scaled(Math.sqrt(2), 1, 0, -1);
    private static final double[] AGAINST_CENTRE = scaled(Math.sqrt(6), 1, -2, 1);

    private final WearHistory history;
    private final List<PartSums> parts;
    private final double[] bendSlopes;

    /** What was read of one tyre at one visit, groove by groove. */
    private static final class Look {
        private final int visit;
        private final int tyre;
        private final Map<Spot, List<TreadReading>> byGroove = new EnumMap<>(Spot.class);

        private Look(int visit, int tyre) {
            this.visit = visit;
            this.tyre = tyre;
        }

        /** Whether it has one reading of each of these grooves and they ran alike. */
        boolean hasTogether(Spot... grooves) {
            CornerDistances run = null;
            for (var groove : grooves) {
                var of = byGroove.getOrDefault(groove, List.of());
                if (of.size() != 1 || (run != null && !run.equals(of.getFirst().run()))) {
                    return false;
                }
                run = of.getFirst().run();
            }
            return true;
        }

        boolean hasNone(Spot... grooves) {
            for (var groove : grooves) {
                if (byGroove.containsKey(groove)) {
                    return false;
                }
            }
            return true;
        }
    }

    /** The tyres and seasons of a set, and its values part by part. */
    private static final class Parts {
        private final Map<GroovePart, List<PartSums.Value>> values = new EnumMap<>(GroovePart.class);
        private final WearHistory history;
        private final List<Integer> tyres;

        private Parts(WearHistory history) {
            this.history = history;
            tyres = history.readings().stream()
                    .map(TreadReading::tyre)
                    .distinct()
                    .sorted()
                    .toList();
        }

        /** One value of a part, for each copy the grooves of a look in a proportion of theirs. */
        void add(GroovePart part, int value, Look look, List<TreadReading> readings, double[]... proportions) {
            var depthMm = new ArrayList<Double>();
            var bendMm = new ArrayList<Double>();
            for (var proportion : proportions) {
                double depth = 0;
                double bend = 0;
                for (var reading : readings) {
                    double newMm = history.newDepths().get(reading.tyre()).depthMm();
                    double share = proportion[reading.groove().ordinal()];
                    depth += share * (reading.depthMm() - newMm);
                    bend += share * TreadScale.bend(reading.depthMm(), newMm);
                }
                depthMm.add(depth);
                bendMm.add(bend);
            }
            values.computeIfAbsent(part, key -> new ArrayList<>())
                    .add(new PartSums.Value(
                            look.visit,
                            value,
                            tyres.indexOf(look.tyre),
                            readings.getFirst().run(),
                            depthMm,
                            bendMm));
        }

        List<PartSums> sums(WearParameters proportions) {
            var newDepths = tyres.stream().map(history.newDepths()::get).toList();
            var seasons = history.readings().stream()
                    .flatMap(reading -> reading.run().legs().stream())
                    .map(CornerDistances.Leg::season)
                    .distinct()
                    .sorted()
                    .toList();
            var shares = new double[PartPrior.CORNERS];
            for (var corner : Corner.values()) {
                shares[corner.ordinal()] = proportions.share(corner.axle());
            }
            return values.entrySet().stream()
                    .map(entry -> new PartSums(entry.getKey(), newDepths, seasons, shares, entry.getValue()))
                    .toList();
        }
    }

    /**
     * Takes a set apart.
     *
     * @param proportions whose mean rates say how what a season adds is spread over the corners
     * @throws IllegalArgumentException when a reading names a tyre that is not there
     */
    SetLikelihood(WearHistory history, WearParameters proportions) {
        this.history = history;
        int readings = history.readings().size();
        bendSlopes = new double[readings];
        var byVisit = new TreeMap<Integer, TreeMap<Integer, Look>>();
        for (int i = 0; i < readings; i++) {
            var reading = history.readings().get(i);
            if (reading.tyre() >= history.newDepths().size()) {
                throw new IllegalArgumentException("reading of tyre " + reading.tyre() + ", expected 0 to "
                        + (history.newDepths().size() - 1));
            }
            byVisit.computeIfAbsent(reading.visit(), visit -> new TreeMap<>())
                    .computeIfAbsent(reading.tyre(), tyre -> new Look(reading.visit(), tyre))
                    .byGroove
                    .computeIfAbsent(reading.groove(), groove -> new ArrayList<>())
                    .add(reading);
            bendSlopes[i] = TreadScale.bendSlope(
                    reading.depthMm(), history.newDepths().get(reading.tyre()).depthMm());
        }
        var looks = byVisit.values().stream()
                .flatMap(ofVisit -> ofVisit.values().stream())
                .toList();
        parts = parts(history, looks).sums(proportions);
    }

    private static Parts parts(WearHistory history, List<Look> looks) {
        var parts = new Parts(history);
        if (looks.stream().allMatch(look -> look.hasTogether(Spot.values()))) {
            for (var look : looks) {
                var all = all(look, Spot.values());
                parts.add(GroovePart.SUM, 0, look, all, SUM);
                parts.add(GroovePart.DIFFERENCE, 0, look, all, BETWEEN_SHOULDERS, AGAINST_CENTRE);
            }
            return parts;
        }
        boolean inPairs = looks.stream()
                .allMatch(look -> look.hasTogether(Spot.INNER, Spot.OUTER) || look.hasNone(Spot.INNER, Spot.OUTER));
        boolean shoulders = looks.stream().anyMatch(look -> !look.hasNone(Spot.INNER, Spot.OUTER));
        if (inPairs && shoulders) {
            boolean centre = looks.stream().anyMatch(look -> !look.hasNone(Spot.CENTRE));
            for (var look : looks) {
                if (look.hasTogether(Spot.INNER, Spot.OUTER)) {
                    var pair = all(look, Spot.INNER, Spot.OUTER);
                    var part = centre ? GroovePart.CENTRE_WITH_SHOULDERS : GroovePart.SHOULDERS;
                    parts.add(part, part.size() - 1, look, pair, SHOULDERS);
                    parts.add(GroovePart.DIFFERENCE, 0, look, pair, BETWEEN_SHOULDERS);
                }
                addEach(parts, GroovePart.CENTRE_WITH_SHOULDERS, look, List.of(Spot.CENTRE));
            }
            return parts;
        }
        var grooves = List.of(Spot.values()).stream()
                .filter(groove -> looks.stream().anyMatch(look -> !look.hasNone(groove)))
                .toList();
        var part = switch (grooves.size()) {
            case 1 -> GroovePart.ONE;
            case 2 -> GroovePart.TWO;
            default -> GroovePart.THREE;
        };
        looks.forEach(look -> addEach(parts, part, look, grooves));
        return parts;
    }

    /** Each reading as one value. */
    private static void addEach(Parts parts, GroovePart part, Look look, List<Spot> grooves) {
        for (int value = 0; value < grooves.size(); value++) {
            var itself = new double[Spot.values().length];
            itself[grooves.get(value).ordinal()] = 1;
            for (var reading : look.byGroove.getOrDefault(grooves.get(value), List.of())) {
                parts.add(part, value, look, List.of(reading), itself);
            }
        }
    }

    private static List<TreadReading> all(Look look, Spot... grooves) {
        var all = new ArrayList<TreadReading>();
        for (var groove : grooves) {
            all.addAll(look.byGroove.getOrDefault(groove, List.of()));
        }
        return all;
    }

    private static double[] scaled(double length, double inner, double centre, double outer) {
        var proportions = new double[Spot.values().length];
        proportions[Spot.INNER.ordinal()] = inner / length;
        proportions[Spot.CENTRE.ordinal()] = centre / length;
        proportions[Spot.OUTER.ordinal()] = outer / length;
        return proportions;
    }

    List<PartSums> parts() {
        return parts;
    }

    int readings() {
        return bendSlopes.length;
    }

    /** Null when its tyres are of several models. */
    @Nullable
    String tyreModel() {
        return history.tyreModel();
    }

    /** Whether the depth of all its tyres is known from when they were new. */
    boolean cameNew() {
        return history.newDepths().stream().allMatch(NewDepth::known);
    }

    String car() {
        return history.car();
    }

    double slowingSlope(SlowingSlope slope) {
        return slope.of(history);
    }

    /** Slope of the bend at each reading. */
    double[] bendSlopes() {
        return bendSlopes;
    }
}
