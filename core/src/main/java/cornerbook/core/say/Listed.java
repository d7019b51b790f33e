package cornerbook.core.say;

import java.util.Arrays;
import java.util.List;

/**
 * Several things in their order.
 *
 * @param join how they are told: "a, b and c", "a, b or c", "a, b, c", "a; b; c", or one sentence after the other
 */
public record Listed(List<Said> items, Join join) implements Said {
    public Listed {
        items = List.copyOf(items);
    }

    /** How the items of a list are told. */
    public enum Join {
        AND,
        OR,
        COMMAS,
        SEMICOLONS,
        SENTENCES
    }

    public static Listed and(List<? extends Said> items) {
        return new Listed(List.copyOf(items), Join.AND);
    }

    public static Listed or(List<? extends Said> items) {
        return new Listed(List.copyOf(items), Join.OR);
    }

    public static Listed commas(List<? extends Said> items) {
        return new Listed(List.copyOf(items), Join.COMMAS);
    }

    /** Of what may have commas itself. */
    public static Listed semicolons(List<? extends Said> items) {
        return new Listed(List.copyOf(items), Join.SEMICOLONS);
    }

    /** One sentence after the other. */
    public static Listed sentences(List<? extends Said> items) {
        return new Listed(List.copyOf(items), Join.SENTENCES);
    }

    /** One sentence after the other. */
    public static Listed sentences(Said... items) {
        return new Listed(Arrays.asList(items), Join.SENTENCES);
    }
}
