package cornerbook.core.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Published instances of TSPLIB 95 (Reinelt 1991) with the lengths of their shortest tours, and the distances as TSPLIB defines them. */
class WalkReferenceTest {
    private record City(double x, double y) {}

    private static List<City> cities(String name) {
        var file = Objects.requireNonNull(WalkReferenceTest.class.getResourceAsStream("/reference/store/tsplib.csv"));
        try (var reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .map(line -> line.split(",", -1))
                    .filter(line -> line[0].equals(name))
                    .map(line -> new City(Double.parseDouble(line[1]), Double.parseDouble(line[2])))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** TSPLIB 95, section 2.1: nint of the Euclidean distance. */
    private static Distances plane(List<City> cities) {
        return (from, to) -> Math.floor(Math.hypot(
                        cities.get(from).x() - cities.get(to).x(),
                        cities.get(from).y() - cities.get(to).y())
                + 0.5);
    }

    /** TSPLIB 95, section 2.3: degrees and minutes on a sphere, with its own value of pi. */
    private static Distances globe(List<City> cities) {
        return (from, to) -> {
            if (from == to) {
                return 0;
            }
            double q1 = Math.cos(
                    radians(cities.get(from).y()) - radians(cities.get(to).y()));
            double q2 = Math.cos(
                    radians(cities.get(from).x()) - radians(cities.get(to).x()));
            double q3 = Math.cos(
                    radians(cities.get(from).x()) + radians(cities.get(to).x()));
            return (int) (6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
        };
    }

    private static double radians(double degreesMinutes) {
        int degrees = (int) degreesMinutes;
        return 3.141592 * (degrees + 5 * (degreesMinutes - degrees) / 3) / 180;
    }

    @Test
    void sixteenStopsAreExact() {
        var walk = Walk.of(15, globe(cities("ulysses16")), 15);
        assertThat(walk.lengthM()).isEqualTo(6859);
        assertThat(walk.isShortest()).isTrue();
        assertThat(walk.rounds()).singleElement().satisfies(WalkReferenceTest::visitsAllOf15);
    }

    private static void visitsAllOf15(List<Integer> round) {
        assertThat(round)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.range(0, 15).boxed().toList());
    }

    /** The heuristic finds the shortest tours of both; its bound stays below them and comes within 2 in 100. */
    @Test
    void longerWaysReachTheKnownShortest() {
        assertThat(reached("berlin52", 7542)).isEqualTo(7542);
        assertThat(reached("st70", 675)).isEqualTo(675);
    }

    private static double reached(String name, double shortest) {
        var cities = cities(name);
        var walk = Walk.of(cities.size() - 1, plane(cities), cities.size());
        assertThat(walk.rounds().getFirst()).hasSize(cities.size() - 1).doesNotHaveDuplicates();
        assertThat(walk.atLeastM()).as("bound of " + name).isBetween(0.98 * shortest, shortest);
        return walk.lengthM();
    }
}
