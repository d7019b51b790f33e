package cornerbook.app.bench;

import cornerbook.words.Reader;
import cornerbook.core.say.Refused;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.season.Climate;
import cornerbook.words.Shown;
import cornerbook.words.UnitSystem;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a person wrote for a calculator, read one by one.
 *
 * @param typed by name of the question; what is not there was not given
 * @param system the units of bare numbers
 * @param shown how the answers are shown
 * @param today the day of the question
 * @param climate of the place; null where it is not known
 */
public record Given(
        Question question,
        Map<String, List<String>> typed,
        UnitSystem system,
        Shown shown,
        LocalDate today,
        @Nullable Climate climate) {
    public Given {
        typed = typed.entrySet().stream()
                .collect(Collectors.toUnmodifiableMap(
                        Map.Entry::getKey,
                        entry -> entry.getValue().stream()
                                .map(String::strip)
                                .filter(text -> !text.isEmpty())
                                .toList()));
    }

    /** Refuses what cannot be read, also where no answer needs it. */
    void requireReadable(Ask ask) {
        switch (ask.kind()) {
            case Ask.Quantity quantity -> find(ask.name());
            case Ask.Count count -> findNumber(ask.name());
            case Ask.Choice choice -> findChoice(ask.name(), choice);
            case Ask.Day day -> findDay(ask.name());
            case Ask.Words words -> {}
            case Ask.Tick tick -> {}
            case Ask.Several several -> {}
        }
    }

    /**
     * The answers of one group.
     *
     * @throws AskException when something of it cannot be read or is missing
     * @throws IllegalArgumentException with one sentence when core refuses
     */
    public List<Part> answer(Group group) {
        question.common().forEach(this::requireReadable);
        group.asks().forEach(this::requireReadable);
        return group.answer().apply(this);
    }

    /** The question that a sentence of core is about; empty when it is about none alone. */
    public Optional<Ask> askOf(Group group, String sentence) {
        return Stream.concat(group.asks().stream(), question.common().stream())
                .filter(ask -> !ask.corePart().isEmpty() && sentence.startsWith(ask.corePart()))
                .max(Comparator.comparingInt(ask -> ask.corePart().length()));
    }

    /** Whether any of these was given. */
    boolean any(String... names) {
        return Arrays.stream(names)
                .anyMatch(name -> !typed.getOrDefault(name, List.of()).isEmpty());
    }

    /** The value in the book's unit. */
    double quantity(String name) {
        return needed(name, find(name));
    }

    double quantity(String name, double otherwise) {
        return Objects.requireNonNullElse(find(name), otherwise);
    }

    /** The value in the book's unit; null when it was not given. */
    @Nullable
    Double find(String name) {
        var ask = ask(name);
        if (!(ask.kind() instanceof Ask.Quantity quantity)) {
            throw new IllegalStateException(name + " asks for no quantity");
        }
        return read(name, text -> quantity(text, quantity.bookUnit())).orElse(null);
    }

    /** A quantity inside other words; a bare number is in this person's unit. */
    double quantity(String text, String bookUnit) {
        return Quantities.parse(system.withUnit(text, bookUnit), bookUnit);
    }

    double number(String name) {
        return needed(name, findNumber(name));
    }

    double number(String name, double otherwise) {
        return Objects.requireNonNullElse(findNumber(name), otherwise);
    }

    @Nullable
    Double findNumber(String name) {
        return read(name, text -> {
                    try {
                        return Double.valueOf(
                                text.replace(',', '.').replace('−', '-').replaceFirst("\\s*%$", ""));
                    } catch (NumberFormatException e) {
                        throw new IllegalArgumentException("%s is not a number".formatted(Quoted.of(text)), e);
                    }
                })
                .filter(Double::isFinite)
                .orElse(null);
    }

    int whole(String name) {
        return needed(name, findWhole(name));
    }

    @Nullable
    Integer findWhole(String name) {
        return read(name, text -> {
                    if (!text.matches("\\d{1,6}")) {
                        throw new IllegalArgumentException("%s is not a whole number".formatted(Quoted.of(text)));
                    }
                    return Integer.valueOf(text);
                })
                .orElse(null);
    }

    String words(String name) {
        return needed(name, read(name, text -> text).orElse(null));
    }

    Optional<String> findWords(String name) {
        return read(name, text -> text);
    }

    /** Words of a form of their own as what they mean. A sentence of the parser's stands at their field. */
    <T> T reading(String name, Function<String, T> parser) {
        return needed(name, read(name, parser).orElse(null));
    }

    List<String> several(String name) {
        return typed.getOrDefault(name, List.of());
    }

    boolean ticked(String name) {
        return any(name);
    }

    LocalDate day(String name) {
        return needed(name, findDay(name).orElse(null));
    }

    private Optional<LocalDate> findDay(String name) {
        return read(name, text -> {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException e) {
                throw new IllegalArgumentException(
                        "%s is no day, expected one as %s".formatted(Quoted.of(text), today), e);
            }
        });
    }

    /** The constant whose word was chosen; small or capital letters do not matter. */
    <E extends Enum<E>> Optional<E> choice(String name, Class<E> type) {
        return ask(name).kind() instanceof Ask.Choice choice
                ? findChoice(name, choice).map(word -> Enum.valueOf(type, word.toUpperCase(Locale.ROOT)))
                : Optional.empty();
    }

    <E extends Enum<E>> E neededChoice(String name, Class<E> type) {
        return needed(name, choice(name, type).orElse(null));
    }

    private Optional<String> findChoice(String name, Ask.Choice choice) {
        return read(
                name,
                text -> choice.words().stream()
                        .filter(text::equalsIgnoreCase)
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("%s is %s, expected one of %s"
                                .formatted(ask(name).corePart(), Quoted.of(text), String.join(" ", choice.words())))));
    }

    private <T> T needed(String name, @Nullable T value) {
        if (value == null) {
            throw AskException.missing(ask(name));
        }
        return value;
    }

    private <T> Optional<T> read(String name, Function<String, T> reader) {
        var texts = typed.getOrDefault(name, List.of());
        if (texts.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(reader.apply(texts.getFirst()));
        } catch (IllegalArgumentException e) {
            throw new AskException(name, Reader.DEFAULT.say(Refused.said(e)));
        }
    }

    private Ask ask(String name) {
        return question.asks().stream()
                .filter(ask -> ask.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing asks for " + name));
    }
}
