package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class CredibleDistanceTest {
    private static final DistancePerDay NEW_TO_THE_BOOK = DistanceHistory.next(List.of(), DistancePrior.DEFAULT);

    @Test
    void aDigitTooManyIsBeyondItAndADailyDriveOrALongJourneyIsNot() {
        double halfAYear = CredibleDistance.mostKm(NEW_TO_THE_BOOK, 180);
        assertThat(382_000 - 31_000).isGreaterThan((int) halfAYear);
        assertThat(83_200 - 31_000).as("two digits that changed places").isGreaterThan((int) halfAYear);
        assertThat(180 * 80.0).isLessThan(halfAYear);
        assertThat(1_400.0).as("in two days").isLessThan(CredibleDistance.mostKm(NEW_TO_THE_BOOK, 2));
    }

    /** Against the quantile of a general library; three digits stand in the source. */
    @Test
    void onceInAThousandSeasonsRunsMore() {
        double quantile = new NormalDistribution().inverseCumulativeProbability(0.999);
        var expected = new DistancePerDay(40, 10);
        double perDay = CredibleDistance.mostKm(expected, 1) - CredibleDistance.mostKm(expected, 0);
        assertThat(perDay).isCloseTo(40 + 10 * quantile, within(0.01));
    }

    @Test
    void aCarThatRunsFarIsBelievedFarther() {
        var courier = DistanceHistory.next(List.of(230.0, 250.0), DistancePrior.DEFAULT);
        assertThat(CredibleDistance.mostKm(courier, 180))
                .isGreaterThan(2 * CredibleDistance.mostKm(NEW_TO_THE_BOOK, 180));
        assertThatThrownBy(() -> CredibleDistance.mostKm(courier, -1)).hasMessageContaining("expected 0 or more");
    }
}
