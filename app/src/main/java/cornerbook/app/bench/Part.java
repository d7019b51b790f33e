package cornerbook.app.bench;

import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import java.util.List;

/**
 * One part of an answer.
 *
 * @param name in JSON, as "setting"
 * @param lines the answer in sentences, without full stops
 * @param result the numbers, what to mind, and the steps
 */
public record Part(String name, List<Said> lines, Explained result) {
    public Part {
        lines = List.copyOf(lines);
    }

    static Part of(String name, Explained result, Said... lines) {
        return new Part(name, List.of(lines), result);
    }
}
