package cornerbook.core.days.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.Wanted.Agreed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is offered is free: it is laid, and nothing that was agreed before slips. */
class OpeningsPropertyTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 10, 5);
    private static final int NOON = 12 * 60;

    private static List<Station> stations() {
        var hours = new TreeMap<>(Map.of(
                "Ada", WorkHours.parse("8:00-12:00, 12:30-16:30"),
                "Bo", WorkHours.parse("10:00-18:00")));
        return Station.of(MONDAY, hours, List.of("H-1", "H-2"), Map.of());
    }

    private static Wanted visit(String id, int minutes, @Nullable Integer start) {
        return new Wanted(id, minutes, MONDAY, null, Set.of(), Set.of(), new Agreed(MONDAY, start, null, null));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void whatIsTakenStaysTogetherWithAllThatWasAgreed(long seed) {
        var random = new Random(seed);
        var agreed = new ArrayList<Wanted>();
        for (int car = 0; car < 3; car++) {
            agreed.add(visit("car" + car, 30 + 15 * random.nextInt(5), 8 * 60 + 30 * random.nextInt(16)));
        }
        agreed.removeIf(each -> Board.of(stations(), agreed).slipped().containsKey(each.id()));
        var openings = Openings.beside(stations(), agreed, MONDAY, 0);
        for (var opening : openings.on(MONDAY, 90, Set.of())) {
            assertThat(opening.start() % 5).isZero();
            var with = new ArrayList<>(agreed);
            with.add(new Wanted(
                    "new",
                    90,
                    MONDAY,
                    null,
                    Set.of(),
                    Set.of(),
                    new Agreed(MONDAY, opening.start(), opening.station().person(), null)));
            assertThat(Board.of(stations(), with).slipped()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, NOON, 14 * 60})
    void nothingBeginsBeforeNow(int now) {
        assertThat(Openings.beside(stations(), List.of(), MONDAY, now).on(MONDAY, 60, Set.of()))
                .isNotEmpty()
                .allSatisfy(opening -> assertThat(opening.start()).isGreaterThanOrEqualTo(now));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 120, 240})
    void aDayHasRoomUntilItsShareIsTaken(int agreed) {
        var visits = agreed == 0 ? List.<Wanted>of() : List.of(visit("untimed", agreed, null));
        var openings = Openings.beside(stations(), visits, MONDAY.minusDays(1), 0);
        // Eight hours of each of the two, of which a quarter stays free: 720 minutes.
        assertThat(openings.hasRoom(MONDAY, 720 - agreed, 25)).isTrue();
        assertThat(openings.hasRoom(MONDAY, 721 - agreed, 25)).isFalse();
    }
}
