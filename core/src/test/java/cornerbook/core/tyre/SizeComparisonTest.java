package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Another size against the placard's, and what a size says by itself. Sizes by UN R30, 6.1.2: D = d + 2 S Ra/100. */
class SizeComparisonTest {
    /** D is 457.2 + 247.5 = 704.7 mm on the placard and 457.2 + 270 = 727.2 mm on the taller one: 3.193 % more. */
    @Test
    void aTallerTyreShowsLessThanTheTrueSpeed() {
        var taller = SizeComparison.of(TyreSize.parse("225/55R18 98V"), TyreSize.parse("225/60R18 100V"), 100);
        assertThat(taller.diameterMm()).isCloseTo(22.5, within(1e-9));
        assertThat(taller.radiusMm()).isCloseTo(11.25, within(1e-9));
        assertThat(taller.circumferencePercent()).isCloseTo(3.193, within(0.001));
        assertThat(taller.trueKmh()).isCloseTo(103.193, within(0.001));
        assertThat(taller.turnsPerKm()).isCloseTo(1e6 / (3.05 * 727.2), within(1e-9));
        assertThat(taller.cautions())
                .as("UN R39, from memory")
                .containsExactly(TyreSaid.Caution.SPEEDOMETER_SHOWS_LESS);
        assertThat(step(taller, Computed.CIRCUMFERENCE_DIFFERENCE)).isCloseTo(3.193, within(0.001));
        assertThat(step(taller, Computed.TRUE_SPEED)).isCloseTo(103.193, within(0.001));
    }

    /** The same size shows the true speed, and a lower tyre shows more than it: both are allowed. */
    @Test
    void theSpeedometerMayShowMore() {
        var placard = TyreSize.parse("225/55R18 98V");
        assertThat(SizeComparison.of(placard, placard, 100).cautions()).isEmpty();
        assertThat(SizeComparison.of(placard, TyreSize.parse("225/50R18 98V"), 100)
                        .cautions())
                .isEmpty();
    }

    /** At least the placard's load index and speed; a lower speed is for winter tyres where the law lets them. */
    @ParameterizedTest
    @MethodSource
    void loadAndSpeedHaveToBeThePlacards(String other, List<Said> cautions) {
        var comparison = SizeComparison.of(TyreSize.parse("225/55R18 98V"), TyreSize.parse(other), 100);
        assertThat(comparison.carriesEnough()).isEqualTo(cautions.isEmpty());
        assertThat(comparison.cautions()).isEqualTo(cautions);
    }

    static Stream<Arguments> loadAndSpeedHaveToBeThePlacards() {
        return Stream.of(
                arguments("225/55R18 98V", List.of()),
                arguments("225/55R18 102W", List.of()),
                arguments("225/55R18 97V", List.of(new TyreSaid.LoadIndexBelow(97, 98))),
                arguments("225/55R18 98H", List.of(new TyreSaid.SpeedSymbolBelow("H", "V"))),
                arguments("225/55R18", List.of(TyreSaid.Caution.SERVICE_NOT_JUDGED)),
                arguments("LT225/55R18 102W", List.of(TyreSaid.Caution.OTHER_TABLES)),
                arguments("T225/55R18 102W", List.of(TyreSaid.Caution.OTHER_TABLES)));
    }

    /** UN R30 prints the load-capacity indices from 50 on to 125 for passenger tyres; beyond them another table serves. */
    @ParameterizedTest
    @CsvSource({"49T, false", "50T, true", "98V, true", "125T, true", "126T, false"})
    void theTableOfALoadIndexIsNamed(String service, boolean printed) {
        var meaning = SizeMeaning.of(TyreSize.parse("225/55R18 " + service));
        assertThat(find(meaning, Computed.CAPACITY).source())
                .isEqualTo(printed ? Origin.LOAD_INDICES : Origin.PUBLISHED_LOAD_INDICES);
    }

