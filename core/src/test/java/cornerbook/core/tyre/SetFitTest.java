package cornerbook.core.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import cornerbook.core.quantity.QuantitySaid;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.why.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Another set of wheels on an invented car's hubs; what may differ by is common practice, no source, unless a source is named. */
class SetFitTest {
    private static final Mounting CAR = Mounting.parse("5x114.3 M14x1.5 cone 64.1 ET45 7.5J");

    /** Bolt circles and bores that differ by a tenth of a millimetre are one. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5x114.38 M14x1.5 cone 64.1 ET45 7.5J | true",
                "5x114.5 M14x1.5 cone 64.1 ET45 7.5J | false",
                "5x114.1 M14x1.5 cone 64.1 ET45 7.5J | false",
                "4x114.3 M14x1.5 cone 64.1 ET45 7.5J | false",
                "5x114.3 M14x1.5 cone 64.05 ET45 7.5J | true",
                "5x114.3 M14x1.5 cone 63.9 ET45 7.5J | false"
            })
    void holesCircleAndBoreHaveToAgree(String wheel, boolean mounts) {
        assertThat(SetFit.of(CAR, Mounting.parse(wheel)).mounts()).isEqualTo(mounts);
    }

    /** Less than 3 mm to the caliper is too little. */
    @ParameterizedTest
    @CsvSource({"2.9, false", "3, true", "12, true"})
    void theGapToTheCaliperDecides(double gapMm, boolean mounts) {
        var fit = SetFit.of(CAR, CAR, gapMm);
        assertThat(fit.mounts()).isEqualTo(mounts);
        assertThat(fit.cautions().stream().anyMatch(caution -> caution instanceof TyreSaid.CaliperTooNear))
                .isNotEqualTo(mounts);
    }

    @Test
    void aGapThatCannotBeIsRefused() {
        assertThat(catchThrowableOfType(Refused.class, () -> SetFit.of(CAR, CAR, -1.0))
                        .said())
                .isEqualTo(new QuantitySaid.OutOfRange(
                        TyreSaid.Input.CALIPER_GAP, new Amount(-1, "mm", 0), new Between(0, 100, "mm", 0)));
    }

    /** A bore a millimetre wider than the hub leaves the wheel to its fasteners: half a millimetre has to be filled all round. */
    @ParameterizedTest
    @CsvSource({"64.1, false", "64.15, false", "65.1, true"})
    void aWiderBoreNeedsARing(String bore, boolean ring) {
        var fit = SetFit.of(CAR, Mounting.parse("5x114.3 M14x1.5 cone %s ET45 7.5J".formatted(bore)));
        assertThat(fit.mounts()).isTrue();
        assertThat(fit.cautions().stream().anyMatch(caution -> caution instanceof TyreSaid.NeedsHubRing))
                .isEqualTo(ring);
    }

    /** By geometry: an inch wider is 12.7 mm at each edge; 20 mm less ET moves the whole rim outward by 20 mm. */
    @Test
    void widthAndOffsetMoveTheEdges() {
        var narrower = SetFit.of(CAR, Mounting.parse("5x114.3 M14x1.5 cone 64.1 ET45 7J"));
        assertThat(narrower.cautions())
                .as("a narrower rim comes nowhere nearer")
                .isEmpty();
        for (var offset : new String[] {"ET25", "ET65"}) {
            assertThat(SetFit.of(CAR, Mounting.parse("5x114.3 M14x1.5 cone 64.1 %s 7.5J".formatted(offset)))
                            .cautions())
                    .as("one edge comes nearer with " + offset)
                    .containsExactly(TyreSaid.Caution.RIM_COMES_NEARER);
        }
        var wider = SetFit.of(CAR, Mounting.parse("5x114.3 M14x1.5 cone 64.1 ET25 8.5J"));
        assertThat(wider.steps())
                .extracting(Step::what, step -> (double) Math.round(step.value() * 10) / 10)
                .contains(tuple(TyreSaid.Computed.INNER_EDGE, -7.3), tuple(TyreSaid.Computed.OUTER_EDGE, 32.7));
    }
}
