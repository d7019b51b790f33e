package cornerbook.core.tread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.quantity.QuantitySaid.OutOfRange;
import cornerbook.core.say.Refused;
import cornerbook.core.tread.AxleAlignment.Life;
import cornerbook.core.tread.AxleAlignment.StillGoes;
import cornerbook.core.tread.AxlePattern.Cause;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxleAlignmentTest {
    private static final Life LIFE = new Life(8, 1.6, 24_000.0);

    private static TreadAcross across(double inner, double centre, double outer) {
        return new TreadAcross(inner, centre, outer);
    }

    /**
     * Feathering and wear of the inner edges speak for toe out, of the outer ones for toe in; negative camber wears the inside edge
     * of its wheel, positive the outside one; too little air both shoulders, too much the centre: a tyre dealer's and a technicians'
     * study guide's pages on tread wear.
     */
    @ParameterizedTest
    @CsvSource({
        "4.1,6.0,6.3, 4.0,6.1,6.2, BOTH_INNER",
        "6.3,6.0,4.1, 6.2,6.1,4.0, BOTH_OUTER",
        "4.1,6.0,6.1, 6.0,6.1,6.2, LEFT_INNER",
        "6.1,6.0,4.1, 6.0,6.1,6.2, LEFT_OUTER",
        "6.1,6.0,6.1, 4.0,6.1,6.2, RIGHT_INNER",
        "6.1,6.0,6.1, 6.0,6.1,4.2, RIGHT_OUTER",
        "4.6,6.0,4.5, 4.4,6.1,4.6, SHOULDERS",
        "6.0,4.5,6.1, 6.1,4.4,6.0, CENTRES"
    })
    void patternsOfTheTrade(double li, double lc, double lo, double ri, double rc, double ro, Cause cause) {
        var alignment = AxleAlignment.of(across(li, lc, lo), across(ri, rc, ro), LIFE);
        assertThat(alignment.cause()).isEqualTo(cause);
        assertThat(alignment.named()).isTrue();
        assertThat(alignment.stillGoes() != null)
                .as("a distance where the alignment is at fault")
                .isEqualTo(cause.isAlignment());
        assertThat(alignment.cautions().contains(AlignmentSaid.Caution.LOOK_FOR_PLAY))
                .isEqualTo(cause.isAlignment());
        assertThat(alignment.chances().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    /** By hand: 4.0 mm were worn in 24 000 km, 2.4 mm are left: 14 400 km; elsewhere 1.85 mm were worn: 31 135 km. */
    @Test
    void theLowestGrooveEndsATyre() {
        var stillGoes = stillGoes(across(4.1, 6.0, 6.3), across(4.0, 6.1, 6.2));
        assertThat(stillGoes.asItIsKm()).isCloseTo(14_400, within(1.0));
        assertThat(stillGoes.setRightKm()).isCloseTo(31_135, within(1.0));
        assertThat(stillGoes(across(1.2, 6.0, 6.3), across(1.0, 6.1, 6.2)).asItIsKm())
                .as("worn out")
                .isZero();
        assertThat(AxleAlignment.of(across(4.1, 6.0, 6.3), across(4.0, 6.1, 6.2), new Life(8, 1.6, null))
                        .stillGoes())
                .as("distance run not known")
                .isNull();
    }

    private static StillGoes stillGoes(TreadAcross left, TreadAcross right) {
        return Objects.requireNonNull(AxleAlignment.of(left, right, LIFE).stillGoes());
    }

    @Test
    void leftAndRightAreAlike() {
        var one = AxleAlignment.of(across(4.8, 6.0, 6.3), across(5.5, 6.1, 6.2), LIFE);
        var other = AxleAlignment.of(across(5.5, 6.1, 6.2), across(4.8, 6.0, 6.3), LIFE);
        assertThat(other.chances().get(Cause.RIGHT_INNER))
                .isCloseTo(one.chances().get(Cause.LEFT_INNER), within(1e-12));
        assertThat(other.chances().get(Cause.BOTH_INNER))
                .isCloseTo(one.chances().get(Cause.BOTH_INNER), within(1e-12));
    }

    /** Sound axles: grooves 5 % of the wear apart, read to 0.15 mm. Nobody is sent to the alignment bench for nothing, but seldom. */
    @Test
    void soundAxlesAreSeldomNamed() {
        var random = new Random(7);
        int named = 0;
        int axles = 2000;
        for (int i = 0; i < axles; i++) {
            double worn = 1 + 4 * random.nextDouble();
            var alignment = AxleAlignment.of(sound(random, worn), sound(random, worn), new Life(9, 1.6, null));
            named += alignment.named() ? 1 : 0;
        }
        assertThat(named).isLessThan(axles / 100);
    }

    private static TreadAcross sound(Random random, double wornMm) {
        return across(groove(random, wornMm), groove(random, wornMm), groove(random, wornMm));
    }

    private static double groove(Random random, double wornMm) {
        return Math.min(9, 9 - wornMm + random.nextGaussian() * Math.hypot(0.15, 0.05 * wornMm));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> AxleAlignment.of(across(8.2, 6, 6), across(6, 6, 6), LIFE))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said()).isInstanceOf(AlignmentSaid.DeeperThanNew.class));
        assertThatThrownBy(() -> across(-1, 6, 6))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(OutOfRange.class));
        assertThatThrownBy(() -> new Life(8, 1.6, 5.0))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(OutOfRange.class));
    }
}
