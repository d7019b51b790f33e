package cornerbook.app.bench;

import java.util.List;

/**
 * One thing that a calculator asks for.
 *
 * @param name in addresses and, after two dashes, on the command line: "gauge-offset"
 * @param label above the field
 * @param help one sentence: what it is, and what is taken when it is not given
 * @param corePart the words with which core begins a sentence about it: "wrench length"; empty when it has none
 */
public record Ask(String name, String label, Kind kind, String help, String corePart) {
    /** What may be written. */
    public sealed interface Kind {}

    /** A quantity; a bare number is in the person's unit for {@code bookUnit}. */
    public record Quantity(String bookUnit) implements Kind {}

    /** A plain number with what it counts, as "%", "h" or nothing. */
    public record Count(String unit) implements Kind {}

    /** Words of a form of their own, as {@code example}; {@code wide} when they need room. */
    public record Words(String example, boolean wide) implements Kind {}

    /** One of these words. */
    public record Choice(List<String> words) implements Kind {
        public Choice {
            words = List.copyOf(words);
        }
    }

    /** A day, as 2026-04-17. */
    public record Day() implements Kind {}

    /** Yes, or nothing. */
    public record Tick() implements Kind {}

    /** Up to {@code most} words of a form of their own. */
    public record Several(String example, int most) implements Kind {}

    static Ask quantity(String name, String label, String bookUnit, String corePart, String help) {
        return new Ask(name, label, new Quantity(bookUnit), help, corePart);
    }

    static Ask number(String name, String label, String unit, String corePart, String help) {
        return new Ask(name, label, new Count(unit), help, corePart);
    }

    static Ask words(String name, String label, String example, String corePart, String help) {
        return new Ask(name, label, new Words(example, example.length() > 12), help, corePart);
    }

    static Ask choice(String name, String label, List<String> words, String corePart, String help) {
        return new Ask(name, label, new Choice(words), help, corePart);
    }
}
