package cornerbook.app.request;

import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.LocalDate;

/** Words for the person who asks, in that person's language and units. */
public final class Told {
    private Told() {}

    /** Of the request that is being answered; metric English outside of one. */
    public static Reader reader() {
        return Caller.current().reader();
    }

    public static String say(Said said) {
        return reader().say(said);
    }

    /** The same at the beginning of a line. */
    public static String begin(Said said) {
        return reader().begin(said);
    }

    public static String day(LocalDate day) {
        return reader().day(day);
    }

    /** The labels of a page by the path of its room: "app/desk/car". */
    public static Labels labels(String room) {
        return reader().labels(room);
    }
}
