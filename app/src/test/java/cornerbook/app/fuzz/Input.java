package cornerbook.app.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** An input as text; what is no UTF-8 gets marks in its place. */
public record Input(String text) {
    public Input(byte[] bytes) {
        this(new String(bytes, StandardCharsets.UTF_8));
    }

    public List<String> lines() {
        return text.lines().toList();
    }

    /** The first line, which names what the rest is for; one of the choices, whatever stands there. */
    public <T> T choose(List<T> choices) {
        var name = text.lines().findFirst().orElse("");
        return choices.stream()
                .filter(choice -> choice.toString().equals(name))
                .findFirst()
                .orElseGet(() -> choices.get(Math.floorMod(name.hashCode(), choices.size())));
    }

    /** What stands below the first line. */
    public String rest() {
        return text.substring(Math.min(text.length(), text.indexOf('\n') < 0 ? text.length() : text.indexOf('\n') + 1));
    }
}
