package cornerbook.app.bench;

import cornerbook.core.say.Said;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that a calculator asks for.
 *
 * @param name in addresses and, after two dashes, on the command line: "gauge-offset"
 * @param label above the field
 * @param help one sentence: what it is, and what is taken when it is not given
 * @param about what core calls it where it refuses it; null where core never refuses it by itself
 */
public record Ask(
        String name,
        Said label,
        Kind kind,
        Said help,
        @Nullable Said about) {
    /** What may be written. */
    public sealed interface Kind {}

    /** A quantity; a bare number is in the person's unit for {@code bookUnit}. */
    public record Quantity(String bookUnit) implements Kind {}

    /** A plain number with what it counts, as "%", "h" or nothing. */
    public record Count(String unit) implements Kind {}

    /** Words of a form of their own, as {@code example}; {@code wide} when they need room. */
    public record Words(Said example, boolean wide) implements Kind {}

    /** One of these words. */
    public record Choice(List<Option> options) implements Kind {
        public Choice {
            options = List.copyOf(options);
        }

        /** The words that may be written. */
        public List<String> words() {
            return options.stream().map(Option::word).toList();
        }
    }

    /**
     * What may be chosen.
     *
     * @param word as it is written in every language
     * @param shown as a person reads it
     */
    public record Option(String word, Said shown) {}

    /** A day, as 2026-04-17. */
    public record Day() implements Kind {}

    /** Yes, or nothing. */
    public record Tick() implements Kind {}

    /** Up to {@code most} words of a form of their own. */
    public record Several(Said example, int most) implements Kind {}

    static Ask quantity(String name, Said label, String bookUnit, @Nullable Said about, Said help) {
        return new Ask(name, label, new Quantity(bookUnit), help, about);
    }

    static Ask number(String name, Said label, String unit, @Nullable Said about, Said help) {
        return new Ask(name, label, new Count(unit), help, about);
    }

    static Ask words(String name, Said label, String example, Said help) {
        return new Ask(name, label, new Words(Said.verbatim(example), example.length() > 12), help, null);
    }

    static Ask choice(String name, Said label, List<Option> options, Said help) {
        return new Ask(name, label, new Choice(options), help, null);
    }
}
