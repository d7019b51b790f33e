package cornerbook.app.door;

import cornerbook.app.book.Book;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Learning;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;

/** The desk of a book without a server before it. */
public final class Desks {
    private Desks() {}

    /** On the day of the invented shop. */
    public static Desk of(Book book) {
        var learning = new Learning(book, new Assessor(LimitsFile.load()), ServedShop.CLOCK);
        return new Desk(book, learning, new CarLists(book, learning, ServedShop.CLOCK), ServedShop.CLOCK);
    }
}
