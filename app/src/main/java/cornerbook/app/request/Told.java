package cornerbook.app.request;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;
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

    /** A quantity with the digits that the trade reads. */
    public static String amount(double value, String unit) {
        return say(Amount.of(value, unit));
    }

    /** A quantity with all the digits that it was written with. */
    public static String exact(double value, String unit) {
        return say(Amount.exact(value, unit));
    }

    /** Name of the unit in which this person writes what the book keeps in {@code bookUnit}. */
    public static String unit(String bookUnit) {
        return reader().unit(bookUnit);
    }

    /** Why something was refused. */
    public static String say(RuntimeException refusal) {
        return say(Saying.of(refusal));
    }

    public static String day(LocalDate day) {
        return reader().day(day);
    }

    /** The labels of a page by the path of its room: "app/desk/car". */
    public static Labels labels(String room) {
        return reader().labels(room);
    }
}
