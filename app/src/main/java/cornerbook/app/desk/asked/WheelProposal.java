package cornerbook.app.desk.asked;

import cornerbook.app.desk.OpenVisit;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Said;
import cornerbook.core.wheelplan.judge.SetPlan;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

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
     */
    public record Fill(String setId, Said hint, Map<Corner, String> wheelAt) {
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

    /**
     * Those that are recorded, else the set that was read as it came out of the store, else the season's, else those that the car
     * came on.
     */
    public Fill standing() {
        var visit = open.visit();
        if (!visit.leftOn().isEmpty()) {
            return new Fill("", new AskedSaid.AsRecorded(), visit.leftOn());
        }
        return read().findFirst()
                .or(() -> assessor.goingOn(open.history(), visit.id()))
                .map(this::of)
                .filter(fill -> fill.wheelAt().size() == Corner.values().length)
                .map(fill -> new Fill("", fill.hint(), fill.wheelAt()))
                .orElseGet(() -> new Fill("", new AskedSaid.AsItCame(), visit.arrivedOn()));
    }

    /** The sets that were read as they came out of the store; none once it is recorded which wheels go on. */
    public List<Fill> readOutOfStore() {
        return open.visit().leftOn().isEmpty() ? read().map(this::of).toList() : List.of();
    }

    private Stream<WheelSet> storedSets() {
        var arrivedOn = open.visit().arrivedOn();
        return open.history().sets().stream()
                .filter(set -> set.wheels().stream().noneMatch(wheel -> arrivedOn.containsValue(wheel.tag())));
    }

    private Stream<WheelSet> read() {
        var readings = new StandingReadings(open.visit());
        return storedSets()
                .filter(set -> set.wheels().stream()
                        .anyMatch(wheel -> readings.ofWheel(Measure.TREAD_DEPTH, wheel.tag())
                                .isPresent()));
    }

    /** Each set of the car, by the identity of the set; planned once. */
    public Fill of(WheelSet set) {
        return fills.computeIfAbsent(set.id(), unused -> plan(set));
    }

    private Fill plan(WheelSet set) {
        var unmoved = unmoved(open.history(), set);
        var imagined = open.with(open.visit().withLeftOn(unmoved.wheelAt()));
        var plan = unmoved.wheelAt().size() < Corner.values().length
                ? Optional.<SetPlan>empty()
                : Judged.of(
                                "visit " + imagined.visit().id(),
                                () -> assessor.plan(
                                        imagined.history(), imagined.visit().id()))
                        .orElse(Optional.empty());
        return plan.map(made -> made.plan().wheelAt())
                .map(wheelAt -> new Fill(set.id(), new AskedSaid.AsPlanned(new SetOf(set.season())), wheelAt))
                .orElse(unmoved);
    }

    /** A set where it ran last; one that has never run stands in the order of its list. */
    public static Fill unmoved(CarHistory history, WheelSet set) {
        for (var visit : history.visits().reversed()) {
            for (var wheelAt : List.of(visit.leftOn(), visit.arrivedOn())) {
                if (wheelAt.size() == Corner.values().length
                        && wheelAt.values().stream()
                                .allMatch(tag -> set.wheels().stream()
                                        .anyMatch(wheel -> wheel.tag().equals(tag)))) {
                    return new Fill(set.id(), new AskedSaid.WhereItRan(new SetOf(set.season())), wheelAt);
                }
            }
        }
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        for (int i = 0; i < Math.min(set.wheels().size(), Corner.values().length); i++) {
            wheelAt.put(Corner.values()[i], set.wheels().get(i).tag());
        }
        return new Fill(set.id(), new AskedSaid.InItsOrder(new SetOf(set.season())), wheelAt);
    }
}
