package cornerbook.app.desk;

import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.request.PageException;
import java.util.List;
import java.util.Objects;

/** What a person at the desk says came of calling a customer. */
public final class Calls {
    private Calls() {}

    /**
     * The answer of a form whose button was pressed now.
     *
     * @throws PageException when it has none
     */
    public static CallAnswer answer(Form typed, Desk desk) {
        return new CallAnswer(
                typed.choice("answer", List.of(CallAnswer.Kind.values()))
                        .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood())),
                Objects.requireNonNullElse(typed.person(), ""),
                desk.now());
    }
}
