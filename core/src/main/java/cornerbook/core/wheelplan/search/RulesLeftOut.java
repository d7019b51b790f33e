package cornerbook.core.wheelplan.search;

import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The same request with the fewest rules on depth left out that let at least its first season be planned. Sides and sizes
 * stay: they bind the wheels, not their wear.
 *
 * @param leftOut empty when all rules can be kept
 */
public record RulesLeftOut(PlanRequest request, List<Rule> leftOut) {
    private static final Set<Rule> ON_DEPTH = EnumSet.of(Rule.SAME_AXLE, Rule.ALL_WHEEL, Rule.DEEPER_PAIR_REAR);

    public RulesLeftOut {
        leftOut = List.copyOf(leftOut);
    }

    /**
     * The request that can be planned; empty when none can, whatever is left out.
     *
     * @param firstToGo among equally many, those are left out of which more stand here
     */
    public static Optional<RulesLeftOut> of(PlanRequest asked, Set<Rule> firstToGo) {
        return subsets(asked.rules().kept().stream().filter(ON_DEPTH::contains).toList()).stream()
                .sorted(Comparator.<List<Rule>>comparingInt(List::size)
                        .thenComparingLong(rules ->
                                -rules.stream().filter(firstToGo::contains).count()))
                .map(rules -> new RulesLeftOut(without(asked, rules), rules))
                .filter(left -> PlanSearch.canBePlanned(left.request.withSeasons(1)))
                .findFirst();
    }

    /** The plan of this request, which says that it was made without these rules; itself when there are none. */
    public WheelPlan toldIn(WheelPlan plan) {
        if (leftOut.isEmpty()) {
            return plan;
        }
        var said = new ArrayList<>(List.of(Reasons.leftOut(leftOut)));
        said.addAll(plan.reasons());
        return new WheelPlan(
                plan.wheelAt(),
                plan.seasons(),
                plan.distanceKm(),
                plan.distanceUnmovedKm(),
                plan.spreadMm(),
                plan.seasonsPlanned(),
                plan.lasts(),
                plan.gains(),
                plan.costs(),
                leftOut,
                said);
    }

    private static PlanRequest without(PlanRequest request, List<Rule> rules) {
        var kept = request.rules();
        for (var rule : rules) {
            kept = kept.without(rule);
        }
        return request.withRules(kept);
    }

    private static List<List<Rule>> subsets(List<Rule> rules) {
        var subsets = new ArrayList<>(List.of(List.<Rule>of()));
        for (var rule : rules) {
            for (var subset : List.copyOf(subsets)) {
                var larger = new ArrayList<>(subset);
                larger.add(rule);
                subsets.add(larger);
            }
        }
        return subsets;
    }
}
