package cornerbook.core.say;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.assertj.core.api.Assertions;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** What is said, for tests: its name and its facts with the digits that a person is told, as {@code OfRating(400 kg, 40 %, 1000 kg)}. */
public final class Facts {
    private Facts() {}

    /** Texts that stand as they are. */
    public static List<Said> texts(String... texts) {
        return Arrays.stream(texts).map(Said::verbatim).toList();
    }

    public static String of(Said said) {
        return fact(said);
    }

    /** The facts of a refusal. */
    public static String refused(ThrowingCallable asked) {
        var thrown = Assertions.catchThrowableOfType(Refused.class, asked);
        return thrown == null
                ? "nothing was refused"
                : of(Objects.requireNonNull(thrown).said());
    }

    private static String fact(Object fact) {
        return switch (fact) {
            case Amount amount -> number(amount.value(), amount.decimals()) + unit(amount.unit());
            case Margin margin -> number(margin.value(), margin.decimals()) + unit(margin.unit());
            case Between between ->
                number(between.lowest(), between.decimals()) + " to " + number(between.highest(), between.decimals())
                        + unit(between.unit());
            case Verbatim verbatim -> verbatim.text();
            case Enum<?> constant -> constant.name();
            case List<?> items -> items.stream().map(Facts::fact).collect(Collectors.joining(", ", "[", "]"));
            case Record record -> record.getClass().getSimpleName() + facts(record);
            default -> String.valueOf(fact);
        };
    }

    private static String facts(Record record) {
        return Arrays.stream(record.getClass().getRecordComponents())
                .map(component -> value(record, component))
                .collect(Collectors.joining(", ", "(", ")"));
    }

    private static String value(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            var value = component.getAccessor().invoke(record);
            return value == null ? "none" : fact(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " cannot be read", e);
        }
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String unit(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
