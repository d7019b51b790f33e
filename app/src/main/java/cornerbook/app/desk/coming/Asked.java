package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.request.PageException;

/** What a person asks of the list, as addresses and forms carry it. */
final class Asked {
    private Asked() {}

    static Days days(Form asked, Desk desk) {
        var today = desk.today();
        var until = asked.get("until");
        var days = Days.until(until.isEmpty() ? Days.usualUntil(today) : desk.dayInAddress(until), today);
        if (days.until().isBefore(days.from())) {
            throw new PageException(400, new ComingSaid.BeforeTheList(days.from()));
        }
        return days;
    }

    /** An address that was cut or typed shows the first page. */
    static int numberOf(String text) {
        return text.matches("\\d{1,7}") ? Integer.parseInt(text) : 0;
    }
}
