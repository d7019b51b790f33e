package cornerbook.core.assess;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/**
 * A car on wheels of several sets has the same findings in whatever order its file names sets, wheels, corners and readings, and it
 * is told that they are mixed.
 */
class MixedSetsPropertyTest {
    private static final List<String> SETS = List.of("S-", "W-", "A-");

    @RepeatedTest(20)
    void theOrderOfTheFileDoesNotMatter(RepetitionInfo repetition) {
        var random = new Random(repetition.getCurrentRepetition());
        var wheelAt = mixed(random);
        var readings = new ArrayList<Reading>();
        wheelAt.forEach((corner, tag) -> {
            for (var spot : Spot.values()) {
                readings.add(Cars.reading(Measure.TREAD_DEPTH, corner, tag, spot, 1.4 + 6 * random.nextDouble()));
            }
        });
        var sets = List.of(
                Cars.set(SeasonKind.SUMMER, "S-"),
                Cars.set(SeasonKind.WINTER, "W-"),
                Cars.set(SeasonKind.ALL_SEASON, "A-"));
        var first = findings(sets, wheelAt, readings);
        assertThat(first)
                .filteredOn(finding -> finding.subject().part() == Subject.Part.TYRE_FITTING)
                .hasSize(1);
        assertThat(new Assessor(Cars.LIMITS).plan(car(sets, wheelAt, readings), "v"))
                .as("where wheels go that do not belong together")
                .isEmpty();
        for (int i = 0; i < 4; i++) {
            assertThat(findings(
                            shuffled(sets, random).stream()
                                    .map(set -> new WheelSet(
                                            set.id(), set.season(), set.storePlace(), shuffled(set.wheels(), random)))
                                    .toList(),
                            shuffled(wheelAt, random),
                            shuffled(readings, random)))
                    .isEqualTo(first);
        }
    }

    private static List<Finding> findings(List<WheelSet> sets, Map<Corner, String> wheelAt, List<Reading> readings) {
        return new Assessor(Cars.LIMITS).findings(car(sets, wheelAt, readings), "v");
    }

    private static CarHistory car(List<WheelSet> sets, Map<Corner, String> wheelAt, List<Reading> readings) {
        var visit = new Visit("v", Cars.AUTUMN, 48_000, wheelAt, wheelAt, readings);
        var car = Cars.history(visit);
        return new CarHistory(car.vehicle(), car.customer(), sets, List.of(visit));
    }

    private static Map<Corner, String> mixed(Random random) {
        while (true) {
            var wheelAt = new LinkedHashMap<Corner, String>();
            Stream.of(Corner.values())
                    .forEach(corner -> wheelAt.put(corner, SETS.get(random.nextInt(SETS.size())) + corner));
            if (wheelAt.values().stream().map(tag -> tag.charAt(0)).distinct().count() > 1) {
                return wheelAt;
            }
        }
    }

    private static <T> List<T> shuffled(List<T> list, Random random) {
        var shuffled = new ArrayList<>(list);
        Collections.shuffle(shuffled, random);
        return shuffled;
    }

    private static Map<Corner, String> shuffled(Map<Corner, String> wheelAt, Random random) {
        var shuffled = new LinkedHashMap<Corner, String>();
        shuffled(List.copyOf(wheelAt.keySet()), random).forEach(corner -> shuffled.put(corner, wheelAt.get(corner)));
        return shuffled;
    }
}
