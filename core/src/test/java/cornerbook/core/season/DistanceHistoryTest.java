package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DistanceHistoryTest {
    /**
     * By hand from 40 km, 15 km between cars, 8 km between seasons: s² = log(1 + 0.140625) = 0.131576, τ² = log 1.04 =
     * 0.0392207; one season's share is (1/τ²) / (1/s² + 1/τ²) = 25.4967 / (7.60017 + 25.4967) = 0.77036, two are
     * 50.9934 / 58.5936 = 0.87029, four 101.987 / 109.587 = 0.93065.
     */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0.77036", "2, 0.87029", "4, 0.93065"})
    void ownShareOfTheDefault(int seasons, double share) {
        assertThat(DistanceHistory.ownShare(seasons, DistancePrior.DEFAULT)).isCloseTo(share, within(1e-5));
    }

    /** The logarithm follows a prior whose own logarithm is higher by what is not the car's seasons'. */
    @ParameterizedTest
    @CsvSource({"1", "3"})
    void ownShareIsWhatThePriorDoesNotPull(int seasons) {
        var driven = List.of(31.0, 64.0, 40.0).subList(0, seasons);
        var usual = new DistancePrior(40, 15, 8, 0);
        // The same relative spreads about twice the distance.
        var twice = new DistancePrior(80, 30, 16, 0);

        double pull = (DistanceHistory.next(driven, twice).logMean()
                        - DistanceHistory.next(driven, usual).logMean())
                / Math.log(2);

        assertThat(DistanceHistory.ownShare(seasons, usual)).isCloseTo(1 - pull, within(1e-9));
    }
}
