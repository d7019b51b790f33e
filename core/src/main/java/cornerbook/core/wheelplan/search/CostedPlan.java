package cornerbook.core.wheelplan.search;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.RuleCost;
import cornerbook.core.wheelplan.search.PlanSearch.Sequence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The best sequence within the rules and what each of them costs.
 *
 * @param request that can be planned for all its seasons
 */
record CostedPlan(PlanRequest request, Sequence best, List<RuleCost> costs) {
    private static final double THOUSAND = 1000;
    private static final double WORTH_SAYING_KM = 1;
    /** It binds least often: where the best without it keeps it, and is shown to be by sequences that do, it costs nothing. */
    private static final Rule SELDOM_BINDS = Rule.ALL_WHEEL;

    CostedPlan {
        costs = List.copyOf(costs);
    }

    static Optional<CostedPlan> of(PlanRequest request) {
        if (!request.rules().kept().contains(SELDOM_BINDS)) {
            return PlanSearch.best(request).map(best -> new CostedPlan(request, best, costs(request, best)));
        }
        var without = PlanSearch.best(request.withRules(request.rules().without(SELDOM_BINDS)))
                .orElseThrow();
        var within = without.isBestWithin(request)
                ? Optional.of(without)
                : PlanSearch.best(request, without.bests().thousandKm());
        return within.map(best -> {
            var costs = costs(request, best);
            add(costs, SELDOM_BINDS, without.bests().thousandKm(), best);
            costs.sort(Comparator.comparing(RuleCost::rule));
            return new CostedPlan(request, best, costs);
        });
    }

    /** Of all rules but that which is looked at first. */
    private static List<RuleCost> costs(PlanRequest request, Sequence best) {
        var costs = new ArrayList<RuleCost>();
        for (var rule : request.rules().kept()) {
            var free = request.withRules(request.rules().without(rule));
            if (rule != SELDOM_BINDS && restricts(rule, request, free)) {
                PlanSearch.longestBeyond(free, best.thousandKm() + WORTH_SAYING_KM / THOUSAND)
                        .ifPresent(longest -> add(costs, rule, longest, best));
            }
        }
        return costs;
    }

    private static void add(List<RuleCost> costs, Rule rule, double longestThousandKm, Sequence best) {
        double costKm = THOUSAND * (longestThousandKm - best.thousandKm());
        if (costKm > WORTH_SAYING_KM) {
            costs.add(new RuleCost(rule, costKm));
        }
    }

    /** A rule of sides or sizes that bars no assignment costs nothing and is not searched without. */
    private static boolean restricts(Rule rule, PlanRequest request, PlanRequest free) {
        boolean onPlace = rule == Rule.DIRECTIONAL || rule == Rule.SIZE;
        return !onPlace || new SetNumbers(free).allowed.length > new SetNumbers(request).allowed.length;
    }
}
