package cornerbook.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import cornerbook.core.season.Climate;

/** A text is a climate that reads back equal once it is written, or is refused with a sentence. */
public final class ClimateFileFuzz implements FuzzTarget {
    @Override
    public void take(byte[] input) {
        var text = new Input(input).text();
        Climate climate;
        try {
            climate = ClimateFile.parse(text);
        } catch (IllegalArgumentException e) {
            Sentences.check(InEnglish.told(e), text);
            return;
        }
        assertThat(ClimateFile.parse(ClimateFile.write(climate))).isEqualTo(climate);
    }
}
