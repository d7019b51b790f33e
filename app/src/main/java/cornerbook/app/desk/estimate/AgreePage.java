package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.desk.Form;
import cornerbook.core.say.Price;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a customer reads and answers, in the customer's language, without the shop's own pages around it.
 *
 * @param action where the answers are sent
 * @param back the shop's page of the visit; empty where a customer reads alone
 * @param reader in the language of the estimate
 * @param car its name and plate
 * @param customer who is asked, as the book has the name
 * @param typed what was answered, when it came back
 * @param text exactly what would be agreed to; empty before the answers are given
 * @param error why it came back; empty when it did not
 * @param kept what was agreed to, when it was
 */
public record AgreePage(
        String action,
        String back,
        Agreement.Way way,
        Estimate estimate,
        WorkOfVisit work,
        Reader reader,
        String shop,
        String car,
        String customer,
        Form typed,
        String text,
        String error,
        @Nullable Agreement kept) {
    public Labels labels() {
        return reader.labels("app/desk/estimate");
    }

    public String language() {
        return reader.language().tag();
    }

    public String newId() {
        return UUID.randomUUID().toString();
    }

    public List<Matter> matters() {
        return Matter.of(estimate);
    }

    public String price(@Nullable Money money) {
        return reader.say(new Price(Objects.requireNonNull(money)));
    }

    /** Whether a field has this answer. */
    public boolean isPicked(int matter, String value) {
        return typed.get("pick." + matter).equals(value);
    }

    /** Whether the customer draws a name here: on a tablet of the shop it has to be, on the customer’s own telephone it may. */
    public boolean isSigned() {
        return way == Agreement.Way.SIGNED || mayBeSigned();
    }

    public boolean mayBeSigned() {
        return way == Agreement.Way.LINK;
    }

    /** Whether somebody of the shop writes down what the customer says. */
    public boolean isTold() {
        return way == Agreement.Way.TELEPHONE || way == Agreement.Way.SPOKEN;
    }

    /** Whether another one has taken its place: then it is read, and not answered. */
    public boolean isOver() {
        return work.last().filter(last -> last.id().equals(estimate.id())).isEmpty();
    }

    /** What names exactly the text that is shown. */
    public String hash() {
        return Agreement.hash(text);
    }

    public List<String> lines() {
        return text.lines().toList();
    }

    /** The lines of what was agreed to last; empty before anything was. */
    public List<String> agreedLines() {
        return work.agreements().stream()
                .filter(each -> each.estimateId().equals(estimate.id()))
                .reduce((before, after) -> after)
                .map(last -> last.words().lines().toList())
                .orElse(List.of());
    }
}
