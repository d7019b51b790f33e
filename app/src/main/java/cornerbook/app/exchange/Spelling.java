package cornerbook.app.exchange;

import cornerbook.core.battery.Chemistry;
import java.util.Locale;

/** Names of constants as a visit file spells them: "tread depth", "all season". */
final class Spelling {
    private Spelling() {}

    static String of(Enum<?> constant) {
        return constant == Chemistry.EFB || constant == Chemistry.AGM
                ? constant.name()
                : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static <E extends Enum<E>> E constant(Class<E> type, String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }
}
