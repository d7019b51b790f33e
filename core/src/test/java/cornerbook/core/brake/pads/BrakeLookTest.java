package cornerbook.core.brake.pads;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is seen at a brake, named: from which difference on, and on which side. Common practice, no source, unless it is named. */
class BrakeLookTest {
    /** From 2 mm apart a pad does not work. */
    @ParameterizedTest
    @CsvSource({"8, 8, PADS_EVEN", "8, 6.1, PADS_EVEN", "8, 6, OUTER_PAD_THINNER", "6, 8, INNER_PAD_THINNER"})
    void theThinnerPadIsNamed(double innerMm, double outerMm, BrakeSign sign) {
        assertThat(BrakeLook.innerAgainstOuter(innerMm, outerMm)).isEqualTo(sign);
    }

    /** From 1 mm along a pad it is a wedge, whichever edge is the thinner. */
    @ParameterizedTest
    @CsvSource({"8, 7.1, PAD_NOT_TAPERED", "8, 7, PAD_TAPERED", "7, 8, PAD_TAPERED"})
    void aWedgeIsNamed(double leadingMm, double trailingMm, BrakeSign sign) {
        assertThat(BrakeLook.taper(leadingMm, trailingMm)).isEqualTo(sign);
    }

    /** From 2 mm against the other side of the axle. */
    @ParameterizedTest
    @CsvSource({"8, 6.1, SIDES_EVEN", "8, 6, WORN_SLOWER_THAN_OTHER_SIDE", "6, 8, WORN_FASTER_THAN_OTHER_SIDE"})
    void theFasterSideIsNamed(double hereMm, double thereMm, BrakeSign sign) {
        assertThat(BrakeLook.leftAgainstRight(hereMm, thereMm)).isEqualTo(sign);
    }

    /** Makers' service advice: a piston returns by more than the runout allowed. */
    @ParameterizedTest
    @CsvSource({"0.06, PISTON_RETURNS", "0.05, PISTON_STAYS", "0, PISTON_STAYS"})
    void aPistonReturnsByMoreThanTheRunout(double returnedMm, BrakeSign sign) {
        assertThat(BrakeLook.pistonReturn(returnedMm, 0.05)).isEqualTo(sign);
    }

    /** From 15 % of a face on. */
    @ParameterizedTest
    @CsvSource({
        "0.14, 0.14, FACES_CLEAN",
        "0.15, 0.1, ONE_FACE_RUSTIER",
        "0.1, 0.15, ONE_FACE_RUSTIER",
        "0.15, 0.15, BOTH_FACES_RUSTY"
    })
    void rustyFacesAreCounted(double innerShare, double outerShare, BrakeSign sign) {
        assertThat(BrakeLook.rust(innerShare, outerShare)).isEqualTo(sign);
    }
}