    @Test
    void theLoadAtTheHighestSpeedNamesItsSource() {
        assertThat(find(SizeMeaning.of(TyreSize.parse("225/55R18 98V")), Computed.CAPACITY_AT_SPEED)
                        .source())
                .isEqualTo(Origin.LOAD_VARIATION);
        assertThat(find(SizeMeaning.of(TyreSize.parse("225/55R18 98Y")), Computed.CAPACITY_AT_SPEED)
                        .source())
                .isEqualTo(Origin.LOAD_VARIATION_FROM_MEMORY);
    }

    /** Published reference pressures; those of HL are not published and taken as extra load. */
    @Test
    void thePressureOfALoadIndexNamesItsSource() {
        assertThat(find(SizeMeaning.of(TyreSize.parse("HL275/40R22 110Y")), Computed.REFERENCE_PRESSURE)
                        .source())
                .isEqualTo(Origin.EXTRA_LOAD_FROM_MEMORY);
        assertThat(find(SizeMeaning.of(TyreSize.parse("225/55R18 98V")), Computed.REFERENCE_PRESSURE)
                        .source())
                .isEqualTo(Origin.PUBLISHED_PRESSURES);
    }

    @Test
    void aSizeWithoutServiceDescriptionSaysWhatIsMissing() {
        assertThat(SizeMeaning.of(TyreSize.parse("225/55R18")).cautions())
                .containsExactly(TyreSaid.Caution.SERVICE_NOT_KNOWN);
        assertThat(SizeMeaning.of(TyreSize.parse("225/55R18 98V")).cautions()).isEmpty();
    }

    /**
     * A temporary spare and a light-truck size that is not listed: geometry yes, rims and load no. Of 420 kPa and 80 km/h owner's
     * manuals of three makers say so.
     */
    @Test
    void sizesWithTablesOfTheirOwnAreNotJudgedByThoseForPassengerTyres() {
        var spare = SizeMeaning.of(TyreSize.parse("T145/80D18 103M"));
        assertThat(spare.overallDiameterMm()).isCloseTo(18 * 25.4 + 2 * 145 * 0.8, within(1e-9));
        assertThat(spare.rollingCircumferenceMm()).isCloseTo(2.99 * spare.overallDiameterMm(), within(1e-9));
        assertThat(spare.cautions())
                .containsExactly(new TyreSaid.TemporarySpare(new Amount(420, "kPa", 0), new Amount(80, "km/h", 0)));
        var unlisted = SizeMeaning.of(TyreSize.parse("LT225/75R16 115/112S"));
        assertThat(unlisted.cautions()).containsExactly(new TyreSaid.LightTruckNotListed("LT225/75R16"));
        for (var size : List.of(spare, unlisted)) {
            assertThat(size.capacityKg()).isNull();
            assertThat(size.measuringRimCode()).isNull();
            assertThat(size.referenceKpa()).isNull();
            var fit = RimFit.of(size.size(), 6);
            assertThat(fit.permitted()).isNull();
            assertThat(fit.sectionWidthMm()).isNull();
            assertThat(fit.cautions()).isEqualTo(size.cautions());
        }
    }

    /** 3042 lb at 80 psi belong to load index 120; of the load range with 108 only the rims are known. */
    @Test
    void anotherLoadRangeOfALightTruckSizeHasAnotherLoad() {
        var other = SizeMeaning.of(TyreSize.parse("LT245/75R16 108/104S"));
        assertThat(other.cautions()).containsExactly(new TyreSaid.OtherLoadRange("LT245/75R16", 108));
        assertThat(other.capacityKg()).isNull();
        assertThat(other.measuringRimCode()).isEqualTo(7);
        assertThat(RimFit.of(other.size(), 8.5).permitted()).isFalse();
    }

    private static double step(Explained result, Computed what) {
        return find(result, what).value();
    }

    private static Step find(Explained result, Computed what) {
        List<Step> steps = result.steps();
        return steps.stream()
                .filter(step -> step.what().equals(what))
                .findFirst()
                .orElseThrow();
    }
}
