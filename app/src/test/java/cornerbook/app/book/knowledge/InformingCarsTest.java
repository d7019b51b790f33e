package cornerbook.app.book.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.knowledge.InformingCars.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Cars are invented. */
class InformingCarsTest {
    private static final Kind USUAL = new Kind("FRONT", "WINTER", "Isgrim Tapis 2");
    private static final Kind SUMMER = new Kind("FRONT", "SUMMER", "Velmora Brise 4");
    private static final Kind RARE = new Kind("ALL", "WINTER", "Isgrim Tapis 3");

    @Test
    void aBookThatIsNotLargeIsLearnedWhole() {
        var cars = cars(40, USUAL, SUMMER);
        assertThat(InformingCars.choose(cars, 40)).containsExactlyElementsOf(cars.keySet());
    }

    @Test
    void rareKindsStayWholeWhereCommonOnesAreMany() {
        var cars = cars(500, USUAL, SUMMER);
        IntStream.range(0, 7).forEach(number -> cars.put("rare-" + number, List.of(RARE)));
        var chosen = InformingCars.choose(cars, 50);
        assertThat(chosen).hasSize(57).filteredOn(id -> id.startsWith("rare")).hasSize(7);
        assertThat(chosen)
                .as("in the order of the book")
                .isSubsetOf(cars.keySet())
                .isSortedAccordingTo((one, other) -> Integer.compare(place(cars, one), place(cars, other)));
    }

    /** Ids that a shop gives one after the other: neither its first cars nor its last ones alone. */
    @Test
    void theyAreTakenFromAllYears() {
        var chosen = InformingCars.choose(cars(2000, USUAL), 200);
        for (int from = 0; from < 2000; from += 500) {
            int first = from;
            assertThat(chosen)
                    .filteredOn(id -> number(id) >= first && number(id) < first + 500)
                    .hasSizeBetween(30, 70);
        }
    }

    private static SequencedMap<String, List<Kind>> cars(int count, Kind... kinds) {
        var cars = new LinkedHashMap<String, List<Kind>>();
        IntStream.range(0, count).forEach(number -> cars.put("car-" + (10_000 + number), List.of(kinds)));
        return cars;
    }

    private static int number(String id) {
        return Integer.parseInt(id.replace("car-", "")) - 10_000;
    }

    private static int place(SequencedMap<String, List<Kind>> cars, String id) {
        return List.copyOf(cars.keySet()).indexOf(id);
    }
}
