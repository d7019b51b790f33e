package cornerbook.core.wheelplan.judge;

import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.judge.DifferenceSaid.Ground;
import cornerbook.core.wheelplan.judge.PlannedRule.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Says what a plan made of each rule that concerns the set, in words and with its source. */
final class RulesOfPlan {
    private final List<Rule> leftOut;
    private final Set<Rule> switchedOff;
    private final List<PlannedRule> rules = new ArrayList<>();

    private RulesOfPlan(List<Rule> leftOut, Set<Rule> switchedOff) {
        this.leftOut = leftOut;
        this.switchedOff = switchedOff;
    }

    static List<PlannedRule> of(
            Vehicle vehicle, PlanRequest request, DepthRules depth, List<Rule> leftOut, Set<Rule> switchedOff) {
        var said = new RulesOfPlan(leftOut, switchedOff);
        if (request.wheels().stream().anyMatch(WheelState::directional)) {
            said.add(Rule.DIRECTIONAL, Rule.DIRECTIONAL, Ground.SIDEWALL);
        }
        if (Set.copyOf(request.sizeAt().values()).size() > 1) {
            said.add(Rule.SIZE, Rule.SIZE, Ground.SIDEWALL_AND_PLACARD);
        }
        said.add(
                Rule.SAME_AXLE,
                new DifferenceSaid.AxleDiffersAtMost(new Amount(depth.sameAxle().limitMm(), "mm", 1)),
                depth.sameAxle().source());
        said.addAllWheel(vehicle, depth);
        var deeper = depth.deeperPair();
        if (deeper != null) {
            said.add(
                    Rule.DEEPER_PAIR_REAR,
                    deeper.limitMm() == 0
                            ? DifferenceSaid.Plainly.DEEPER_PAIR_REAR
                            : new DifferenceSaid.DeeperPairRearBy(new Amount(deeper.limitMm(), "mm", 1)),
                    deeper.source());
        }
        return said.rules;
    }

    private void addAllWheel(Vehicle vehicle, DepthRules depth) {
        var limit = depth.allWheel();
        if (limit != null) {
            add(
                    Rule.ALL_WHEEL,
                    new DifferenceSaid.FourDifferAtMost(new Amount(limit.valueMm(), "mm", 1), limit.kind()),
                    Ground.MANUFACTURER);
        } else if (vehicle.drive() == DriveLayout.ALL) {
            rules.add(new PlannedRule(
                    Rule.ALL_WHEEL, DifferenceSaid.Plainly.ALL_WHEEL_NOT_KNOWN, Ground.LOOK_IT_UP, State.NOT_KNOWN));
        }
    }

    private void add(Rule rule, Said words, Said source) {
        var state =
                switchedOff.contains(rule) ? State.SWITCHED_OFF : leftOut.contains(rule) ? State.LEFT_OUT : State.KEPT;
        rules.add(new PlannedRule(rule, words, source, state));
    }
}
