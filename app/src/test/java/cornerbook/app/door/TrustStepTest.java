package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The drawn steps that lead to a certificate that is trusted. */
class TrustStepTest {
    /** At 13 units a letter of the bold face is 8 wide, and the line has 230. */
    private static final int LETTERS_THAT_FIT = 28;

    @ParameterizedTest
    @EnumSource(ScreenWord.class)
    void everyLineFitsItsScreenInEachLanguage(ScreenWord word) {
        for (var language : Language.values()) {
            assertThat(new Reader(language, UnitSystem.METRIC, ZoneOffset.UTC).say(word))
                    .hasSizeLessThanOrEqualTo(LETTERS_THAT_FIT);
        }
    }

    @ParameterizedTest
    @EnumSource(TrustStep.class)
    void aPictureShowsTheLineAndSaysIt(TrustStep step) {
        assertThat(step.picture()).startsWith("<svg").contains("role=\"img\"", "the line to touch is");
    }
}
