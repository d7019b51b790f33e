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
import java.util.List;
import java.util.Optional;

/**
 * When tyres are replaced, and whether two or four. Each option is one purchase at the start of one season: until then
 * the set follows its best plan; then the two tyres that stood on the axle, or all four, are new, and the rest of the
 * seasons are planned anew, to the proven optimum. All options are enumerated. Where the rules cannot be kept in all the
 * seasons left, the set ends with the last season in which they can.
 */
public final class ReplacementOptions {
    private static final double THOUSAND = 1000;

    private final PlanRequest request;
    private final double newDepthMm;
    private final double askedThousandKm;
    private final List<Replacement> options = new ArrayList<>();

    private ReplacementOptions(PlanRequest request, double newDepthMm) {
        this.request = request;
        this.newDepthMm = newDepthMm;
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
        var numbers = new SetNumbers(request);
        var plan = PlanSearch.bestWithinRules(request);
        add(Kind.NONE, 0, 0, request, plan);
        var before = plan.map(planned -> planned.sequence().assignments()).orElse(List.of());
        double reachThousandKm = end(request, plan);
        for (int season = 0; season < numbers.seasons; season++) {
            if (numbers.start[season] > reachThousandKm || season > before.size()) {
                break;
            }
            for (var kind : List.of(Kind.FRONT_PAIR, Kind.REAR_PAIR, Kind.ALL_FOUR)) {
                var renewed = renewed(numbers, before.subList(0, season), kind);
                add(kind, season + 1, numbers.start[season], renewed, PlanSearch.bestWithinRules(renewed));
            }
        }
        return List.copyOf(options);
    }

    private void add(Kind kind, int season, double start, PlanRequest rest, Optional<Planned> plan) {
        double thousandKm = start + end(rest, plan);
        int kept = plan.map(Planned::seasons).orElse(0);
        boolean rulesEnd = kept < rest.seasonsThousandKm().size() && endsByRules(rest, plan);
        options.add(new Replacement(
                kind,
                season,
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

    private PlanRequest renewed(SetNumbers numbers, List<Integer> before, Kind kind) {
        var wheels = new ArrayList<WheelState>();
        int stands = before.isEmpty() ? numbers.unmoved : before.getLast();
        for (int i = 0; i < Assignments.WHEELS; i++) {
            var wheel = request.wheels().get(i);
            var corner = Corner.values()[Assignments.corner(stands, i)];
            var depths = isNew(kind, corner.axle())
                    ? Collections.nCopies(numbers.grooves, newDepthMm)
                    : worn(wheel.depthsMm(), numbers, before, i);
            wheels.add(new WheelState(wheel.tag(), wheel.tyreSize(), wheel.directional(), depths, corner));
        }
        return new PlanRequest(
                wheels,
                request.ratesMmPer1000Km(),
                request.sizeAt(),
                request.limitMm(),
                request.seasonsThousandKm().subList(before.size(), numbers.seasons),
                request.rules());
    }

    private static boolean isNew(Kind kind, Axle axle) {
        return switch (kind) {
            case NONE -> false;
            case FRONT_PAIR -> axle == Axle.FRONT;
            case REAR_PAIR -> axle == Axle.REAR;
            case ALL_FOUR -> true;
        };
    }

    private static List<Double> worn(List<Double> depthsMm, SetNumbers numbers, List<Integer> before, int wheel) {
        var worn = new ArrayList<Double>();
        for (int g = 0; g < numbers.grooves; g++) {
            double depth = depthsMm.get(g);
            for (int s = 0; s < before.size(); s++) {
                depth -= numbers.season[s] * numbers.rate[Assignments.corner(before.get(s), wheel)][g];
            }
            worn.add(depth);
        }
        return worn;
    }

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }
}
