package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import java.time.LocalDate;

/** A text is a car that reads back equal once it is written, or is refused with sentences that say where. */
public final class VisitFileFuzz implements FuzzTarget {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Override
    public void take(byte[] input) {
        var text = new Input(input).text();
        check(VisitFile.read(text, TODAY), text);
    }

    static void check(VisitFile.Result result, String text) {
        switch (result) {
            case VisitFile.Read read -> {
                var written = VisitFile.write(read.record());
                assertThat(VisitFile.read(written, TODAY)).as(written).isEqualTo(read);
            }
            case VisitFile.Refused refused -> {
                assertThat(refused.problems()).isNotEmpty();
                for (var problem : refused.problems()) {
                    Sentences.check(InEnglish.say(problem.message()), text);
                    assertThat(problem.where()).matches("(?s)(/.*)?");
                }
            }
        }
    }
}
