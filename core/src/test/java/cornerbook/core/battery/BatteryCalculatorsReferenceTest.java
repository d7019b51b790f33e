package cornerbook.core.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published tables and conversions; sources and tolerances stand in the files. */
class BatteryCalculatorsReferenceTest {
    private static final String FOLDER = "/reference/battery/";

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "rating-conversion.csv", numLinesToSkip = 1)
    void aRatingByAnotherStandard(
            double ratedA,
            RatingStandard from,
            RatingStandard to,
            double lowA,
            double highA,
            double toleranceA,
            String source) {
        var range = RatingConversion.of(ratedA, from, to);
        assertThat(range.lowA()).as(source).isCloseTo(lowA, within(toleranceA));
        assertThat(range.highA()).as(source).isCloseTo(highA, within(toleranceA));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "agm-rest-voltage.csv", numLinesToSkip = 1)
    void chargeOfAnAgmBattery(double volts, double charge, double tolerance, String source) {
        assertThat(RestVoltage.of(Chemistry.AGM, volts, 26.7, 24).stateOfCharge())
                .as(source)
                .isCloseTo(charge, within(tolerance));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "electrolyte-freezing.csv", numLinesToSkip = 1)
    void freezingPointOfTheAcid(double gravity, double freezesF, double toleranceF, String source) {
        assertThat(Electrolyte.freezesAtC(gravity) * 1.8 + 32).as(source).isCloseTo(freezesF, within(toleranceF));
    }

    @ParameterizedTest
    @CsvFileSource(resources = FOLDER + "electrolyte-gravity.csv", numLinesToSkip = 1)
    void gravityOfTheAcidByCharge(double charge, double lowest, double highest, String source) {
        assertThat(Electrolyte.specificGravity(charge)).as(source).isBetween(lowest, highest);
    }
}
