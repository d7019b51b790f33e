package cornerbook.app.picture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class PaletteTest {
    /** A picture is drawn by day; whatever colour it uses, a page by night has its own for it. */
    @Test
    void everyColourOfThePicturesFollowsTheLookOfThePage() throws IOException {
        var rules = tokens();
        Map.of(
                        "paper", Palette.PAPER,
                        "ink", Palette.INK,
                        "slate", Palette.SLATE,
                        "ochre", Palette.OCHRE,
                        "plum", Palette.PLUM,
                        "hairline", Palette.HAIRLINE,
                        "shade", Palette.SHADE,
                        "band", Palette.BAND)
                .forEach((token, colour) -> assertThat(rules)
                        .contains("main svg [fill=\"" + colour + "\"] { fill: var(--" + token + "); }")
                        .contains("main svg [stroke=\"" + colour + "\"] { stroke: var(--" + token + "); }")
                        .contains("--" + token + ": light-dark(" + colour + ", "));
    }

    private static String tokens() throws IOException {
        try (var stream = PaletteTest.class.getResourceAsStream("/cornerbook/app/assets/tokens.css")) {
            return new String(Objects.requireNonNull(stream).readAllBytes(), UTF_8);
        }
    }
}
