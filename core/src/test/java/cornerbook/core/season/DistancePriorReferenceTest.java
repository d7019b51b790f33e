package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import cornerbook.core.reference.ReferenceLines;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against a random intercept fitted by R's lme4; script and versions lie in reference/season. */
class DistancePriorReferenceTest {
    private static final double START = 2;
    private static final double STEP = 40;

    @Test
    void learnsWhatLme4Fits() {
        var fit = ReferenceLines.numbers(
                ReferenceLines.of("season/distance-per-day-fit.csv").getLast());

        // What lme4 was given are here the logarithms, moved so that no season is below the least distance.
        var learned = DistancePrior.learn(
                cars().stream()
                        .map(car -> car.stream()
                                .map(x -> Math.exp(START + x / STEP))
                                .toList())
                        .toList(),
                0);

        assertThat((learned.logMean() - START) * STEP).isCloseTo(fit.get(0), withinPercentage(0.01));
        assertThat(Math.sqrt(learned.logCarVariance()) * STEP).isCloseTo(fit.get(1), withinPercentage(0.05));
        assertThat(Math.sqrt(learned.logSeasonVariance()) * STEP).isCloseTo(fit.get(2), withinPercentage(0.05));
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
