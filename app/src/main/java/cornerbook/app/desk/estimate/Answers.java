package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.desk.Form;
import cornerbook.app.request.PageException;
import java.util.LinkedHashMap;
import java.util.Map;

/** What was answered to the matters of an estimate, by the fields of its page. */
final class Answers {
    private static final String NO = "no";
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private Answers() {}

    /**
     * The answer to each line of what has a price.
     *
     * @throws PageException when a matter has none
     */
    static Map<Integer, Boolean> of(Estimate estimate, Form typed) {
        var answers = new LinkedHashMap<Integer, Boolean>();
        var matters = Matter.of(estimate);
        for (int i = 0; i < matters.size(); i++) {
            var matter = matters.get(i);
            if (matter.hasPrice()) {
                var picked = typed.get("pick." + i);
                boolean answered = picked.equals(NO)
                        || matter.options().stream()
                                .map(option -> String.valueOf(option.place()))
                                .anyMatch(picked::equals);
                if (!answered) {
                    throw new PageException(
                            UNFIT, new EstimateSaid.AnswerMissing(matter.first().words()));
                }
                matter.options()
                        .forEach(option ->
                                answers.put(option.place(), picked.equals(String.valueOf(option.place()))));
            }
        }
        return answers;
    }
}
