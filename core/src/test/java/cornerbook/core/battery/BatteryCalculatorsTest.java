package cornerbook.core.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Facts;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatteryCalculatorsTest {
    @Test
    void aVoltageThatIsHeldUpIsRefusedWithTheReason() {
        assertThat(Facts.refused(() -> RestVoltage.of(Chemistry.AGM, 13.8, 20, 12)))
                .isEqualTo("HeldUp(13.8 V, 13.2 V)");
        assertThat(Facts.refused(() -> RestVoltage.of(Chemistry.LITHIUM, 13.2, 20, 12)))
                .isEqualTo("LITHIUM_TABLE");
        assertThat(Facts.refused(() -> LoadTest.of(Chemistry.LITHIUM, 600, 9.7, 20)))
                .isEqualTo("LITHIUM_LOAD_TEST");
    }

    @Test
    void aShortRestIsABestCase() {
        assertThat(RestVoltage.of(Chemistry.FLOODED, 12.6, 20, 1).cautions())
                .contains(BatterySaid.Sentence.RESTED_TOO_SHORT);
        assertThat(RestVoltage.of(Chemistry.FLOODED, 12.6, 20, 8).cautions()).isEmpty();
    }

    /** More volts are more charge; a colder battery of the same voltage is fuller. */
    @Test
    void chargeRisesWithVoltageAndCold() {
        for (var chemistry : new Chemistry[] {Chemistry.FLOODED, Chemistry.EFB, Chemistry.AGM}) {
            double before = -1;
            for (double volts = 11.85; volts < 12.6; volts += 0.05) {
                double charge = RestVoltage.of(chemistry, volts, 26.7, 8).stateOfCharge();
                assertThat(charge).isGreaterThanOrEqualTo(before);
                assertThat(RestVoltage.of(chemistry, volts, 0, 8).stateOfCharge())
                        .isGreaterThanOrEqualTo(charge);
                before = charge;
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"IEC, SAE", "SAE, JIS", "JIS, DIN"})
    void conversionsWithoutTwoSourcesAreRefused(RatingStandard from, RatingStandard to) {
        assertThat(Facts.refused(() -> RatingConversion.of(500, from, to))).startsWith("NoConversion(");
    }

    @Test
    void aConversionIsARangeThatHoldsTheWayBack() {
        for (double rated = 200; rated <= 900; rated += 50) {
            var there = RatingConversion.of(rated, RatingStandard.SAE, RatingStandard.DIN);
            assertThat(there.lowA()).isLessThanOrEqualTo(there.highA());
            assertThat(RatingConversion.of(there.lowA(), RatingStandard.DIN, RatingStandard.SAE)
                            .lowA())
                    .isLessThanOrEqualTo(rated + 1e-9);
            assertThat(RatingConversion.of(there.highA(), RatingStandard.DIN, RatingStandard.SAE)
                            .highA())
                    .isGreaterThanOrEqualTo(rated - 1e-9);
        }
    }

    @Test
    void healthIsJudgedAtItsTemperature() {
        assertThat(BatteryHealth.of(420, 600, RatingStandard.SAE, 20, true).judgement())
                .isEqualTo(HealthTest.Judgement.WATCH);
        assertThat(BatteryHealth.of(419, 600, RatingStandard.SAE, 20, true).judgement())
                .isEqualTo(HealthTest.Judgement.REPLACE);
        assertThat(BatteryHealth.of(390, 600, RatingStandard.SAE, 0, false).share())
                .isCloseTo(1, within(1e-9));
    }

    /** By hand: 0.5 · 60 A·h · 0.8 / (24 h · 0.1 A) = 10 days. */
    @Test
    void daysParkedToHalfCharge() {
        assertThat(ParkedDays.of(60, 0.8, 0.1, 1).days()).isCloseTo(10, within(1e-12));
        assertThat(Facts.refused(() -> ParkedDays.of(60, 0.8, 0, 1)))
                .isEqualTo("OutOfRange(STANDBY, 0 A, 0.001 to 10.000 A)");
    }

    @ParameterizedTest
    @CsvSource({"21, 9.6", "16, 9.5", "10, 9.4", "4, 9.3", "-1, 9.1", "-7, 8.9", "-12, 8.7", "-18, 8.5"})
    void leastVoltageUnderLoad(double temperatureC, double leastV) {
        var test = LoadTest.of(Chemistry.AGM, 600, leastV, temperatureC);
        assertThat(test.leastVolts()).as("a battery maker's manual").isCloseTo(leastV, within(1e-9));
        assertThat(test.passes()).isTrue();
        assertThat(test.loadA()).isEqualTo(300);
    }

    /** By hand: SAE = 1.5 DIN + 40 or 1.7 DIN, whichever of the two published ways gives less or more. */
    @ParameterizedTest
    @CsvSource({
        "400, DIN, SAE, 640, 680",
        "100, DIN, SAE, 170, 190",
        "680, SAE, DIN, 400, 426.667",
        "170, SAE, DIN, 86.667, 100",
        "665, EN, SAE, 700, 722.826",
        "700, SAE, EN, 644, 665",
        "400, DIN, EN, 588.8, 646"
    })
    void bothPublishedWaysAreTheEndsOfTheRange(
            double ratedA, RatingStandard from, RatingStandard to, double lowA, double highA) {
        var conversion = RatingConversion.of(ratedA, from, to);
        assertThat(conversion.lowA()).isCloseTo(lowA, within(0.001));
        assertThat(conversion.highA()).isCloseTo(highA, within(0.001));
    }

    @Test
    void aRatingIsNotConvertedIntoItself() {
        assertThat(Facts.refused(() -> RatingConversion.of(500, RatingStandard.EN, RatingStandard.EN)))
                .isEqualTo("SameStandard(EN)");
    }

    /** At 13.2 V a lead-acid battery may still be at rest, above it is held up (service literature). */
    @Test
    void theHighestVoltageOfABatteryAtRestIsStillOne() {
        assertThat(StateOfCharge.ofFloodedLeadAcid(StateOfCharge.HELD_UP_VOLTS)).isEqualTo(1);
        assertThat(StateOfCharge.ofFloodedLeadAcid(0)).isZero();
        assertThatThrownBy(() -> StateOfCharge.ofFloodedLeadAcid(13.21)).hasMessageContaining("of a battery at rest");
        assertThat(RestVoltage.of(Chemistry.FLOODED, 13.2, 26.7, 8).stateOfCharge())
                .isEqualTo(1);
    }

    /** Sound from 70 % (service literature), watched below 80 % (common practice, no source); only what is condemned is tested again. */
    @ParameterizedTest
    @CsvSource({"480, SOUND, 80", "479, WATCH, 79.83", "420, WATCH, 70", "419, REPLACE, 69.83"})
    void theShareOfTheRatingDecides(double measuredA, HealthTest.Judgement judgement, double percent) {
        var health = BatteryHealth.of(measuredA, 600, RatingStandard.SAE, 20, true);
        assertThat(health.judgement()).isEqualTo(judgement);
        assertThat(health.steps().getLast().value()).isCloseTo(percent, within(0.01));
        assertThat(health.steps().getFirst().value())
                .as("the tester knew the temperature")
                .isEqualTo(100);
        assertThat(health.cautions().isEmpty()).isNotEqualTo(judgement == HealthTest.Judgement.REPLACE);
    }

    /** At 0 °C a sound battery has 65 % of its power (a technical manual), and the working says so. */
    @Test
    void theColdIsShownInTheWorking() {
        var step =
                BatteryHealth.of(390, 600, RatingStandard.SAE, 0, false).steps().getFirst();
        assertThat(step.value()).isCloseTo(65, within(1e-9));
        assertThat(step.formula()).isEqualTo(new BatterySaid.PowerAt(new Amount(0, "°C", 0)));
    }

    @Test
    void aBatteryThatFailsUnderLoadIsChargedFirst() {
        assertThat(LoadTest.of(Chemistry.AGM, 600, 9.6, 21).cautions()).isEmpty();
        var failed = LoadTest.of(Chemistry.AGM, 600, 9.59, 21);
        assertThat(failed.passes()).isFalse();
        assertThat(failed.cautions()).containsExactly(BatterySaid.Sentence.REPEAT_LOAD_TEST);
        assertThat(failed.steps().getFirst().shown()).isEqualTo(new Amount(300, "A", 0));
    }

    /** Half the charge is kept for electronics and contactors (service literature). */
    @ParameterizedTest
    @CsvSource({"0.5, true", "0.51, false"})
    void aBatteryAtItsReserveIsChargedBeforeItIsParked(double charge, boolean atReserve) {
        var parked = ParkedDays.of(60, 1, 0.1, charge);
        assertThat(parked.cautions().isEmpty()).isNotEqualTo(atReserve);
        assertThat(parked.days() == 0).isEqualTo(atReserve);
    }

    /** Four hours of rest are enough, and 12.4 V need no charge (service literature). */
    @Test
    void theLimitsOfARestVoltageAreStillGood() {
        assertThat(RestVoltage.of(Chemistry.FLOODED, 12.4, 20, 4).cautions()).isEmpty();
        assertThat(RestVoltage.of(Chemistry.FLOODED, 12.39, 20, 4).cautions())
                .containsExactly(new BatterySaid.ChargeAndTest(new Amount(12.4, "V", 1)));
        assertThat(RestVoltage.of(Chemistry.AGM, 12.6, 20, 4).cautions()).isEmpty();
        assertThat(RestVoltage.of(Chemistry.AGM, 12.59, 20, 4).cautions())
                .containsExactly(new BatterySaid.ChargeAndTest(new Amount(12.6, "V", 1)));
    }

    /** Limits stand beside tables for 80 °F: 12.38 V at −20 °C are 12.436 V there, 12.41 V at 45 °C are 12.388 V. */
    @Test
    void theLimitIsForTheTemperatureOfItsTable() {
        assertThat(RestVoltage.of(Chemistry.FLOODED, 12.38, -20, 8).cautions()).isEmpty();
        assertThat(RestVoltage.of(Chemistry.FLOODED, 12.41, 45, 8).cautions()).hasSize(1);
    }

    /** Discharged acid of 1.120 freezes at −11 °C (tables of a battery maker and of a vehicle maker): a frozen battery is never charged. */
    @ParameterizedTest
    @CsvSource({"11.7, -11, true", "11.7, -10, false", "12.6, -40, false"})
    void whatMayBeFrozenIsNotCharged(double volts, double temperatureC, boolean frozen) {
        var rest = RestVoltage.of(Chemistry.FLOODED, volts, temperatureC, 8);
        assertThat(rest.cautions().contains(BatterySaid.Sentence.NEVER_CHARGE_FROZEN))
                .isEqualTo(frozen);
        assertThat(rest.steps().getLast().value()).isEqualTo(rest.freezesAtC());
    }

    /**
     * Colder than 15 °C (a vehicle maker's manual tests at 15 to 38 °C) a weak battery may be weak by the cold alone: 65 % of its power
     * are left at 0 °C, so that 0.455 of the rating may still be 70 %.
     */
    @ParameterizedTest
    @CsvSource({"0.46, 0, true", "0.45, 0, false", "0.69, 14.9, true", "0.69, 15, false"})
    void theColdIsAllowedForBeforeABatteryIsCondemned(double share, double temperatureC, boolean byCold) {
        assertThat(BatteryHealth.mayFailByCold(share, temperatureC)).isEqualTo(byCold);
    }

    /** AGM at 12.6 V is 75 % by a vehicle maker's table, flooded at 12.45 V by BCI's: each names its own. */
    @Test
    void theTableOfAChargeIsNamed() {
        var agm = RestVoltage.of(Chemistry.AGM, 12.6, 26.7, 8).steps().get(1);
        assertThat(agm.shown()).isEqualTo(new Amount(75, "%", 0));
        assertThat(agm.source()).isEqualTo(BatterySaid.Label.AGM_TABLE);
        var flooded = RestVoltage.of(Chemistry.FLOODED, 12.45, 26.7, 8).steps().get(1);
        assertThat(flooded.shown()).isEqualTo(new Amount(75, "%", 0));
        assertThat(flooded.source()).isEqualTo(BatterySaid.Label.FLOODED_TABLE);
    }

    /** Points inside three months tell more of the tester than of the battery: 90 days are enough. */
    @Test
    void aTrendNeedsThreeMonths() {
        assertThat(trend(90)).isPresent();
        assertThat(trend(89)).isEmpty();
    }

    private static Optional<HealthTrend> trend(int days) {
        var last = LocalDate.of(2026, 10, 20);
        return HealthTrend.of(
                List.of(
                        new HealthTrend.Point(last.minusDays(days), 0.95),
                        new HealthTrend.Point(last.minusDays(40), 0.92),
                        new HealthTrend.Point(last, 0.9)),
                0.7);
    }

    /** At its end below half (BCI), replaced soon below 80 % (maintenance manual for stand-by batteries). */
    @ParameterizedTest
    @CsvSource({"48, SOUND, 80", "47.9, WATCH, 79.83", "30, WATCH, 50", "29.9, REPLACE, 49.83"})
    void theShareOfTheCapacityDecides(double measuredAh, HealthTest.Judgement judgement, double percent) {
        var test = CapacityTest.of(measuredAh, 60);
        assertThat(test.judgement()).isEqualTo(judgement);
        assertThat(test.steps().getLast().value()).isCloseTo(percent, within(0.01));
        assertThat(test.cautions()).containsExactly(BatterySaid.Sentence.DISCHARGED_FROM_FULL);
    }

    @Test
    void aCapacityOutsideItsRangeIsRefused() {
        assertThat(Facts.refused(() -> CapacityTest.of(301, 60))).startsWith("OutOfRange(DISCHARGED, 301 A·h");
        assertThat(Facts.refused(() -> CapacityTest.of(30, 4))).startsWith("OutOfRange(CAPACITY, 4 A·h");
    }
}
