package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import cornerbook.core.reference.ReferenceLines;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against a random intercept fitted by R's lme4; script and versions lie in reference/season. */
class DistancePriorReferenceTest {
    @Test
    void learnsWhatLme4Fits() {
        var fit = ReferenceLines.numbers(
                ReferenceLines.of("season/distance-per-day-fit.csv").getLast());

        var learned = DistancePrior.learn(cars(), 0);

        assertThat(learned.meanKm()).isCloseTo(fit.get(0), withinPercentage(0.01));
        assertThat(learned.carSdKm()).isCloseTo(fit.get(1), withinPercentage(0.05));
        assertThat(learned.seasonSdKm()).isCloseTo(fit.get(2), withinPercentage(0.05));
        assertThat(learned.cars()).isEqualTo(60);
    }

    @Test
    void fewCarsStayNearTheDefaultAndNoneIsTheDefault() {
        assertThat(DistancePrior.learn(List.of(), 4)).isEqualTo(DistancePrior.DEFAULT);
        double free = DistancePrior.learn(cars().subList(0, 3), 0).meanKm();
        double pulled = DistancePrior.learn(cars().subList(0, 3), 4).meanKm();
        assertThat(Math.abs(pulled - DistancePrior.DEFAULT.meanKm()))
                .isLessThan(Math.abs(free - DistancePrior.DEFAULT.meanKm()));
    }

    private static List<List<Double>> cars() {
        return ReferenceLines.of("season/distance-per-day.csv").stream()
                .map(ReferenceLines::numbers)
                .toList();
    }
}
