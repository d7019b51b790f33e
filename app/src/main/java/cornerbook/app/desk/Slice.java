package cornerbook.app.desk;

import java.util.List;

/**
 * A part of a list that is too long for a page.
 *
 * @param from how many stand before it
 * @param all how many the whole list has
 * @param most how many one part has
 */
public record Slice<T>(List<T> list, int from, int all, int most) {
    public Slice {
        list = List.copyOf(list);
    }

    /** How many stand before its end. */
    public int to() {
        return from + list.size();
    }

    /** How many stand before the part before this. */
    public int previous() {
        return Math.max(0, from - most);
    }

    /** Whether it is the whole list. */
    public boolean isAll() {
        return from == 0 && list.size() == all;
    }
}
