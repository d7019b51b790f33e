package cornerbook.app.web;

import cornerbook.app.web.EntryPage.Fill;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.WheelSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which wheels a car may leave on: each set as its wheel plan has it, and what stands there until somebody chooses. */
final class WheelProposal {
    private final Assessor assessor;
    private final OpenVisit open;

    WheelProposal(Assessor assessor, OpenVisit open) {
        this.assessor = assessor;
        this.open = open;
    }

    /** Those that are recorded, else the plan for the season's set, else those that the car came on. */
    Fill standing() {
        var visit = open.visit();
        if (!visit.leftOn().isEmpty()) {
            return new Fill("", "Filled in as recorded.", visit.leftOn());
        }
        var plan = assessor.assess(open.history(), visit.id()).plan();
        if (plan == null) {
            return new Fill("", "Filled in with the wheels that it came on.", visit.arrivedOn());
        }
        return new Fill("", "Filled in " + planned(plan.wheelAt()), plan.wheelAt());
    }

    /** Each set of the car, by the identity of the set. */
    Fill of(WheelSet set) {
        var unmoved = lastCorners(set);
        var imagined = open.with(open.visit().withLeftOn(unmoved));
        var plan = unmoved.size() < Corner.values().length
                ? null
                : assessor.assess(imagined.history(), imagined.visit().id()).plan();
        return plan == null
                ? new Fill(set.id(), "Filled in where they ran before.", unmoved)
                : new Fill(set.id(), "Filled in " + planned(plan.wheelAt()), plan.wheelAt());
    }

    private String planned(Map<Corner, String> wheelAt) {
        return wheelAt.values().stream()
                .findFirst()
                .flatMap(open.history()::findSetOf)
                .map(set -> "as the wheel plan has the %s set."
                        .formatted(Words.season(set.season()).toLowerCase(java.util.Locale.ROOT)))
                .orElse("as the wheel plan has them.");
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
