package cornerbook.core.brake.pads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class BrakeDiagnosisPropertyTest {
    private static final BrakeDiagnosis.Equipment ALL = new BrakeDiagnosis.Equipment(true, true);

    @Test
    void priorsAddUp() {
        assertThat(Arrays.stream(BrakeCause.values())
                        .mapToDouble(BrakeCause::priorPercent)
                        .sum())
                .isCloseTo(100, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(BrakeSign.Look.class)
    void signsOfALookAddUpForEachCause(BrakeSign.Look look) {
        for (var cause : BrakeCause.values()) {
            assertThat(Arrays.stream(BrakeSign.values())
                            .filter(sign -> sign.look() == look)
                            .mapToDouble(sign -> sign.percentUnder(cause))
                            .sum())
                    .as("%s under %s", look, cause)
                    .isCloseTo(100, within(1e-12));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void probabilitiesAddUpAndOrderDoesNotMatter(long seed) {
        var random = new SplittableRandom(seed);
        var signs = new ArrayList<BrakeSign>();
        for (var look : BrakeSign.Look.values()) {
            var shown = Arrays.stream(BrakeSign.values())
                    .filter(sign -> sign.look() == look)
                    .toList();
            if (random.nextBoolean()) {
                signs.add(shown.get(random.nextInt(shown.size())));
            }
        }
        var diagnosis = BrakeDiagnosis.of(ALL, signs);
        assertThat(Arrays.stream(BrakeCause.values())
                        .mapToDouble(diagnosis::probability)
                        .sum())
                .isCloseTo(1, within(1e-12));
        var backwards = BrakeDiagnosis.of(ALL, signs.reversed());
        for (var cause : BrakeCause.values()) {
            assertThat(backwards.probability(cause)).isCloseTo(diagnosis.probability(cause), within(1e-12));
        }
    }

    @Test
    void withoutALookThePriorStands() {
        var diagnosis = BrakeDiagnosis.of(ALL, List.of());
        for (var cause : BrakeCause.values()) {
            assertThat(diagnosis.probability(cause)).isCloseTo(cause.priorPercent() / 100, within(1e-12));
        }
    }

    /** A sign raises a cause exactly when the cause shows it more often than the rest do on average (Bayes' rule). */
    @ParameterizedTest
    @EnumSource(BrakeSign.class)
    void aSignRaisesTheCausesThatShowItMoreOften(BrakeSign sign) {
        var diagnosis = BrakeDiagnosis.of(ALL, List.of(sign));
        double average = Arrays.stream(BrakeCause.values())
                .mapToDouble(cause -> cause.priorPercent() / 100 * sign.percentUnder(cause))
                .sum();
        for (var cause : BrakeCause.values()) {
            assertThat(diagnosis.probability(cause) > cause.priorPercent() / 100)
                    .as(cause.toString())
                    .isEqualTo(sign.percentUnder(cause) > average);
        }
    }

    /** The service literature's own pairs of sign and cause come out first. */
    @ParameterizedTest
    @CsvSource({
        "OUTER_PAD_THINNER,SLIDE_PINS_STUCK,SLIDE_PINS_SEIZED",
        "INNER_PAD_THINNER,PISTON_STAYS,PISTON_SEIZED",
        "INNER_PAD_THINNER,PISTON_STUCK,PISTON_SEIZED",
        "OUTER_PAD_THINNER,PAD_STUCK,PAD_STUCK_IN_BRACKET",
        "BOTH_FACES_RUSTY,SIDES_EVEN,DISC_LITTLE_USED",
        "PADS_EVEN,SLIDE_PINS_FREE,NOTHING",
        "PAD_TAPERED,SLIDE_PINS_STUCK,SLIDE_PINS_SEIZED"
    })
    void knownPairsComeOutFirst(BrakeSign one, BrakeSign other, BrakeCause expected) {
        assertThat(BrakeDiagnosis.of(ALL, List.of(one, other)).likeliest()).isEqualTo(expected);
    }

    @Test
    void whatACornerDoesNotHaveCannotFail() {
        var fixed = BrakeDiagnosis.of(new BrakeDiagnosis.Equipment(false, false), List.of(BrakeSign.OUTER_PAD_THINNER));
        assertThat(fixed.probability(BrakeCause.SLIDE_PINS_SEIZED)).isZero();
        assertThat(fixed.ranked()).doesNotContain(BrakeCause.PARKING_BRAKE_DRAGGING);
    }

    @Test
    void twoSignsOfOneLookAreRefused() {
        assertThatThrownBy(() -> BrakeDiagnosis.of(ALL, List.of(BrakeSign.PAD_FREE, BrakeSign.PAD_STUCK)))
                .hasMessage("two signs of the look PAD_BY_HAND, expected at most one");
    }

    @Test
    void measurementsBecomeSigns() {
        assertThat(BrakeLook.innerAgainstOuter(5, 8)).isEqualTo(BrakeSign.INNER_PAD_THINNER);
        assertThat(BrakeLook.innerAgainstOuter(8, 6.5)).isEqualTo(BrakeSign.PADS_EVEN);
        assertThat(BrakeLook.taper(6, 7.2)).isEqualTo(BrakeSign.PAD_TAPERED);
        assertThat(BrakeLook.leftAgainstRight(9, 6)).isEqualTo(BrakeSign.WORN_SLOWER_THAN_OTHER_SIDE);
        assertThat(BrakeLook.pistonReturn(0.02, 0.05)).isEqualTo(BrakeSign.PISTON_STAYS);
        assertThat(BrakeLook.rust(0.3, 0.05)).isEqualTo(BrakeSign.ONE_FACE_RUSTIER);
    }
}
