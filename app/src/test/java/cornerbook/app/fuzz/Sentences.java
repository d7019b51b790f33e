package cornerbook.app.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a refusal says to a person: one sentence of theirs, not the program's. */
public final class Sentences {
    /** Room for the longest list of words to choose from; what people wrote is cut before it fills that. */
    private static final int LONGEST = 1200;

    /** Names of classes and what the JDK says to programmers. */
    private static final Pattern FOR_PROGRAMMERS = Pattern.compile(
            "\\b(?:java|cornerbook|tools|com|org)\\.\\w+|\\w(?:Exception|Error)\\b|For input string|\\bnull\\b|out of bounds|@[0-9a-f]{6}|NaN|Infinity");

    private Sentences() {}

    /**
     * Refuses what is no sentence for people.
     *
     * @param input what it is about: words of that may be quoted
     */
    public static void check(@Nullable String sentence, String input) {
        var said = Objects.requireNonNullElse(sentence, "");
        assertThat(said).isNotBlank().hasSizeLessThanOrEqualTo(LONGEST);
        assertThat(said.lines()).as(said).hasSize(1);
        FOR_PROGRAMMERS
                .matcher(said)
                .results()
                .filter(match -> !plain(input).contains(plain(match.group())))
                .findFirst()
                .ifPresent(match -> {
                    throw new AssertionError("\"%s\" in: %s".formatted(match.group(), said));
                });
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s\\p{Cntrl}\u00a0\u2007\u2009\u202f]+", "").toLowerCase(Locale.ROOT);
    }
}
