package cornerbook.core.wheelplan.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * For how many seasons the rules can be kept at all, whatever the distance: depth first, each N that leads nowhere once.
 * Where they can be kept, the first dive mostly shows it.
 */
final class RunWithinRules {
    private final SetNumbers numbers;
    private final CountLayout layout;
    private final int last;
    private final List<Set<Ran>> leadsNowhere = new ArrayList<>();
    private int most;

    private RunWithinRules(SetNumbers numbers) {
        this.numbers = numbers;
        last = numbers.seasons - 1;
        layout = new CountLayout(numbers, last);
        for (int season = 0; season <= last; season++) {
            leadsNowhere.add(new HashSet<>());
        }
    }

    /** The most seasons, all of them when a groove reaches its limit within the rules before; for a set that is not spent. */
    static int seasons(SetNumbers numbers) {
        if (!numbers.rulesOnDepth()) {
            return numbers.allowed.length == 0 ? 0 : numbers.seasons;
        }
        var run = new RunWithinRules(numbers);
        return run.canEnd(0, Ran.NOTHING, numbers.slackMm) ? numbers.seasons : run.most;
    }

    private boolean canEnd(int season, Ran ran, double[][] depthMm) {
        if (leadsNowhere.get(season).contains(ran)) {
            return false;
        }
        double[] least = SetNumbers.least(depthMm);
        for (int assignment : numbers.allowed) {
            if (numbers.mayFit(assignment, least) && endsUnder(assignment, season, ran, depthMm)) {
                return true;
            }
        }
        leadsNowhere.get(season).add(ran);
        return false;
    }

    private boolean endsUnder(int assignment, int season, Ran ran, double[][] depthMm) {
        double reach = numbers.reach(assignment, depthMm);
        double[][] worn = numbers.worn(assignment, depthMm, Math.min(reach, numbers.season[season]));
        if (!numbers.withinDifferences(assignment, SetNumbers.least(worn))) {
            return false;
        }
        if (season == last || reach < numbers.season[season]) {
            return true;
        }
        most = Math.max(most, season + 1);
        return canEnd(season + 1, ran.more(layout, layout.groupOf(season), assignment, numbers), worn);
    }
}
