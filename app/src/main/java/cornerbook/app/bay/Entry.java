package cornerbook.app.bay;

import cornerbook.app.bay.BaySaid.Wanted;
import cornerbook.app.text.PlainText;
import cornerbook.core.say.Said;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * One entry as a tablet sent it, read part by part.
 *
 * @param where JSON pointer to it
 */
record Entry(JsonNode node, String where) {
    private static final int LONGEST = 200;

    /** A few sentences of a person's own. */
    private static final int LONGEST_WORDS = 1000;

    /** Of a check: each fastener of four wheels, and their torques. */
    private static final int MOST_TEXTS = 200;

    /** Born at the tablet. */
    String id() {
        return read("id", Wanted.IDENTITY, text -> UUID.fromString(text).toString());
    }

    Instant madeAt() {
        return read("at", Wanted.MOMENT, Instant::parse);
    }

    String person() {
        return text("person");
    }

    /** A text that is there and not blank. */
    String text(String name) {
        return read(name, new BaySaid.Line(LONGEST), text -> text);
    }

    /** A person's own words. */
    String words() {
        return read(node.path("words"), "words", LONGEST_WORDS, new BaySaid.Line(LONGEST_WORDS), text -> text);
    }

    @Nullable
    String optionalText(String name) {
        return node.path(name).isMissingNode() || node.path(name).isNull() ? null : text(name);
    }

    /** Texts of a list that may be left out. */
    List<String> texts(String name) {
        var list = node.path(name);
        if (!list.isMissingNode() && (!list.isArray() || list.size() > MOST_TEXTS)) {
            throw refused(name, new BaySaid.Lines(MOST_TEXTS));
        }
        return IntStream.range(0, list.size())
                .mapToObj(i -> new Entry(list, where + "/" + name).text(i))
                .toList();
    }

    private String text(int place) {
        return read(node.path(place), String.valueOf(place), LONGEST, new BaySaid.Line(LONGEST), text -> text);
    }

    /** A text that may be empty. */
    String mark(String name) {
        return node.path(name).asString("").isBlank() ? "" : text(name);
    }

    boolean flag(String name) {
        if (!node.path(name).isBoolean()) {
            throw refused(name, Wanted.FLAG);
        }
        return node.path(name).booleanValue();
    }

    /** Not set where it is left out. */
    boolean optionalFlag(String name) {
        return !node.path(name).isMissingNode() && flag(name);
    }

    <E extends Enum<E>> E word(String name, Class<E> words) {
        var all = Arrays.stream(words.getEnumConstants())
                .map(Enum::name)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        return read(name, new BaySaid.OneOf(all), text -> Enum.valueOf(words, text));
    }

    @Nullable
    <E extends Enum<E>> E optionalWord(String name, Class<E> words) {
        return node.path(name).isMissingNode() || node.path(name).isNull() ? null : word(name, words);
    }

    /** Another object inside. */
    Entry child(String name) {
        if (!node.path(name).isObject()) {
            throw refused(name, Wanted.OBJECT);
        }
        return new Entry(node.path(name), where + "/" + name);
    }

    RefusedEntry refused(String name, Said expected) {
        return new RefusedEntry(where + "/" + name, new BaySaid.NotUnderstood(name.toLowerCase(Locale.ROOT), expected));
    }

    private <T> T read(String name, Said expected, Function<String, T> parse) {
        return read(node.path(name), name, LONGEST, expected, parse);
    }

    private <T> T read(JsonNode part, String name, int longest, Said expected, Function<String, T> parse) {
        var text = part.isString() ? part.stringValue().strip() : "";
        PlainText.findUnfit(text).ifPresent(unfit -> {
            throw new RefusedEntry(where + "/" + name, new BaySaid.UnfitText(name.toLowerCase(Locale.ROOT), unfit));
        });
        if (text.isEmpty() || text.length() > longest) {
            throw refused(name, expected);
        }
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw refused(name, expected);
        }
    }
}
