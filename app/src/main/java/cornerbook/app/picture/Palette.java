package cornerbook.app.picture;

import cornerbook.core.finding.Verdict;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The colours of the house: slate, ochre and plum on paper white. Each stands at 4.5:1 or more against the paper (WCAG
 * 2.2, success criterion 1.4.3), the hairlines apart, which carry no meaning.
 */
public final class Palette {
    private static final String TOKENS = "/cornerbook/app/assets/tokens.css";
    private static final Map<String, String> BY_DAY = read();

    public static final String PAPER = byDay("paper");
    public static final String INK = byDay("ink");
    public static final String SLATE = byDay("slate");
    public static final String OCHRE = byDay("ochre");
    public static final String PLUM = byDay("plum");
    /** Hairlines, and the body of the car. */
    public static final String HAIRLINE = byDay("hairline");
    /** Rubber, and the faces that something else is drawn on. */
    public static final String SHADE = byDay("shade");

    /** The band in which a value may lie. */
    public static final String BAND = byDay("band");

    private Palette() {}

    private static String byDay(String token) {
        return Objects.requireNonNull(BY_DAY.get(token), token);
    }

    /** The colours of the pages, as they are by day. */
    private static Map<String, String> read() {
        try (var stream = Palette.class.getResourceAsStream(TOKENS)) {
            var tokens = new String(Objects.requireNonNull(stream, TOKENS).readAllBytes(), StandardCharsets.UTF_8);
            return Pattern.compile("--([a-z-]+): (?:light-dark\\()?(#[0-9a-f]{6})")
                    .matcher(tokens)
                    .results()
                    .collect(Collectors.toUnmodifiableMap(token -> token.group(1), token -> token.group(2)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The colour of a verdict; the shape of its mark and its word say the same. */
    public static String of(Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> SLATE;
            case RUNS_OUT -> OCHRE;
            case SPENT, UNSAFE -> PLUM;
        };
    }
}
