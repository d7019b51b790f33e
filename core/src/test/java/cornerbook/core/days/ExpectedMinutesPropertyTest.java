package cornerbook.core.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** What must hold of any clocked times. */
class ExpectedMinutesPropertyTest {
    private static final PlannedWork WORK = PlannedWork.WHEELS_AND_BRAKES;

    @Test
    void withoutAnyItIsWhatIsUsual() {
        for (var work : PlannedWork.values()) {
            var expected = ExpectedMinutes.of(work, List.of());
            assertThat(expected.usual()).isCloseTo(work.usualMinutes(), within(1e-9));
            assertThat(expected.nineInTen()).isGreaterThan(expected.usual() * 1.3);
        }
    }

    @Test
    void itLiesBetweenWhatIsUsualAndWhatWasClocked() {
        var random = new Random(20_261_130);
        for (int i = 0; i < 500; i++) {
            var clocked = draw(random, 1 + random.nextInt(60), 40 + random.nextInt(300), random.nextDouble());
            double logMean = clocked.stream().mapToDouble(Math::log).average().orElseThrow();
            double low = Math.min(Math.exp(logMean), WORK.usualMinutes());
            double high = Math.max(Math.exp(logMean), WORK.usualMinutes());
            var expected = ExpectedMinutes.of(WORK, clocked);
            assertThat(expected.usual()).isBetween(low - 1e-9, high + 1e-9);
            assertThat(expected.nineInTen()).isGreaterThan(expected.usual());
            Collections.shuffle(clocked, random);
            assertThat(ExpectedMinutes.of(WORK, clocked)).isEqualTo(expected);
        }
    }

    @Test
    void manyVisitsOutvoteWhatIsUsual() {
        var clocked = draw(new Random(7), 4000, 60, 0.2);
        var expected = ExpectedMinutes.of(WORK, clocked);
        assertThat(expected.usual()).isCloseTo(60, Percentage.withPercentage(2));
        var within = clocked.stream()
                .filter(minutes -> minutes <= expected.nineInTen())
                .count();
        assertThat(within / 4000.0).isCloseTo(0.9, within(0.02));
    }

    @Test
    void aCarThatWasLeftStandingIsNotCounted() {
        assertThat(ExpectedMinutes.of(WORK, List.of(100.0, 2.9, 601.0, 0.0, -4.0)))
                .isEqualTo(ExpectedMinutes.of(WORK, List.of(100.0)));
    }

    private static List<Double> draw(Random random, int count, double median, double spread) {
        var drawn = new ArrayList<Double>();
        while (drawn.size() < count) {
            double minutes = median * Math.exp(spread * random.nextGaussian());
            if (minutes >= ExpectedMinutes.SHORTEST && minutes <= ExpectedMinutes.LONGEST) {
                drawn.add(minutes);
            }
        }
        return drawn;
    }

    /** Nothing has begun: all of it is left. Twice as long as expected: it is not done at once. */
    @Test
    void whatIsLeftFallsAndIsNeverNothing() {
        var expected = ExpectedMinutes.of(WORK, List.of());
        assertThat(expected.left(90, 0)).isEqualTo(90);
        assertThat(expected.left(90, 1e-3)).isCloseTo(90, within(0.01));
        assertThat(expected.left(90, 60)).isBetween(30.0, 60.0);
        assertThat(expected.left(90, 90)).isBetween(15.0, 60.0);
        assertThat(expected.left(90, 180)).isBetween(15.0, 60.0);
        assertThat(expected.left(15, 10_000)).isEqualTo(expected.left(15, ExpectedMinutes.LONGEST));
        for (double elapsed = 0; elapsed < 1000; elapsed += 7) {
            assertThat(expected.left(90, elapsed)).isPositive().isFinite();
        }
    }
}
