package cornerbook.app.bench;

import cornerbook.core.quantity.AboutPart;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.season.Climate;
import cornerbook.words.UnitSystem;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a person wrote for a calculator, read one by one.
 *
 * @param typed by name of the question; what is not there was not given
 * @param system the units of bare numbers
 * @param inBothUnits whether the answers tell quantities in the units of the trade too
 * @param today the day of the question
 * @param climate of the place; null where it is not known
 */
public record Given(
        Question question,
        Map<String, List<String>> typed,
        UnitSystem system,
        boolean inBothUnits,
        LocalDate today,
        @Nullable Climate climate) {
    /** Units of the trade that are read in tenths. */
    private static final Set<String> TENTHS = Set.of("in", "psi");

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
     * @throws AskException when something of it cannot be read, cannot be or is missing
     * @throws IllegalArgumentException when core refuses what belongs to no single question
     */
    public List<Part> answer(Group group) {
        question.common().forEach(this::requireReadable);
        group.asks().forEach(this::requireReadable);
        try {
            return group.answer().apply(this);
        } catch (AskException unread) {
            throw unread;
        } catch (IllegalArgumentException refusal) {
            var said = Refused.said(refusal);
            throw askOf(said, Stream.concat(group.asks().stream(), question.common().stream()))
                    .<IllegalArgumentException>map(ask -> AskException.refused(ask.name(), said))
                    .orElse(refusal);
        }
    }

    /** The question that a refusal of core is about; empty when it is about none alone. */
    private static Optional<Ask> askOf(Said refusal, Stream<Ask> asks) {
        return refusal instanceof AboutPart refused
                ? asks.filter(ask -> refused.what().equals(ask.about())).findFirst()
                : Optional.empty();
    }

    /** What core computes; what it refuses and is about no other question stands at this one. */
    <T> T at(String name, Supplier<T> computed) {
        try {
            return computed.get();
        } catch (AskException unread) {
            throw unread;
        } catch (IllegalArgumentException refusal) {
            var said = Refused.said(refusal);
            throw askOf(said, question.asks().stream()).isPresent() ? refusal : AskException.refused(name, said);
        }
    }

    /** The same where nothing is computed but only refused. */
    void at(String name, Runnable checked) {
        at(name, () -> {
            checked.run();
            return true;
        });
    }

    /** A quantity of an answer, told in whole units of the book, and in those of the trade beside it where both are asked for. */
    Said told(double value, String bookUnit) {
        var amount = new Amount(value, bookUnit, 0);
        var unit = UnitSystem.US.unitOf(bookUnit);
        return !inBothUnits || unit.equals(bookUnit)
                ? amount
                : new AnswerSaid.InBothUnits(
                        amount, new Amount(UnitSystem.US.in(value, bookUnit), unit, TENTHS.contains(unit) ? 1 : 0));
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
                        throw new Refused(new RefusalSaid.NoNumber(Quoted.of(text)));
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
                        throw new Refused(new RefusalSaid.NoWholeNumber(Quoted.of(text)));
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

    /** Words of a form of their own as what they mean, where they were given. */
    <T> Optional<T> findReading(String name, Function<String, T> parser) {
        return read(name, parser);
    }

    /** Words of a form of their own as what they mean. A sentence of the parser's stands at their field. */
    <T> T reading(String name, Function<String, T> parser) {
        return needed(name, read(name, parser).orElse(null));
    }

    /** What may be answered several times. */
    <T> List<T> several(String name, Function<String, T> parser) {
        return typed.getOrDefault(name, List.of()).stream()
                .map(text -> parsed(name, text, parser))
                .toList();
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
                throw new Refused(new RefusalSaid.NoDay(Quoted.of(text), today.toString()));
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
                        .orElseThrow(() -> new Refused(
                                new RefusalSaid.NotOffered(Quoted.of(text), String.join(" ", choice.words())))));
    }

    private <T> T needed(String name, @Nullable T value) {
        if (value == null) {
            throw AskException.missing(ask(name));
        }
        return value;
    }

    private <T> Optional<T> read(String name, Function<String, T> reader) {
        return typed.getOrDefault(name, List.of()).stream().findFirst().map(text -> parsed(name, text, reader));
    }

    private static <T> T parsed(String name, String text, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (IllegalArgumentException e) {
            throw AskException.unread(name, Refused.said(e));
        }
    }

    private Ask ask(String name) {
        return question.asks().stream()
                .filter(ask -> ask.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing asks for " + name));
    }
}
