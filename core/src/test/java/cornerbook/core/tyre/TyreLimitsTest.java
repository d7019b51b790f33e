package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.air.AirSaid;
import cornerbook.core.air.LeakRate;
import cornerbook.core.air.LoadPressure;
import cornerbook.core.air.PressureCurve;
import cornerbook.core.air.PressureSetting;
import cornerbook.core.air.SeasonMonth;
import cornerbook.core.air.SeasonPressures;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorCheck;
import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a calculator's answer turns: at its limit, and on the right side of it. Numbers by hand unless a source is named. */
class TyreLimitsTest {
    private static final TyreSize SIZE = TyreSize.parse("225/55R18 98V");

    /** UN R30: index 98 is 750 kg, half of an axle of 1500 kg. At the reference pressure all of it may be carried. */
    @Test
    void aFullLoadNeedsTheReferencePressure() {
        var full = LoadPressure.of(1500, 0.5, new LoadIndex(98), 250, 0.65, 250);
        assertThat(full.neededKpa()).isCloseTo(250, within(1e-9));
        assertThat(full.cautions()).isEmpty();
        assertThat(LoadPressure.of(1500, 0.5, new LoadIndex(98), 250, 0.65, 249).cautions())
                .hasSize(1);
        assertThat(refused(() -> LoadPressure.of(1501, 0.5, new LoadIndex(98), 250, 0.65, 250)))
                .isEqualTo(new AirSaid.LoadAboveIndex(Amount.of(750.5, "kg"), Amount.of(750, "kg"), 98));
        assertThat(full.capacityAtKg(250)).isCloseTo(750, within(1e-9));
        assertThat(full.capacityAtKg(300)).as("more air carries no more").isCloseTo(750, within(1e-9));
        assertThat(full.capacityAtKg(200)).isLessThan(700);
    }

    /** 250 kPa where it stands at −20 °C are (250 + 101.325) × 293.15/253.15 − 101.325 = 305.5 kPa in a room of 20 °C. */
    @Test
    void theMaximumOnTheSidewallIsNotPassedInARoom() {
        var cold = setting(-20);
        assertThatCode(() -> cold.requireAtMost(306)).doesNotThrowAnyException();
        assertThat(refused(() -> cold.requireAtMost(305))).isInstanceOfSatisfying(AirSaid.AboveMaximum.class, above -> {
            assertThat(above.maximum()).isEqualTo(Amount.of(305, "kPa"));
            assertThat(above.pressure().value()).isCloseTo(305.5, within(0.05));
        });
        assertThatCode(() -> setting(20).requireAtMost(250)).as("at it").doesNotThrowAnyException();
        assertThat(refused(() -> setting(40).requireAtMost(249)))
                .as("a warm place makes it no less")
                .isEqualTo(new AirSaid.AboveMaximum(Amount.of(250, "kPa"), Amount.of(20, "°C"), Amount.of(249, "kPa")));
    }

    private static Said refused(ThrowingCallable asked) {
        return catchThrowableOfType(Refused.class, asked).said();
    }

    private static PressureSetting setting(double standingC) {
        return PressureSetting.of(
                250,
                new PressureSetting.Circumstances(standingC, standingC, 0, 0, false, null),
                new PressureSetting.Gauge(0, 0));
    }

    /** A rim at either end of the range is permitted, half an inch beyond is not. */
    @Test
    void theEndsOfTheRimRangeArePermitted() {
        var range = RimRange.find(SIZE).orElseThrow();
        for (double rim : new double[] {range.lowestCode(), range.highestCode(), range.measuringCode()}) {
            assertThat(RimFit.of(SIZE, rim).permitted()).as("rim %s", rim).isTrue();
            assertThat(RimFit.of(SIZE, rim).cautions()).isEmpty();
        }
        for (double rim : new double[] {range.lowestCode() - 0.5, range.highestCode() + 0.5}) {
            assertThat(RimFit.of(SIZE, rim).permitted()).as("rim %s", rim).isFalse();
            assertThat(RimFit.of(SIZE, rim).cautions()).hasSize(1);
        }
    }

