package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;

/** Every visit of a car that is accepted can be judged, in words and with finite numbers. */
public final class AssessedVisitFileFuzz implements FuzzTarget {
    private final EditedVisitFiles files = new EditedVisitFiles();
    private final Assessor assessor = new Assessor(LimitsFile.load());

    @Override
    public void take(byte[] input) {
        if (VisitFile.read(files.text(new Input(input)), VisitFileFuzz.TODAY) instanceof VisitFile.Read read) {
            for (var visit : read.history().visits()) {
                assertThat(assessor.assess(read.history(), visit.id())
                                .findings()
                                .toString())
                        .doesNotContain("NaN", "Infinity");
            }
        }
    }
}
