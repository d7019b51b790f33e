package cornerbook.app.exchange;

import cornerbook.core.battery.Chemistry;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Names of constants as a visit file spells them: "tread depth", "all season". */
final class Spelling {
    /** Those of each kind by the word that is written for them. */
    private static final ClassValue<Map<String, Enum<?>>> BY_WORD = new ClassValue<>() {
        @Override
        protected Map<String, Enum<?>> computeValue(Class<?> type) {
            return Arrays.stream(type.getEnumConstants())
                    .map(constant -> (Enum<?>) constant)
                    .collect(Collectors.toUnmodifiableMap(Spelling::of, constant -> constant));
        }
    };

    private Spelling() {}

    static String of(Enum<?> constant) {
        return constant == Chemistry.EFB || constant == Chemistry.AGM
                ? constant.name()
                : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What a word is written for, as {@link #of} spells it; empty for any other, which {@link #constant} reads. */
    static <E extends Enum<E>> Optional<E> find(Class<E> type, String word) {
        return Optional.ofNullable(BY_WORD.get(type).get(word)).map(type::cast);
    }

    static <E extends Enum<E>> E constant(Class<E> type, String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }
}
