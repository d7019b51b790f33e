package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                .singleElement()
                .asString()
                .as("UN R39, from memory")
                .contains("must never show less");
        assertThat(step(taller, "difference of circumference")).isCloseTo(3.193, within(0.001));
        assertThat(step(taller, "true speed")).isCloseTo(103.193, within(0.001));
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
    @CsvSource(
            delimiter = '|',
            value = {
                "225/55R18 98V | true |",
                "225/55R18 102W | true |",
                "225/55R18 97V | false | Load index 97 is below the placard's 98",
                "225/55R18 98H | false | Speed symbol H is below the placard's V",
                "225/55R18 | false | Load and speed are not judged"
            })
    void loadAndSpeedHaveToBeThePlacards(String other, boolean carries, String caution) {
        var comparison = SizeComparison.of(TyreSize.parse("225/55R18 98V"), TyreSize.parse(other), 100);
        assertThat(comparison.carriesEnough()).isEqualTo(carries);
        if (caution == null) {
            assertThat(comparison.cautions()).isEmpty();
        } else {
            assertThat(comparison.cautions()).singleElement().asString().startsWith(caution);
        }
    }

    /** UN R30 prints the load-capacity indices from 50 on to 125 for passenger tyres; beyond them another table serves. */
    @ParameterizedTest
    @CsvSource({"49T, false", "50T, true", "98V, true", "125T, true", "126T, false"})
    void theTableOfALoadIndexIsNamed(String service, boolean printed) {
        var meaning = SizeMeaning.of(TyreSize.parse("225/55R18 " + service));
        assertThat(find(meaning, "load capacity, one tyre").source().startsWith("UN R30"))
                .isEqualTo(printed);
    }

    @Test
    void theLoadAtTheHighestSpeedNamesItsSource() {
        assertThat(find(SizeMeaning.of(TyreSize.parse("225/55R18 98V")), "load capacity at that speed")
                        .source())
                .startsWith("UN R30");
        assertThat(find(SizeMeaning.of(TyreSize.parse("225/55R18 98Y")), "load capacity at that speed")
                        .source())
                .endsWith("from memory");
    }

    /** Published reference pressures; those of HL are not published and taken as extra load. */
    @Test
    void thePressureOfALoadIndexNamesItsSource() {
        assertThat(find(SizeMeaning.of(TyreSize.parse("HL275/40R22 110Y")), "pressure at which the load index holds")
                        .source())
                .endsWith("from memory");
        assertThat(find(SizeMeaning.of(TyreSize.parse("225/55R18 98V")), "pressure at which the load index holds")
                        .source())
                .startsWith("published");
    }

    @Test
    void aSizeWithoutServiceDescriptionSaysWhatIsMissing() {
        assertThat(SizeMeaning.of(TyreSize.parse("225/55R18")).cautions())
                .singleElement()
                .asString()
                .contains("Load and speed are not known");
        assertThat(SizeMeaning.of(TyreSize.parse("225/55R18 98V")).cautions()).isEmpty();
    }

    private static double step(Explained result, String what) {
        return find(result, what).value();
    }

    private static Step find(Explained result, String what) {
        List<Step> steps = result.steps();
        return steps.stream()
                .filter(step -> step.what().equals(what))
                .findFirst()
                .orElseThrow();
    }
}
