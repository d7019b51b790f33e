package cornerbook.words;

import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.HashMap;
import org.jspecify.annotations.Nullable;

/** The labels of one room for one reader: what stands on a page, a sheet or a picture whatever the car. */
public final class Labels {
    private final Reader reader;
    private final String room;

    Labels(Reader reader, String room) {
        this.reader = reader;
        this.room = room;
    }

    /**
     * A label.
     *
     * @param facts names and values in turn: {@code of("visits", "n", 3)}; null for what is not there
     */
    public String of(String key, @Nullable Object... facts) {
        var named = new HashMap<String, @Nullable Object>();
        for (int i = 0; i < facts.length; i += 2) {
            named.put((String) facts[i], facts[i + 1]);
        }
        return reader.message(room, key, named);
    }

    /** What is said, in words. */
    public String say(Said said) {
        return reader.say(said);
    }

    public String day(LocalDate day) {
        return reader.day(day);
    }
}
