package cornerbook.app.preference;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Light pages or dark ones. */
public enum Look {
    DEVICE("As the device"),
    LIGHT("Light"),
    DARK("Dark");

    private final String title;

    Look(String title) {
        this.title = title;
    }

    /** By its name in addresses; empty for anything else. */
    public static Optional<Look> find(String word) {
        return Arrays.stream(values()).filter(look -> look.word().equals(word)).findFirst();
    }

    /** Its name in addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its name for people. */
    public String title() {
        return title;
    }
}
