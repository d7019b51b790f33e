package cornerbook.app.sheet;

import java.util.List;

/**
 * The first of some lines.
 *
 * @param more how many were left out
 */
public record Lines(List<String> first, int more) {
    public Lines {
        first = List.copyOf(first);
    }

    static Lines of(List<String> all, int most) {
        int shown = Math.min(all.size(), most);
        return new Lines(all.subList(0, shown), all.size() - shown);
    }

    public boolean isEmpty() {
        return first.isEmpty();
    }
}
