package cornerbook.app.desk;

import cornerbook.app.request.PageException;
import cornerbook.app.sheet.label.LabelPaper;
import cornerbook.app.sheet.label.LabelPlace;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Saying;

/** On which paper, from which label on, and how far moved labels are printed, as the fields beside a print button say. */
public final class LabelFields {
    private LabelFields() {}

    /**
     * The labels that the fields ask for.
     *
     * @throws PageException with one sentence when they cannot be
     */
    public static LabelPlace place(Form asked) {
        try {
            var paper = LabelPaper.find(asked.get("paper"))
                    .orElseThrow(() -> new Refused(new DeskSaid.NoSuchPaper(asked.get("paper"))));
            return new LabelPlace(
                    paper, (int) number(asked, "first", 1), number(asked, "right", 0), number(asked, "down", 0));
        } catch (IllegalArgumentException e) {
            throw new PageException(422, Saying.of(e));
        }
    }

    private static double number(Form asked, String name, double otherwise) {
        if (asked.get(name).isEmpty()) {
            return otherwise;
        }
        try {
            return Double.parseDouble(asked.get(name).replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new Refused(new DeskSaid.NoNumber(asked.get(name), Amount.significant(1.5, "", 2)));
        }
    }
}
