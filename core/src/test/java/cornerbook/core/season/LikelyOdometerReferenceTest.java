package cornerbook.core.season;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.season.LikelyOdometer.Slip;
import java.util.ArrayList;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Each line of the table was worked by hand; the tablet's own module is held to the same lines. */
class LikelyOdometerReferenceTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/season/likely-odometers.csv", useHeadersInDisplayName = true)
    void whatWasLikelyMeant(
            double typed,
            double low,
            double high,
            @Nullable Double first,
            @Nullable Slip firstSlip,
            @Nullable Double second,
            @Nullable Slip secondSlip) {
        var expected = new ArrayList<LikelyOdometer>();
        if (first != null && firstSlip != null) {
            expected.add(new LikelyOdometer(firstSlip, first));
        }
        if (second != null && secondSlip != null) {
            expected.add(new LikelyOdometer(secondSlip, second));
        }
        assertThat(LikelyOdometer.of(typed, low, high)).isEqualTo(expected);
    }
}
