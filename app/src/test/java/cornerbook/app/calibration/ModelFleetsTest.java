package cornerbook.app.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.corner.DriveLayout;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import cornerbook.core.tread.WearPrior;
import java.util.EnumMap;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The wear model against cars drawn from its own equation: that its algebra is right. */
class ModelFleetsTest {
    /** 99.9 % point of chi-square with 19 degrees of freedom (NIST/SEMATECH e-Handbook, table 1.3.6.7.4). */
    private static final double CHI_SQUARE_19 = 43.82;

    /** Truths that differ from the defaults and from each other; invented. */
    private static final List<WearParameters> TRUTHS = List.of(
            truth(0.20, 0.05, 0.20, 0.26, 0.19, 0.42, 0.10, 0.05, 0.03, 0.10),
            truth(0.10, 0.15, 0.40, 0.15, 0.11, 0.20, 0.25, 0.15, 0.01, 0.00),
            truth(0.25, 0.10, 0.15, 0.22, 0.22, 0.30, 0.05, 0.10, 0.02, -0.10));

    private static WearParameters truth(double... values) {
        var byParameter = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            byParameter.put(parameter, values[parameter.ordinal()]);
        }
        return new WearParameters(byParameter);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void ninetyPercentIntervalsHoldNineInTenAndTheHistogramIsFlat(int place) {
        var fleet = ModelFleets.ofFleet(
                2000,
                20_261_001L + place,
                TRUTHS.get(place),
                WearPrior.about(WearParameters.defaults(DriveLayout.ALL)));

        assertThat(fleet.calibration().coverage()).isBetween(0.88, 0.92);
        assertThat(ModelFleets.chiSquare(fleet.calibration().histogram(1))).isLessThan(CHI_SQUARE_19);
    }

    @Test
    void causesAreSeldomNamedWhereThereIsNone() {
        assertThat(FalseAlarms.share(2000, 7)).isLessThan(0.05);
    }
}
