package cornerbook.app.desk.year;

import cornerbook.app.book.year.PadsOfMonth;
import cornerbook.app.picture.year.Lengths;
import cornerbook.app.request.Told;
import cornerbook.core.say.Amount;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;

/**
 * In which months of the year pads are found seized.
 *
 * @param since the day from which on visits count
 */
public record PadsPage(LocalDate since, List<PadsOfMonth> months) {
    private static final double PERCENT = 100;

    public PadsPage {
        months = List.copyOf(months);
    }

    /** "November". */
    public String name(PadsOfMonth month) {
        return month.month()
                .getDisplayName(
                        TextStyle.FULL_STANDALONE, Told.reader().language().locale());
    }

    public String picture() {
        return Lengths.svg(
                Told.labels("app/desk/year").of("pads-seized"),
                months.stream()
                        .map(month -> {
                            double percent = PERCENT * month.stuck() / month.tried();
                            return new Lengths.Line(name(month), percent, Told.say(new Amount(percent, "%", 1)), false);
                        })
                        .toList());
    }
}
