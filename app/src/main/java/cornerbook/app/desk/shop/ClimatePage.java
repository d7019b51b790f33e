package cornerbook.app.desk.shop;

import cornerbook.app.desk.Form;
import cornerbook.app.request.Told;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;

/**
 * The climate of the shop's place.
 *
 * @param typed what stands in the form
 * @param kept whether the book has a climate
 * @param error one sentence, empty when nothing was refused
 */
public record ClimatePage(Form typed, boolean kept, String error) {
    public String at(String field) {
        return typed.get(field);
    }

    public List<Month> months() {
        return List.of(Month.values());
    }

    public String name(Month month) {
        return nameOf(month);
    }

    /** As it stands alone. */
    static String nameOf(Month month) {
        return month.getDisplayName(
                TextStyle.FULL_STANDALONE, Told.reader().language().locale());
    }
}
