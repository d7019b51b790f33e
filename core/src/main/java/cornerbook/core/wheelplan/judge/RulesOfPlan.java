package cornerbook.core.wheelplan.judge;

import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.wheelplan.AllWheelLimit;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.judge.PlannedRule.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Says what a plan made of each rule that concerns the set, in words and with its source. */
final class RulesOfPlan {
    private static final String SIDEWALL = "sidewall of the tyre";

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
            said.add(Rule.DIRECTIONAL, "Directional tyres stay on their side", SIDEWALL);
        }
        if (Set.copyOf(request.sizeAt().values()).size() > 1) {
            said.add(Rule.SIZE, "Each tyre size stays on its axle", SIDEWALL + ", and the placard");
        }
        said.add(
                Rule.SAME_AXLE,
                "The two tyres of an axle differ by at most %.1f mm"
                        .formatted(depth.sameAxle().limitMm()),
                depth.sameAxle().source());
        said.addAllWheel(vehicle, depth);
        var deeper = depth.deeperPair();
        if (deeper != null) {
            said.add(
                    Rule.DEEPER_PAIR_REAR,
                    deeper.limitMm() == 0
                            ? "The deeper pair goes to the rear"
                            : "The deeper pair goes to the rear when it is deeper by more than %.1f mm"
                                    .formatted(deeper.limitMm()),
                    deeper.source());
        }
        return said.rules;
    }

    private void addAllWheel(Vehicle vehicle, DepthRules depth) {
        var limit = depth.allWheel();
        if (limit != null) {
            add(
                    Rule.ALL_WHEEL,
                    "The four tyres differ by at most %.1f mm of %s, for all-wheel drive"
                            .formatted(limit.valueMm(), kind(limit)),
                    DepthRules.MANUFACTURER);
        } else if (vehicle.drive() == DriveLayout.ALL) {
            rules.add(new PlannedRule(
                    Rule.ALL_WHEEL,
                    "How far the four tyres may differ on this all-wheel drive is not known",
                    "look it up in the vehicle manufacturer's data, and note it with the car",
                    State.NOT_KNOWN));
        }
    }

    static String kind(AllWheelLimit limit) {
        return limit.kind() == AllWheelLimit.Kind.TREAD_DEPTH ? "tread depth" : "rolling circumference";
    }

    private void add(Rule rule, String words, String source) {
        var state =
                switchedOff.contains(rule) ? State.SWITCHED_OFF : leftOut.contains(rule) ? State.LEFT_OUT : State.KEPT;
        rules.add(new PlannedRule(rule, words, source, state));
    }
}
