package cornerbook.app.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "\ud800", "x\udc00y", "\ud83d", "\u0007", "\u001b[2J", "\uffff"})
    void whatNoBookCanKeepIsFoundInEachKindOfText(String text) {
        assertThat(PlainText.findUnfit(text)).isPresent();
        assertThat(PlainText.findUnfitInLines(text)).isPresent();
    }

    @Test
    void lettersOfAllScriptsAndPairsAreText() {
        assertThat(PlainText.findUnfit("Ærø 8,7 mm – 鈴木 \ud83d\ude97 \u200d")).isEmpty();
        assertThat(PlainText.findUnfitInLines("two\r\n\tlines")).isEmpty();
        assertThat(PlainText.findUnfitInLines("\u009b")).isEmpty();
        assertThat(PlainText.findUnfit("two\nlines")).contains(new UnfitCharacter("U+000A"));
        assertThat(PlainText.findUnfit("\u009b")).contains(new UnfitCharacter("U+009B"));
    }

    @Test
    void nameOfAFieldIsShownWithoutThemAndShort() {
        assertThat(PlainText.shown("a\u0000\ud800b" + "c".repeat(100))).isEqualTo("ab" + "c".repeat(58) + "…");
    }
}
