package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import cornerbook.core.air.AirSaid;
import cornerbook.core.air.GasLaw;
import cornerbook.core.air.LeakRate;
import cornerbook.core.air.LoadPressure;
import cornerbook.core.air.PressureSetting;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TyreCalculatorsPropertyTest {
    private static final PressureSetting.Gauge TRUE_GAUGE = new PressureSetting.Gauge(0, 0);

    private static double setting(double placardKpa, double tyreC, double standingC, double altitudeM) {
        return PressureSetting.of(
                        placardKpa,
                        new PressureSetting.Circumstances(tyreC, standingC, altitudeM, 0, false, null),
                        TRUE_GAUGE)
                .setKpa();
    }

    /** What is set now comes back as the placard's where it stands; warmer and higher shops show more. */
    @Test
    void theSettingComesBackAsThePlacard() {
        var random = new SplittableRandom(20_260_112);
        for (int i = 0; i < 300; i++) {
            double placardKpa = random.nextDouble(180, 320);
            double tyreC = random.nextDouble(-20, 40);
            double standingC = random.nextDouble(-30, 30);
            double setKpa = setting(placardKpa, tyreC, standingC, 0);
            assertThat(GasLaw.gaugePressureKpa(setKpa, tyreC, standingC)).isCloseTo(placardKpa, within(1e-9));
            assertThat(setting(placardKpa, tyreC + 5, standingC, 0)).isGreaterThan(setKpa);
            assertThat(setting(placardKpa, tyreC, standingC, 500)).isGreaterThan(setKpa);
        }
    }

    /** A gauge that shows too much is set to more, by as much. */
    @Test
    void theGaugesOffsetIsCarried() {
        var at = new PressureSetting.Circumstances(15, 0, 0, 0, true, null);
        var setting = PressureSetting.of(250, at, new PressureSetting.Gauge(7, 3));
        assertThat(setting.setKpa() - PressureSetting.of(250, at, TRUE_GAUGE).setKpa())
                .isCloseTo(7, within(1e-9));
        assertThat(setting.cautions()).containsExactly(AirSaid.Caution.WARM_TYRE);
    }

    @Test
    void pressureAndLoadGoBackAndForth() {
        for (double exponent : new double[] {0.65, 0.8}) {
            double beforeKpa = 0;
            for (double loadKg = 300; loadKg <= 750; loadKg += 50) {
                double kpa = LoadPressure.pressureKpa(loadKg, 750, 250, exponent);
                assertThat(LoadPressure.capacityKg(kpa, 750, 250, exponent)).isCloseTo(loadKg, within(1e-9));
                assertThat(kpa).isGreaterThan(beforeKpa);
                beforeKpa = kpa;
            }
        }
        assertThat(catchThrowableOfType(
                                Refused.class, () -> LoadPressure.of(1600, 0.5, new LoadIndex(91), 250, 0.8, 250))
                        .said())
                .isEqualTo(new AirSaid.LoadAboveIndex(Amount.of(800, "kg"), Amount.of(615, "kg"), 91));
    }

    /** Cold alone is no leak; a loss is found whatever the temperatures are. */
    @Test
    void temperatureIsTakenOutOfALeak() {
        double coldKpa = GasLaw.gaugePressureKpa(250, 20, -10);
        var tight = LeakRate.of(new LeakRate.At(250, 20), new LeakRate.At(coldKpa, -10), 30, 3);
        assertThat(tight.lossKpa()).isCloseTo(0, within(1e-9));
        assertThat(tight.answer()).isEqualTo(LeakRate.Answer.TIGHT);
        var leak = LeakRate.of(new LeakRate.At(250, 20), new LeakRate.At(coldKpa - 40, -10), 30, 3);
        assertThat(leak.answer()).isEqualTo(LeakRate.Answer.SLOW_LEAK);
        var soon = LeakRate.of(new LeakRate.At(250, 20), new LeakRate.At(248, 20), 1, 3);
        assertThat(soon.answer()).isEqualTo(LeakRate.Answer.NOT_TOLD_APART);
    }

    @Test
    void aComparisonTurnsRound() {
        var small = TyreSize.parse("205/55R16 91V");
        var large = TyreSize.parse("225/50R17 98V");
        var there = SizeComparison.of(small, large, 100);
        var back = SizeComparison.of(large, small, 100);
        assertThat(there.trueKmh() * back.trueKmh()).isCloseTo(100 * 100, within(1e-6));
        assertThat(there.diameterMm()).isCloseTo(-back.diameterMm(), within(1e-9));
        assertThat(there.carriesEnough()).isTrue();
        assertThat(back.carriesEnough()).isFalse();
        assertThat(back.cautions()).contains(new TyreSaid.LoadIndexBelow(91, 98));
    }

    /** A wider, taller or larger tyre is higher, rolls farther and turns less often; turns and way are inverse. */
    @Test
    void oneSizeIsMonotoneInEachNumber() {
        var random = new SplittableRandom(20_260_204);
        for (int i = 0; i < 200; i++) {
            int width = random.nextInt(155, 315);
            int ratio = random.nextInt(30, 80);
            int rim = random.nextInt(13, 22);
            var size = SizeMeaning.of(TyreSize.parse("%d/%dR%d".formatted(width, ratio, rim)));
            assertThat(size.turnsPerKm() * size.rollingCircumferenceMm()).isCloseTo(1e6, within(1e-6));
            assertThat(size.lowestRimCode()).isLessThanOrEqualTo(size.measuringRimCode());
            assertThat(size.measuringRimCode()).isLessThanOrEqualTo(size.highestRimCode());
            for (var larger : List.of(
                    "%d/%dR%d".formatted(width + 10, ratio, rim),
                    "%d/%dR%d".formatted(width, ratio + 5, rim),
                    "%d/%dR%d".formatted(width, ratio, rim + 1))) {
                var other = SizeMeaning.of(TyreSize.parse(larger));
                assertThat(other.overallDiameterMm()).isGreaterThan(size.overallDiameterMm());
                assertThat(other.turnsPerKm()).isLessThan(size.turnsPerKm());
            }
        }
    }

    @Test
    void theLimitIsOfTheCarsOwnKind() {
        var size = TyreSize.parse("225/55R18 98V");
        var tyres = List.of(new CircumferenceDifference.Worn(size, 1), new CircumferenceDifference.Worn(size, 2.5));
        var tread = CircumferenceDifference.of(tyres, CircumferenceDifference.Kind.TREAD, 1.5);
        assertThat(tread.comparedMm()).isCloseTo(1.5, within(1e-12));
        assertThat(tread.within()).isTrue();
        assertThat(tread.differenceMm()).isCloseTo(2 * Math.PI * 1.5, within(1e-9));
        assertThat(CircumferenceDifference.of(tyres, CircumferenceDifference.Kind.TREAD, 1.4)
                        .within())
                .isFalse();
        var staggered = List.of(tyres.getFirst(), new CircumferenceDifference.Worn(TyreSize.parse("235/50R18"), 2.5));
        assertThat(catchThrowableOfType(
                                Refused.class,
                                () -> CircumferenceDifference.of(staggered, CircumferenceDifference.Kind.TREAD, 1.5))
                        .said())
                .isEqualTo(new TyreSaid.OtherSizes("225/55R18 98V", "235/50R18"));
    }

    /** 2/32 in of wear is 10 mm of circumference (service literature). */
    @Test
    void wearTakesCircumference() {
        var size = TyreSize.parse("225/55R18 98V");
        var pair = CircumferenceDifference.of(
                List.of(
                        new CircumferenceDifference.Worn(size, 0),
                        new CircumferenceDifference.Worn(size, 2 * 25.4 / 32)),
                9);
        assertThat(pair.differenceMm()).isCloseTo(10, within(0.03));
        assertThat(pair.within()).isFalse();
    }

    @Test
    void theSameMountingMountsAndMovesNothing() {
        var own = Mounting.parse("5x114.3 M14x1.5 cone 64.1 ET45 7.5J");
        var fit = SetFit.of(own, own);
        assertThat(fit.mounts()).isTrue();
        assertThat(fit.cautions()).isEmpty();
        assertThat(fit.inwardMm()).isZero();
        assertThat(fit.outwardMm()).isZero();
        var wider = SetFit.of(own, Mounting.parse("5×114,3 M14×1,5 ball 66.6 ET35 8.5J"));
        assertThat(wider.outwardMm()).isCloseTo(12.7 + 10, within(1e-9));
        assertThat(wider.inwardMm()).isCloseTo(12.7 - 10, within(1e-9));
        assertThat(wider.ringMm()).isCloseTo(1.25, within(1e-9));
        assertThat(wider.cautions()).hasSize(3);
    }

    @ParameterizedTest
    @MethodSource
    void whatDoesNotMountIsSaid(String wheel, Said why) {
        var fit = SetFit.of(Mounting.parse("5x114.3 M14x1.5 cone 64.1 ET45 7.5J"), Mounting.parse(wheel));
        assertThat(fit.mounts()).isFalse();
        assertThat(fit.cautions()).contains(why);
    }

    static Stream<Arguments> whatDoesNotMountIsSaid() {
        return Stream.of(
                arguments(
                        "5x112 M14x1.5 cone 64.1 ET45 7.5J",
                        new TyreSaid.BoltCircleDiffers(5, new Amount(112, "", 0), 5, new Amount(114.3, "", 1))),
                arguments("5x114.3 M12x1.5 cone 64.1 ET45 7.5J", new TyreSaid.ThreadDiffers("M12X1.5", "M14X1.5")),
                arguments(
                        "5x114.3 M14x1.5 cone 60.1 ET45 7.5J",
                        new TyreSaid.BoreTooSmall(new Amount(60.1, "mm", 1), new Amount(64.1, "mm", 1))));
    }
}
