package cornerbook.core.reread.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.reread.ReadTwice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The grooves of a car that were read at one visit and at a later one with no distance between: their wheel stood in the store. A
 * tread that is worn to nothing is left out, as it reads alike whoever reads it.
 */
public final class UnchangedGrooves {
    private UnchangedGrooves() {}

    /** Which readings are held against each other: of one set, at two visits, by these persons. */
    private record Occasion(String first, String second, String firstPerson, String secondPerson) {}

    private record Read(Visit visit, double runThousandKm, Reading reading) {
        String person(Map<String, String> atTablets) {
            return Objects.requireNonNullElse(
                    atTablets.get(reading.id()),
                    Objects.requireNonNullElse(visit.card().technician(), ""));
        }
    }

    /**
     * What was read twice. A reading of which no tablet tells who took it is that of the visit's technician.
     *
     * @param personOf who took a reading at a tablet, by its identity
     */
    public static List<ReadTwice> of(CarHistory history, Map<String, String> personOf) {
        var runs = new RunHistory(history, history.visits(), Knowledge.NONE);
        var last = new HashMap<String, Read>();
        Map<Occasion, List<Double>> differences = new LinkedHashMap<>();
        for (var visit : history.visits()) {
            for (var reading : new StandingReadings(visit).all(Measure.TREAD_DEPTH)) {
                var tag = reading.wheelTag();
                if (tag == null || reading.value() <= 0) {
                    continue;
                }
                var now = new Read(visit, runs.run(visit, tag).total(), reading);
                var before = last.put(tag + " " + reading.spot(), now);
                if (before != null && before.runThousandKm() == now.runThousandKm()) {
                    differences
                            .computeIfAbsent(
                                    new Occasion(
                                            before.visit().id(),
                                            visit.id(),
                                            before.person(personOf),
                                            now.person(personOf)),
                                    occasion -> new ArrayList<>())
                            .add(reading.value() - before.reading().value());
                }
            }
        }
        return differences.entrySet().stream()
                .map(entry -> new ReadTwice(
                        entry.getKey().firstPerson(), entry.getKey().secondPerson(), entry.getValue()))
                .toList();
    }
}
