package cornerbook.app.exchange;

import cornerbook.core.say.Said;
import java.util.List;

/**
 * One field of a car as the schema of the visit file has it.
 *
 * @param pointer JSON pointer of its place in the file, as "/vehicle/frontAxle/axleLoad"
 * @param group JSON pointer of the object that it is in
 * @param name its own name, as "axleLoad"
 * @param kind how it stands in the file
 * @param item what it is
 * @param choices the words that may stand there; empty for free text
 * @param required whether the object that it is in cannot be without it
 * @param insteadOf pointers of the fields in whose place it is required, as a disc's in that of a drum's: one of them spares it
 */
public record CarField(
        String pointer,
        String group,
        String name,
        Kind kind,
        CarItem item,
        List<Choice> choices,
        boolean required,
        List<String> insteadOf) {
    /** How a field stands in the file. */
    public enum Kind {
        TEXT,
        QUANTITY,
        NUMBER,
        FLAG,
        DATE
    }

    /**
     * A word that may stand there.
     *
     * @param word as the file spells it
     * @param label for people
     */
    public record Choice(String word, Said label) {
        static Choice of(String word) {
            return new Choice(word, CarWord.of(word));
        }
    }

    public CarField {
        choices = List.copyOf(choices);
        insteadOf = List.copyOf(insteadOf);
    }

    /** Its name for people. */
    public Said label() {
        return item;
    }

    /** What it is, one sentence. */
    public Said hint() {
        return new CarHint(item);
    }

    /** Of a quantity that is written without one; empty for none. */
    public String unit() {
        return item.unit();
    }
}
