package cornerbook.app.desk.tools;

import java.util.Locale;

/** A field of a tool that holds a quantity. */
enum ToolField {
    LOWEST,
    HIGHEST,
    OFFSET,
    RATING;

    /** Its name in the form. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
