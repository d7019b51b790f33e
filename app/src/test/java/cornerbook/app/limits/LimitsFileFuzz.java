package cornerbook.app.limits;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import cornerbook.core.finding.Limit;
import java.util.List;

/** A text is a list of limits above nothing, or is refused with a sentence. */
public final class LimitsFileFuzz implements FuzzTarget {
    @Override
    public void take(byte[] input) {
        var text = new Input(input).text();
        List<Limit> limits;
        try {
            limits = LimitsFile.parse(text);
        } catch (IllegalArgumentException e) {
            Sentences.check(e.getMessage(), text);
            return;
        }
        assertThat(limits)
                .allSatisfy(limit -> assertThat(limit.value()).isPositive().isFinite());
    }
}
