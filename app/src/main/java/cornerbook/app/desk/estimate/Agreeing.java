package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Saying;
import cornerbook.words.Reader;
import io.helidon.webserver.http.ServerResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Asks a customer line by line, shows exactly what the answers come to, and keeps it once it is signed or said. In two steps, so that what
 * is agreed to has been read.
 */
public final class Agreeing {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private final Desk desk;
    private final Pages pages;
    private final String shop;

    /** @param shop name on top of the page */
    public Agreeing(Desk desk, Pages pages, String shop) {
        this.desk = desk;
        this.pages = pages;
        this.shop = shop;
    }

    /** Where an estimate is answered, and by whom. */
    public record Where(String action, String back, Agreement.Way way, String person) {}

    public void show(ServerResponse response, Estimate estimate, Where where) {
        send(response, 200, estimate, where, Form.EMPTY, "", isLast(estimate) ? "" : changed(estimate, false), null);
    }

    private boolean isLast(Estimate estimate) {
        return desk.book()
                .estimates()
                .of(estimate.visitId())
                .last()
                .filter(last -> last.id().equals(estimate.id()))
                .isPresent();
    }

    /** That what was read has changed since. */
    private static String changed(Estimate estimate, boolean shown) {
        return Typed.sentence(say(estimate, new Refused(new EstimateSaid.ChangedMeanwhile(shown))));
    }

    /** The answers, or what makes them count. */
    public void take(ServerResponse response, Estimate estimate, Where where, Form typed) {
        if (!isLast(estimate) || !typed.get("estimate").equals(estimate.id())) {
            send(response, UNFIT, estimate, where, Form.EMPTY, "", changed(estimate, isLast(estimate)), null);
            return;
        }
        var text = "";
        try {
            var answers = Answers.of(estimate, typed);
            text = AgreementText.of(estimate, answers, Told.reader());
            if (typed.get("step").equals("keep") && !typed.get("seen").equals(Agreement.hash(text))) {
                send(response, UNFIT, estimate, where, typed, text, changed(estimate, true), null);
            } else if (typed.get("step").equals("keep")) {
                var agreement = agreement(estimate, where, typed, text, answers);
                desk.book().estimates().agree(agreement, desk.today());
                send(response, 200, estimate, where, Form.EMPTY, "", "", agreement);
            } else {
                send(response, 200, estimate, where, typed, text, "", null);
            }
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            send(response, UNFIT, estimate, where, typed, text, Typed.sentence(say(estimate, e)), null);
        } catch (PageException e) {
            if (e.status() != UNFIT) {
                throw e;
            }
            send(response, UNFIT, estimate, where, typed, "", Typed.sentence(say(estimate, e)), null);
        }
    }

    private static String say(Estimate estimate, RuntimeException refused) {
        return Told.reader().in(estimate.language()).say(Saying.of(refused));
    }

    private Agreement agreement(
            Estimate estimate, Where where, Form typed, String text, Map<Integer, Boolean> answers) {
        var signature = typed.get("signature");
        return new Agreement(
                typed.identity("id"),
                estimate.id(),
                where.way(),
                typed.get("name"),
                typed.get("contact"),
                estimate.language(),
                text,
                signature.isEmpty() ? null : signature,
                answers,
                where.person(),
                desk.now());
    }

    private void send(
            ServerResponse response,
            int status,
            Estimate estimate,
            Where where,
            Form typed,
            String text,
            String error,
            @Nullable Agreement kept) {
        var history = desk.getHistoryOfVisit(estimate.visitId());
        var vehicle = history.vehicle();
        Reader reader = Told.reader().in(estimate.language()).at(desk.clock().getZone());
        pages.send(
                response,
                status,
                "desk/estimate/agree",
                new AgreePage(
                        where.action(),
                        where.back(),
                        where.way(),
                        estimate,
                        desk.book().estimates().of(estimate.visitId()),
                        reader,
                        shop,
                        vehicle.name() + " " + vehicle.plate(),
                        history.customer().name(),
                        typed,
                        text,
                        error,
                        kept));
    }
}
