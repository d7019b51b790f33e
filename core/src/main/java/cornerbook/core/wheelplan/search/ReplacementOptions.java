package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Replacement;
import cornerbook.core.wheelplan.Replacement.Kind;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.search.PlanSearch.Planned;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * When tyres are replaced, and whether one, two or four. Each option is one purchase at the start of one season. Of one now or next
 * season it is the longest distance that any way of moving the wheels before and after it gives, to the proven optimum: each state
 * that the season before can leave within the rules is followed by the best plan of the seasons left, unless a bound shows that it
 * cannot be longer. Before a later purchase the set follows its best plan. The set has to be whole until the purchase. Where the rules cannot be kept in all the seasons left, the set ends with the last season
 * in which they can.
 */
public final class ReplacementOptions {
    private static final double THOUSAND = 1000;

    private final PlanRequest request;
    private final SetNumbers numbers;
    private final double newDepthMm;
    private final double askedThousandKm;
    private final List<Replacement> options = new ArrayList<>();

    private ReplacementOptions(PlanRequest request, double newDepthMm) {
        this.request = request;
        this.newDepthMm = newDepthMm;
        numbers = new SetNumbers(request);
        askedThousandKm = sum(request.seasonsThousandKm());
    }

    /**
     * Every option, without new tyres first, then by season.
     *
     * @param newDepthMm depth of a new tyre in each groove, above the limit
     */
    public static List<Replacement> of(PlanRequest request, double newDepthMm) {
        if (!(newDepthMm > request.limitMm())) {
            throw new IllegalArgumentException("depth of a new tyre is %s mm, expected above the limit of %s mm"
                    .formatted(newDepthMm, request.limitMm()));
        }
        return new ReplacementOptions(request, newDepthMm).enumerate();
    }

    private List<Replacement> enumerate() {
        var plan = PlanSearch.bestWithinRules(request);
        add(Kind.NONE, 0, List.of(), 0, request, plan);
        var follows = plan.map(planned -> planned.sequence().assignments()).orElse(List.of());
        var along = SeasonsBefore.none(numbers);
        for (int season = 0; season < numbers.seasons && !along.isEmpty(); season++) {
            var before = season == 1 ? SeasonsBefore.none(numbers).next(0, numbers.allowed) : along;
            for (var kind : List.of(Kind.ONE_TYRE, Kind.FRONT_PAIR, Kind.REAR_PAIR, Kind.ALL_FOUR)) {
                buy(kind, season, before);
            }
            if (season >= follows.size()) {
                break;
            }
            if (season < numbers.seasons - 1) {
                along = along.next(season, follows.get(season));
            }
        }
        return List.copyOf(options);
    }

    /** The longest of all that the seasons before may leave; those that may get farthest are looked at first. */
    private void buy(Kind kind, int season, SeasonsBefore before) {
        var ways = before.states().stream()
                .flatMap(state -> renewed(state, kind).stream())
                .distinct()
                .map(wheels -> new Way(wheels, rest(wheels, season)))
                .sorted(Comparator.comparingDouble(Way::boundThousandKm).reversed())
                .toList();
        var best = ways.getFirst();
        var plan = PlanSearch.bestWithinRules(best.rest);
        for (var way : ways.subList(1, ways.size())) {
            double longest = end(best.rest, plan);
            if (way.boundThousandKm <= longest) {
                break;
            }
            var others = new SetNumbers(way.rest);
            if (!others.spent() && new Weighing(others).boundThousandKm() > longest) {
                var other = PlanSearch.bestWithinRules(way.rest);
                if (end(way.rest, other) > longest) {
                    best = way;
                    plan = other;
                }
            }
        }
        add(kind, season + 1, best.renewed.tags(), numbers.start[season], best.rest, plan);
    }

