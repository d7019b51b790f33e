package cornerbook.app.exchange;

import java.util.List;

/**
 * One field of a car as the schema of the visit file has it.
 *
 * @param pointer JSON pointer of its place in the file, as "/vehicle/frontAxle/axleLoad"
 * @param group JSON pointer of the object that it is in
 * @param name its own name, as "axleLoad"
 * @param kind how it stands in the file
 * @param unit of a quantity or a measure that was written without one; empty for none
 * @param hint what it is, one sentence
 * @param choices the words that may stand there; empty for free text
 * @param required whether the object that it is in cannot be without it
 */
public record CarField(
        String pointer,
        String group,
        String name,
        Kind kind,
        String unit,
        String hint,
        List<String> choices,
        boolean required) {
    /** How a field stands in the file. */
    public enum Kind {
        TEXT,
        QUANTITY,
        NUMBER,
        FLAG,
        DATE
    }

    public CarField {
        choices = List.copyOf(choices);
    }
}
