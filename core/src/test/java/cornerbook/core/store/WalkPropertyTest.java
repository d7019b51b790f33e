package cornerbook.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against every order and every way to part it that there is, tried one by one. */
class WalkPropertyTest {
    private static final double ROUNDING_M = 1e-9;

    private final Random random = new Random(20261130);

    private List<FloorPoint> stops(int count) {
        return IntStream.range(0, count)
                .mapToObj(each -> new FloorPoint(random.nextInt(41) - 20, random.nextInt(31)))
                .toList();
    }

    /** The shortest of all orders; each may go back to the door after any stop, and has to when its hands are full. */
    private static double tryAll(List<FloorPoint> left, FloorPoint at, int carried, int perRound) {
        if (left.isEmpty()) {
            return at.walkToM(FloorPoint.DOOR);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < left.size(); i++) {
            var rest = new ArrayList<>(left);
            var next = rest.remove(i);
            if (carried < perRound) {
                best = Math.min(best, at.walkToM(next) + tryAll(rest, next, carried + 1, perRound));
            }
            if (carried > 0) {
                best = Math.min(
                        best,
                        at.walkToM(FloorPoint.DOOR) + FloorPoint.DOOR.walkToM(next) + tryAll(rest, next, 1, perRound));
            }
        }
        return best;
    }

    @Test
    void aFewStopsAreTheShortestOfAllOrders() {
        for (int each = 0; each < 60; each++) {
            var stops = stops(1 + each % 6);
            int perRound = 1 + random.nextInt(6);
            var walk = Walk.of(stops, perRound);
            assertThat(walk.lengthM())
                    .as("%s, %s at once", stops, perRound)
                    .isCloseTo(tryAll(stops, FloorPoint.DOOR, 0, perRound), within(ROUNDING_M));
            assertThat(walk.isShortest()).isTrue();
            fetchesAll(walk, stops, perRound);
        }
    }

    /** What is done for many stops, done for so few that the shortest way is known. */
    @Test
    void theLongWayIsHardlyLongerAndItsBoundNeverAboveTheShortest() {
        double over = 0;
        for (int each = 0; each < 40; each++) {
            var stops = stops(9 + each % 4);
            int perRound = each % 2 == 0 ? 4 : 20;
            double shortest = Walk.of(stops, perRound).lengthM();
            var points = new ArrayList<>(List.of(FloorPoint.DOOR));
            points.addAll(stops);
            Distances distances = (from, to) -> points.get(from).walkToM(points.get(to));
            var walk = new LongWalk(stops.size(), distances, perRound).solve();
            fetchesAll(walk, stops, perRound);
            assertThat(walk.atLeastM()).as(stops.toString()).isLessThanOrEqualTo(shortest + ROUNDING_M);
            assertThat(walk.lengthM()).isGreaterThanOrEqualTo(shortest - ROUNDING_M);
            over = Math.max(over, walk.lengthM() / shortest);
        }
        assertThat(over).as("longest against the shortest").isLessThan(1.15);
    }

    private static void fetchesAll(Walk walk, List<FloorPoint> stops, int perRound) {
        assertThat(walk.rounds().stream().flatMap(List::stream))
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, stops.size()).boxed().toList());
        assertThat(walk.rounds()).allSatisfy(round -> assertThat(round).hasSizeBetween(1, perRound));
        double length = 0;
        for (var round : walk.rounds()) {
            var at = FloorPoint.DOOR;
            for (int stop : round) {
                length += at.walkToM(stops.get(stop));
                at = stops.get(stop);
            }
            length += at.walkToM(FloorPoint.DOOR);
        }
        assertThat(walk.lengthM()).isCloseTo(length, within(ROUNDING_M));
    }

    @Test
    void aDayOfManyCarsIsWalkedToo() {
        var stops = stops(120);
        fetchesAll(Walk.of(stops, 2), stops, 2);
        fetchesAll(Walk.of(stops, 500), stops, 500);
        assertThat(Walk.of(List.of(), 4).rounds()).isEmpty();
        assertThat(Walk.of(List.of(), 4).lengthM()).isZero();
        assertThatThrownBy(() -> Walk.of(stops, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theSameStopsGiveTheSameWay() {
        var stops = stops(40);
        assertThat(Walk.of(stops, 5)).isEqualTo(Walk.of(stops, 5));
    }
}