    private void add(Kind kind, int season, List<String> tags, double start, PlanRequest rest, Optional<Planned> plan) {
        double thousandKm = start + end(rest, plan);
        int kept = plan.map(Planned::seasons).orElse(0);
        boolean rulesEnd = kept < rest.seasonsThousandKm().size() && endsByRules(rest, plan);
        options.add(new Replacement(
                kind,
                season,
                tags,
                THOUSAND * thousandKm,
                THOUSAND * Math.min(thousandKm, askedThousandKm),
                thousandKm >= askedThousandKm,
                rulesEnd,
                rulesEnd ? PlanSearch.binding(rest.withSeasons(kept + 1)) : List.of()));
    }

    /** Until the tread ends the plan, or the seasons do that the rules can be kept for. */
    private static double end(PlanRequest rest, Optional<Planned> plan) {
        return plan.map(planned -> endsByRules(rest, plan)
                        ? sum(planned.request().seasonsThousandKm())
                        : planned.sequence().thousandKm())
                .orElse(0.0);
    }

    private static boolean endsByRules(PlanRequest rest, Optional<Planned> plan) {
        return plan.map(planned -> planned.seasons() < rest.seasonsThousandKm().size()
                        && planned.sequence().thousandKm()
                                >= sum(planned.request().seasonsThousandKm()))
                .orElse(true);
    }

    /** The sets that a purchase of the kind may make of what stands there. */
    private List<Renewed> renewed(SeasonsBefore.State state, Kind kind) {
        if (kind == Kind.ONE_TYRE) {
            return request.wheels().stream()
                    .map(WheelState::tag)
                    .map(tag -> renewed(state, List.of(tag)))
                    .toList();
        }
        var tags = new ArrayList<String>();
        for (var corner : Corner.values()) {
            if (isNew(kind, corner.axle())) {
                int wheel = Assignments.wheelAt(state.latest(), corner.ordinal());
                tags.add(request.wheels().get(wheel).tag());
            }
        }
        Collections.sort(tags);
        return List.of(renewed(state, tags));
    }

    private Renewed renewed(SeasonsBefore.State state, List<String> tags) {
        var wheels = new ArrayList<WheelState>();
        for (int i = 0; i < numbers.wheels; i++) {
            var wheel = request.wheels().get(i);
            var depths = tags.contains(wheel.tag())
                    ? Collections.nCopies(numbers.grooves, newDepthMm)
                    : state.depthsMm(i, request.limitMm());
            wheels.add(new WheelState(wheel.tag(), wheel.tyreSize(), wheel.directional(), depths, wheel.lastCorner()));
        }
        return new Renewed(wheels, tags);
    }

    private PlanRequest rest(Renewed renewed, int season) {
        return new PlanRequest(
                renewed.wheels,
                request.ratesMmPer1000Km(),
                request.sizeAt(),
                request.limitMm(),
                request.seasonsThousandKm().subList(season, numbers.seasons),
                request.rules());
    }

    private static boolean isNew(Kind kind, Axle axle) {
        return switch (kind) {
            case NONE, ONE_TYRE -> false;
            case FRONT_PAIR -> axle == Axle.FRONT;
            case REAR_PAIR -> axle == Axle.REAR;
            case ALL_FOUR -> true;
        };
    }

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Where each wheel ran last tells its side, and does not change the distance otherwise. */
    private record Renewed(List<WheelState> wheels, List<String> tags) {}

    /**
     * One way to come to the purchase.
     *
     * @param boundThousandKm no plan of the rest gets farther: all wheels together wear at each groove whoever stands where
     */
    private record Way(Renewed renewed, PlanRequest rest, double boundThousandKm) {
        Way(Renewed renewed, PlanRequest rest) {
            this(renewed, rest, bound(rest));
        }

        private static double bound(PlanRequest rest) {
            double bound = Double.POSITIVE_INFINITY;
            int grooves = rest.wheels().getFirst().depthsMm().size();
            for (int g = 0; g < grooves; g++) {
                double slackMm = 0;
                for (var wheel : rest.wheels()) {
                    slackMm += wheel.depthsMm().get(g) - rest.limitMm();
                }
                double rate = 0;
                for (var corner : Corner.values()) {
                    rate += rest.rate(corner, g);
                }
                bound = Math.min(bound, slackMm / rate);
            }
            return bound;
        }
    }
}
