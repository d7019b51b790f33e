package cornerbook.core.release;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.price.Job;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which entries of the bay sheet are work that a customer pays for. */
class ChargedWorkTest {
    @Test
    void padsAreOneJobForTheirAxleAndAHoseIsOneForItsCorner() {
        assertThat(ChargedWork.of(Measure.PADS_REPLACED, Corner.LF))
                .isEqualTo(ChargedWork.of(Measure.PADS_REPLACED, Corner.RF))
                .hasValueSatisfying(work -> {
                    assertThat(work.key()).isEqualTo("PADS.FRONT");
                    assertThat(work.places()).containsExactly("PADS_REPLACED.LF", "PADS_REPLACED.RF");
                });
        assertThat(ChargedWork.of(Measure.BRAKE_HOSE_REPLACED, Corner.LR)
                        .orElseThrow()
                        .key())
                .isEqualTo("BRAKE_HOSE.LR");
        assertThat(ChargedWork.of(Measure.BRAKE_FLUID_REPLACED, null)
                        .orElseThrow()
                        .places())
                .containsExactly("BRAKE_FLUID_REPLACED.");
    }

    /** What is measured, and what a visit does of itself, is never charged by itself. */
    @Test
    void measuringAndTheServiceItselfAreNone() {
        assertThat(List.of(Measure.values()).stream()
                        .filter(measure -> ChargedWork.of(measure, Corner.LF).isPresent()))
                .containsExactlyInAnyOrder(
                        Measure.PADS_REPLACED,
                        Measure.DISC_REPLACED,
                        Measure.SHOES_REPLACED,
                        Measure.DRUM_REPLACED,
                        Measure.BRAKE_HOSE_REPLACED,
                        Measure.BRAKE_FLUID_REPLACED,
                        Measure.PUNCTURE_REPAIRED);
    }

    @ParameterizedTest
    @CsvSource({
        "PAD.LF.REPLACE_PAIR, PADS.FRONT",
        "DISC.RR.REPLACE_PAIR.2, DISCS.REAR",
        "BRAKE_LINE.LR.REPLACE, BRAKE_HOSE.LR",
        "BRAKE_FLUID.REPLACE, BRAKE_FLUID",
        "TYRE_DAMAGE.RF.W.1.REPAIR, TYRE_REPAIR.RF",
        "PRESSURE.LF.W1.FIND_LEAK, TYRE_REPAIR.LF"
    })
    void anAdviceSaysByItsKeyWhatItAsksFor(String advice, String work) {
        assertThat(ChargedWork.ofAdvice(advice)).extracting(ChargedWork::key).containsExactly(work);
    }

    @ParameterizedTest
    @CsvSource({"PAD.LF.SERVICE_BRAKE", "PAD.LF.ORDER", "BATTERY.REPLACE", "OWN", "WIPERS"})
    void anAdviceForAnythingElseNamesNoneOfIt(String advice) {
        assertThat(ChargedWork.ofAdvice(advice)).isEmpty();
    }

    @Test
    void eachIsFoundByItsKey() {
        for (var job : Job.values()) {
            for (var work : ChargedWork.of(job, List.of())) {
                assertThat(ChargedWork.find(work.key())).contains(work);
            }
        }
        assertThat(ChargedWork.find("PADS")).isEmpty();
        assertThat(ChargedWork.of(Job.WHEELS, List.of()))
                .as("the visit's own work")
                .isEmpty();
    }
}
