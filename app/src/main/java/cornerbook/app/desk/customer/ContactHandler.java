package cornerbook.app.desk.customer;

import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.request.PageException;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** A customer agrees to being called or written to, or does not any longer. */
public final class ContactHandler {
    private final Desk desk;
    private final CustomerHandler page;

    /** @param page on which what is refused comes back as it was typed */
    public ContactHandler(Desk desk, CustomerHandler page) {
        this.desk = desk;
        this.page = page;
    }

    public void save(ServerRequest request, ServerResponse response) {
        var customerId = Pages.pathValue(request, "id");
        var typed = Form.readLines(request);
        boolean agreed = typed.choice("answer", List.of(Answer.values()))
                        .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()))
                == Answer.AGREES;
        var person = Objects.requireNonNullElse(typed.person(), "");
        var answers = Arrays.stream(Purpose.values())
                .filter(purpose -> typed.has("purpose." + purpose.name()))
                .flatMap(purpose -> Arrays.stream(Channel.values())
                        .filter(channel -> typed.has("channel." + channel.name()))
                        .map(channel ->
                                new ContactAnswer(purpose, channel, agreed, typed.get("words"), person, desk.now())))
                .toList();
        try {
            desk.book().contacts().add(typed.identity("id"), customerId, answers);
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            page.sendRefused(request, response, typed, e.said());
            return;
        }
        Pages.redirect(response, CustomerLinks.contact(customerId));
    }

    private enum Answer {
        AGREES,
        DECLINES
    }
}
