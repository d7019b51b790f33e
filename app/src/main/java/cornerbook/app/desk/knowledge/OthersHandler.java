package cornerbook.app.desk.knowledge;

import cornerbook.app.book.knowledge.OthersLedger;
import cornerbook.app.book.knowledge.TakenKnowledge;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.knowledge.PublicKeyText;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Takes other shops' knowledge in after a look, and back; what lists show is judged anew in the background then. */
public final class OthersHandler {
    /** A knowledge file as a form sends it. */
    private static final int LARGEST_BYTES = 16 * 1024 * 1024;

    private static final String FILE = "file";
    private static final String PAGE = "desk/knowledge/others";

    private final Desk desk;
    private final Pages pages;
    private final OthersLedger others;

    public OthersHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
        this.others = desk.book().others();
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, null, "", "");
    }

    /** Takes nothing in. */
    public void look(ServerRequest request, ServerResponse response) {
        var text = Form.readLines(request, LARGEST_BYTES).get(FILE);
        try {
            send(response, 200, others.look(text, desk.today()), text, "");
        } catch (Refused | BookException e) {
            send(response, 422, null, text, Typed.sentence(e));
        }
    }

    public void take(ServerRequest request, ServerResponse response) {
        var typed = Form.readLines(request, LARGEST_BYTES);
        change(
                response,
                typed.get(FILE),
                () -> others.take(typed.identity("id"), typed.get(FILE), person(typed), desk.now(), desk.today()));
    }

    public void takeBack(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(response, "", () -> others.takeBack(typed.identity("id"), person(typed), desk.now()));
    }

    public void trust(ServerRequest request, ServerResponse response) {
        var typed = Form.readLines(request);
        change(
                response,
                "",
                () -> others.trust(
                        typed.identity("id"),
                        PublicKeyText.parse(typed.get("key")),
                        typed.get("name"),
                        person(typed),
                        desk.now()));
    }

    public void distrust(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(
                response,
                "",
                () -> others.distrust(
                        typed.identity("id"), new PublicKeyText(typed.get("key")), person(typed), desk.now()));
    }

    private static String person(Form typed) {
        return Objects.requireNonNullElse(typed.person(), "");
    }

    /** What counts may be another then: the book learns at once, and cars are judged anew by it. */
    private void change(ServerResponse response, String text, Runnable change) {
        try {
            var before = others.find();
            change.run();
            if (!others.find().equals(before)) {
                desk.book().knowledge().learn(desk.today());
                desk.learning().readAnew();
            }
            Pages.redirect(response, ShopLinks.othersKnowledge());
        } catch (Refused | BookException e) {
            send(response, 422, null, text, Typed.sentence(e));
        }
    }

    private void send(ServerResponse response, int status, @Nullable TakenKnowledge looked, String text, String error) {
        var ledger = desk.book().knowledge();
        var now = ledger.read();
        pages.send(
                response,
                status,
                PAGE,
                new OthersPage(
                        UUID.randomUUID().toString(),
                        others.find().orElse(null),
                        now.others() == null ? List.of() : NumberChanges.of(Knowledge.NONE, now),
                        looked,
                        looked == null ? List.of() : NumberChanges.of(now, ledger.learn(desk.today(), looked.others())),
                        others.listKeys(),
                        text,
                        error));
    }
}