    /** 3.05 × 704.7 mm are 2149.3 mm; 5 mm of tread gone take 2π × 5 = 31.4 mm. */
    @Test
    void wornTreadMakesTheCircumferenceLess() {
        var pair = CircumferenceDifference.of(
                List.of(new CircumferenceDifference.Worn(SIZE, 0), new CircumferenceDifference.Worn(SIZE, 5)), 31);
        assertThat(pair.circumferencesMm().getFirst()).isCloseTo(2149.335, within(0.001));
        assertThat(pair.circumferencesMm().getLast()).isCloseTo(2117.919, within(0.001));
        assertThat(pair.within()).isFalse();
        assertThat(pair.cautions()).containsExactly(TyreSaid.Caution.TYRES_DIFFER);
        var allowed = CircumferenceDifference.of(
                List.of(new CircumferenceDifference.Worn(SIZE, 0), new CircumferenceDifference.Worn(SIZE, 5)), 32);
        assertThat(allowed.within()).isTrue();
        assertThat(allowed.cautions()).isEmpty();
    }

    /** Half a millimetre is a limit of tread, and none of a circumference. */
    @Test
    void aLimitIsOfItsKind() {
        var even = List.of(new CircumferenceDifference.Worn(SIZE, 0), new CircumferenceDifference.Worn(SIZE, 0.5));
        assertThat(CircumferenceDifference.of(even, CircumferenceDifference.Kind.TREAD, 0.5)
                        .within())
                .isTrue();
        assertThat(refused(() -> CircumferenceDifference.of(even, CircumferenceDifference.Kind.CIRCUMFERENCE, 0.5)))
                .isEqualTo(new QuantitySaid.OutOfRange(
                        TyreSaid.Input.CIRCUMFERENCE_LIMIT, new Amount(0.5, "mm", 1), new Between(1, 100, "mm", 0)));
    }

    /** From twice the usual loss of 1 psi a month it is a leak: 13.79 kPa. The gauge's error may not decide. */
    @ParameterizedTest
    @CsvSource({"28, 0, SLOW_LEAK", "27, 0, TIGHT", "28, 1, NOT_TOLD_APART", "20, 1, TIGHT", "40, 1, SLOW_LEAK"})
    void aLeakIsToldFromTheUsualLoss(double lostIn60DaysKpa, double gaugeErrorKpa, LeakRate.Answer answer) {
        var rate = LeakRate.of(new LeakRate.At(250, 20), new LeakRate.At(250 - lostIn60DaysKpa, 20), 60, gaugeErrorKpa);
        assertThat(rate.lossKpa()).isCloseTo(lostIn60DaysKpa / 2, within(1e-9));
        assertThat(rate.answer()).isEqualTo(answer);
    }

    /** A quarter of a placard of 250 kPa is 62.5 kPa (49 CFR 571.138 S4.2): a sensor that far off warns of nothing. */
    @ParameterizedTest
    @CsvSource({"312.4, OFF", "312.5, USELESS", "187.6, OFF", "187.5, USELESS"})
    void aSensorOffByAQuarterIsOfNoUse(double sensorKpa, SensorCheck.Answer answer) {
        assertThat(SensorCheck.of(sensorKpa, null, 250, null, 250).answer()).isEqualTo(answer);
    }

    @Test
    void anOldSensorIsChangedWithTheTyre() {
        var since = LocalDate.of(2019, 1, 1);
        assertThat(SensorAge.of(since, since.plusDays(2556)).cautions()).isEmpty();
        assertThat(SensorAge.of(since, since.plusDays(2557)).cautions()).hasSize(1);
    }

