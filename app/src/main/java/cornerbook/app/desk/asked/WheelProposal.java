package cornerbook.app.desk.asked;

import cornerbook.app.desk.OpenVisit;
import cornerbook.app.judge.Judged;
import cornerbook.app.request.Told;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.wheelplan.judge.SetPlan;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which wheels a car may leave on: each set as its wheel plan has it, and what stands there until somebody chooses. A set
 * whose plan faults stands where it ran before.
 */
public final class WheelProposal {
    /**
     * Wheels that may be filled in.
     *
     * @param setId the set that they belong to, empty when it is what stands there anyway
     * @param hint one sentence that says where they come from
     * @param byPlan whether the wheel plan put them there
     */
    public record Fill(String setId, String hint, Map<Corner, String> wheelAt, boolean byPlan) {
        public Fill {
            wheelAt = Map.copyOf(wheelAt);
        }

        public String at(Corner corner) {
            return wheelAt.getOrDefault(corner, "");
        }
    }

    private final Assessor assessor;
    private final OpenVisit open;
    private final Map<String, Fill> fills = new HashMap<>();

    public WheelProposal(Assessor assessor, OpenVisit open) {
        this.assessor = assessor;
        this.open = open;
    }

    /** Those that are recorded, else the plan for the season's set, else those that the car came on. */
    public Fill standing() {
        var visit = open.visit();
        if (!visit.leftOn().isEmpty()) {
            return new Fill("", hint("as-recorded"), visit.leftOn(), false);
        }
        return assessor.goingOn(open.history(), visit.id())
                .map(this::of)
                .filter(Fill::byPlan)
                .map(fill -> new Fill("", fill.hint(), fill.wheelAt(), true))
                .orElseGet(() -> new Fill("", hint("as-it-came"), visit.arrivedOn(), false));
    }

    /** Each set of the car, by the identity of the set; planned once. */
    public Fill of(WheelSet set) {
        return fills.computeIfAbsent(set.id(), unused -> plan(set));
    }

    private Fill plan(WheelSet set) {
        var unmoved = lastCorners(set);
        var imagined = open.with(open.visit().withLeftOn(unmoved));
        var plan = unmoved.size() < Corner.values().length
                ? Optional.<SetPlan>empty()
                : Judged.of(
                                "visit " + imagined.visit().id(),
                                () -> assessor.plan(
                                        imagined.history(), imagined.visit().id()))
                        .orElse(Optional.empty());
        return plan.map(made -> made.plan().wheelAt())
                .map(wheelAt -> new Fill(set.id(), hint("as-planned", "set", new SetOf(set.season())), wheelAt, true))
                .orElseGet(() -> new Fill(set.id(), hint("where-they-ran"), unmoved, false));
    }

    private static String hint(String key, Object... facts) {
        return Told.labels("app/desk/asked").of(key, facts);
    }

    private Map<Corner, String> lastCorners(WheelSet set) {
        for (var visit : open.history().visits().reversed()) {
            for (var wheelAt : List.of(visit.leftOn(), visit.arrivedOn())) {
                if (wheelAt.size() == Corner.values().length
                        && wheelAt.values().stream()
                                .allMatch(tag -> set.wheels().stream()
                                        .anyMatch(wheel -> wheel.tag().equals(tag)))) {
                    return wheelAt;
                }
            }
        }
        // A set that has never run stands in the order of its list.
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        for (int i = 0; i < Math.min(set.wheels().size(), Corner.values().length); i++) {
            wheelAt.put(Corner.values()[i], set.wheels().get(i).tag());
        }
        return wheelAt;
    }
}
