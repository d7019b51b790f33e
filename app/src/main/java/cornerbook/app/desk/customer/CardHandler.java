package cornerbook.app.desk.customer;

import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.exchange.card.CardSaid;
import cornerbook.app.request.PageException;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Takes in people from cards: first shows what would become of each, then takes what a person chose. */
public final class CardHandler {
    /** Some thousand cards without pictures. */
    private static final int LARGEST_BYTES = 4 * 1024 * 1024;

    private final Desk desk;
    private final Pages pages;

    public CardHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, "", List.of(), null, "");
    }

    /** Stores nothing. */
    public void look(ServerRequest request, ServerResponse response) {
        String text;
        try {
            text = Form.readLines(request, LARGEST_BYTES).get(CardPage.TEXT);
        } catch (PageException e) {
            if (!(e.said() instanceof DeskSaid.UnfitField)) {
                throw e;
            }
            // A picture, or a spreadsheet: it cannot be shown in the field either.
            send(response, 422, "", List.of(), null, Typed.sentence(new Refused(new CardSaid.NoCard())));
            return;
        }
        try {
            send(response, 200, text, cards(text, "").rows(), null, "");
        } catch (Refused e) {
            send(response, 422, text, List.of(), null, Typed.sentence(e));
        }
    }

    /** What was chosen for each card that can be taken; a card for which nothing was chosen is left. */
    public void take(ServerRequest request, ServerResponse response) {
        var typed = Form.readLines(request, LARGEST_BYTES);
        var text = typed.get(CardPage.TEXT);
        var id = typed.identity("id");
        try {
            var cards = cards(text, id);
            var taken = cards.rows().stream()
                    .filter(row -> row.card().refused() == null)
                    .flatMap(row -> cards.taken(row, typed.get(row.field())))
                    .toList();
            send(response, 200, "", List.of(), desk.book().cards().take(taken), "");
        } catch (Refused | BookException e) {
            send(response, 422, text, List.of(), null, Typed.sentence(e));
        }
    }

    private ProposedCards cards(String text, String id) {
        return ProposedCards.of(desk.book().cards().list(), text, id);
    }

    private void send(
            ServerResponse response,
            int status,
            String text,
            List<CardRow> rows,
            @Nullable Integer taken,
            String error) {
        pages.send(
                response,
                status,
                "desk/customer/cards",
                new CardPage(
                        UUID.randomUUID().toString(),
                        text,
                        rows,
                        taken,
                        desk.book().cards().listWithoutCar(),
                        error));
    }
}