    /**
     * Set to 250 kPa at 20 °C: at −30 °C (250 + 101.325) × 243.15/293.15 − 101.325 = 190.1 kPa, 2.6 kPa above the warning at 187.5
     * kPa (49 CFR 571.138, S4.2); at −40 °C 178.1 kPa, below it.
     */
    @Test
    void theColdestMorningIsHeldAgainstTheWarning() {
        assertThat(cautions(0, -30))
                .singleElement()
                .isInstanceOfSatisfying(
                        AirSaid.UnderPlacard.class,
                        caution -> assertThat(caution.under().value()).isCloseTo(59.9, within(0.05)));
        assertThat(cautions(5, -30)).hasSize(2).first().isEqualTo(AirSaid.Caution.WARNING_MAY_COME);
        assertThat(cautions(0, -40)).hasSize(2).first().isEqualTo(AirSaid.Caution.WARNING_WILL_COME);
        assertThat(cautions(0, 20)).as("as it was set").isEmpty();
    }

    private static List<Said> cautions(double gaugeErrorKpa, double coldestC) {
        return pressures(gaugeErrorKpa, coldestC, SeasonMonth.ofMean(Math.max(coldestC, 0)))
                .cautions();
    }

    /** A month with its mornings has two lines, one of which only the mean is known has one. */
    @Test
    void morningsAreShownWhereTheyAreKnown() {
        var spread = pressures(0, -30, new SeasonMonth(Month.JANUARY, -5, -15));
        var january = new AirSaid.MonthName(Month.JANUARY);
        assertThat(spread.steps())
                .extracting(Step::what)
                .startsWith(new AirSaid.MonthReading(january, false), new AirSaid.MonthReading(january, true));
        assertThat(spread.months().getFirst().name()).isEqualTo(january);
        assertThat(spread.months().getFirst().isSpread()).isTrue();
        var mean = pressures(0, -30, SeasonMonth.ofMean(-10));
        assertThat(mean.steps())
                .extracting(Step::what)
                .startsWith(new AirSaid.ReadingAt(new Amount(-10, "°C", 0)), AirSaid.Computed.COLDEST_MORNING);
        assertThat(mean.months().getFirst().isSpread()).isFalse();
        assertThat(mean.months().getFirst().name()).isEqualTo(Said.verbatim(""));
    }

    private static SeasonPressures pressures(double gaugeErrorKpa, double coldestC, SeasonMonth month) {
        return SeasonPressures.of(
                new SeasonPressures.Start(250, 20, gaugeErrorKpa, 0),
                250,
                List.of(month),
                coldestC,
                Said.verbatim("invented"));
    }

    /** The curve goes through what was read and ends at no air at all; the warning stands at three quarters of the placard. */
    @Test
    void theCurveOfATyreGoesThroughItsReading() {
        var curve = PressureCurve.atSeaLevel(250, 20, 240, null);
        assertThat(curve.atKpa(20)).isCloseTo(250, within(1e-9));
        assertThat(curve.warningKpa()).isEqualTo(180);
        assertThat(PressureCurve.atSeaLevel(0, 20, 240, null).atKpa(-20)).isZero();
    }

    @Test
    void aMountingIsWrittenAsItIsRead() {
        var written = "5x114.3 M14X1.5 cone 64.1 ET45 7.5J";
        assertThat(Mounting.parse(written).written()).isEqualTo(written);
    }

    /** Standing still and at the symbol's own speed (UN R30) are both allowed. */
    @Test
    void aSpeedSymbolServesUpToItsSpeed() {
        assertThat(SpeedSymbol.H.loadShare(210)).isPositive();
        assertThat(SpeedSymbol.H.loadShare(0)).isGreaterThanOrEqualTo(1);
    }

    /** One index for both fittings is allowed; twin tyres never carry more each than one alone. */
    @Test
    void twinTyresMayCarryAsMuchAsOne() {
        assertThat(TyreSize.parse("205/65R16C 107/107T")).hasToString("205/65R16C 107/107T");
    }
}
