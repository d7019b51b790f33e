package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Corner;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.RotationPattern;
import cornerbook.core.wheelplan.SeasonPlan;
import cornerbook.core.wheelplan.WearScenario;
import cornerbook.core.wheelplan.WheelPlan;
import cornerbook.core.wheelplan.search.PlanSearch.Sequence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Plans where each wheel of a set goes over its coming seasons: the proven best of all sequences of assignments. First
 * the longest distance until the first groove reaches its limit, the last assignment going on beyond the last season;
 * then, among those within 1 km of it, the smallest spread of the wheels' least grooves at that distance; then, among
 * those within 0.01 mm of that, the fewest moves. The rules are kept in each season that begins, when fitted and at its
 * end. Where they cannot be kept in all the seasons asked for, the plan is for as many as they can.
 *
 * <p>Wear is taken as linear in distance at a corner. Method and proof in docs/methods/wheelplan.md.
 */
public final class WheelPlanner {
    private static final double THOUSAND = 1000;

    private WheelPlanner() {}

    /**
     * The best plan.
     *
     * @param patterns customary patterns to compare with
     * @param scenarios draws of depths and rates for the gain's interval; where the interval of the gain over leaving the
     *     wheels includes 0 and the rules let them stay, they stay. Empty for none
     * @return empty when the rules cannot be kept even for the first season
     */
    public static Optional<WheelPlan> plan(
            PlanRequest request, List<RotationPattern> patterns, List<WearScenario> scenarios) {
        return PlanSearch.withinRules(request)
                .flatMap(CostedPlan::of)
                .map(planned -> explain(request, planned, patterns, scenarios));
    }

    private static WheelPlan explain(
            PlanRequest asked, CostedPlan planned, List<RotationPattern> patterns, List<WearScenario> scenarios) {
        var request = planned.request();
        var best = planned.best();
        var numbers = new SetNumbers(request);
        var gains = new Gains(request, best, scenarios);
        var unmoved = SequenceDrive.of(numbers, List.of(numbers.unmoved));
        var gain = gains.over(PlanReason.Plainly.WHEELS_LEFT, List.of(numbers.unmoved));
        var all = new ArrayList<>(List.of(gain));
        for (var pattern : patterns) {
            all.add(gains.over(pattern, SequenceDrive.repeated(numbers, pattern)));
        }
        var costs = planned.costs();
        boolean stays = unmoved.keepsRules()
                && best.moves() > 0
                && gain.interval() != null
                && gain.interval().includesZero();
        var chosen = stays
                ? new Sequence(
                        unmoved.driven(), best.bests(), unmoved.thousandKm(), unmoved.spreadMm(), unmoved.moves())
                : best;
        int seasons = request.seasonsThousandKm().size();
        var reasons = new ArrayList<Said>();
        boolean ranBefore = request.wheels().stream().anyMatch(wheel -> wheel.lastCorner() != null);
        reasons.add(Reasons.choice(best, gain, stays, ranBefore));
        if (!stays && best.moves() > 0 && numbers.firstMoves[best.assignments().getFirst()] == 0) {
            int first = 1;
            while (best.assignments().get(first).equals(best.assignments().getFirst())) {
                first++;
            }
            reasons.add(new PlanReason.MovesLater(first));
        }
        for (int i = 1; i < all.size(); i++) {
            reasons.add(Reasons.pattern(all.get(i)));
        }
        costs.forEach(cost -> reasons.add(Reasons.cost(cost)));
        if (seasons < asked.seasonsThousandKm().size()) {
            reasons.add(Reasons.rulesEnd(asked.withSeasons(seasons + 1), seasons));
        }
        var bySeason = seasonPlans(request, numbers, chosen);
        double askedKm = THOUSAND
                * asked.seasonsThousandKm().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum();
        return new WheelPlan(
                bySeason.getFirst().wheelAt(),
                bySeason,
                THOUSAND * chosen.thousandKm(),
                THOUSAND * unmoved.thousandKm(),
                chosen.spreadMm(),
                seasons,
                THOUSAND * chosen.thousandKm() >= askedKm,
                all,
                costs,
                List.of(),
                reasons);
    }

    private static List<SeasonPlan> seasonPlans(PlanRequest request, SetNumbers numbers, Sequence sequence) {
        var plans = new ArrayList<SeasonPlan>();
        @Nullable Integer before = null;
        for (int s = 0; s < sequence.assignments().size(); s++) {
            int assignment = sequence.assignments().get(s);
            int moves = before == null ? numbers.firstMoves[assignment] : Assignments.moves(before, assignment);
            plans.add(new SeasonPlan(tags(request, assignment), moves, THOUSAND * numbers.start[s]));
            before = assignment;
        }
        return plans;
    }

    private static Map<Corner, String> tags(PlanRequest request, int assignment) {
        var tags = new EnumMap<Corner, String>(Corner.class);
        Arrays.stream(Corner.values())
                .forEach(corner -> tags.put(
                        corner,
                        request.wheels()
                                .get(Assignments.wheelAt(assignment, corner.ordinal()))
                                .tag()));
        return tags;
    }
}
