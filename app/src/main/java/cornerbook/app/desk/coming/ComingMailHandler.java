package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.AskedMatter;
import cornerbook.app.book.coming.ComingCar;
import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.book.mail.Letter;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.ShopMailer;
import cornerbook.app.desk.Slice;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.coming.ComingRows.Proposed;
import cornerbook.app.desk.coming.MailPreviewPage.Preview;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.mail.Delivery;
import cornerbook.app.mail.Mail;
import cornerbook.app.mail.Mailer;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** E-mails to those who are to come back: shown before they are sent, kept with what the server said, and sent again on request. */
public final class ComingMailHandler {
    private static final int MAILS_ON_A_PAGE = 20;

    /** Who was written to about the same so lately is not proposed again. Common practice, no source. */
    private static final int DAYS_BETWEEN = 7;

    private static final String SEND = "send.";

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public ComingMailHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    /** For the customers of a page of the list, or the one of the address. */
    public void show(ServerRequest request, ServerResponse response) {
        sendPreview(response, 200, Form.ofQuery(request), "");
    }

    private void sendPreview(ServerResponse response, int status, Form asked, String error) {
        var days = Asked.days(asked, desk);
        int from = Asked.numberOf(asked.get("from"));
        var customer = asked.get("customer");
        var found = customer.isEmpty()
                ? desk.book()
                        .coming()
                        .list(days, from, ComingHandler.CUSTOMERS_ON_A_PAGE)
                        .list()
                : List.of(desk.book().coming().find(customer, days));
        var rows = new ComingRows(desk, letterhead);
        pages.send(
                response,
                status,
                "desk/coming/mail",
                new MailPreviewPage(
                        days,
                        from,
                        desk.book().mails().findServer().orElse(null),
                        found.stream()
                                .flatMap(each -> rows.mail(each).stream())
                                .map(this::preview)
                                .toList(),
                        error));
    }

    private Preview preview(Proposed proposed) {
        var customer = proposed.customer().customer();
        var about = about(proposed);
        return new Preview(
                UUID.randomUUID().toString(),
                customer.id(),
                customer.name(),
                Objects.requireNonNullElse(customer.email(), ""),
                proposed.language().tag(),
                proposed.message(),
                seen(proposed),
                desk.book().mails().listOf(customer.id()).stream()
                        .filter(mail -> mail.letter().about().equals(about))
                        .filter(mail -> mail.last().outcome() == Delivery.Outcome.TAKEN
                                || mail.last().outcome() == Delivery.Outcome.UNKNOWN)
                        .map(mail -> desk.dayOf(mail.at()))
                        .filter(day -> day.plusDays(DAYS_BETWEEN).isAfter(desk.today()))
                        .findFirst()
                        .orElse(null));
    }

    private static List<AskedMatter> about(Proposed proposed) {
        return proposed.customer().cars().stream()
                .flatMap(car -> car.matters().stream())
                .map(ComingCar.Due::asked)
                .toList();
    }

    private static String seen(Proposed proposed) {
        return Integer.toHexString(Objects.hash(
                proposed.message().subject(),
                proposed.message().text(),
                proposed.customer().customer().email()));
    }

    /** Sends those that were chosen, one after the other; where the server is not reached the rest is left. */
    public void send(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var person = Objects.requireNonNullElse(typed.person(), "");
        var days = Asked.days(typed, desk);
        try {
            var mailer = mailer();
            var letters = letters(typed, days);
            for (var letter : letters) {
                if (desk.book().mails().begin(letter, person, desk.now()) && !hand(mailer, mail(letter))) {
                    break;
                }
            }
        } catch (BookException | Refused e) {
            sendPreview(response, 409, typed, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, CustomerLinks.sentMail());
    }

    private List<Letter> letters(Form typed, Days days) {
        var rows = new ComingRows(desk, letterhead);
        var letters = typed.fields().keySet().stream()
                .filter(name -> name.startsWith(SEND))
                .sorted()
                .map(name -> letter(name.substring(SEND.length()), typed, rows, days))
                .toList();
        if (letters.isEmpty()) {
            throw new Refused(new ComingSaid.NoneChosen());
        }
        return letters;
    }

    private Letter letter(String customerId, Form typed, ComingRows rows, Days days) {
        var customer = desk.book().coming().find(customerId, days);
        var id = typed.identity("id." + customerId);
        // Sent before, by a form that comes twice: it is kept as it went out, whatever is due now.
        var before = desk.book().mails().find(id);
        if (before.isPresent()) {
            return before.get().letter();
        }
        var proposed = rows.mail(customer)
                .filter(each -> seen(each).equals(typed.get("seen." + customerId)))
                .orElseThrow(() -> new Refused(
                        new ComingSaid.ChangedSince(customer.customer().name())));
        return new Letter(
                id,
                customerId,
                Objects.requireNonNullElse(customer.customer().email(), ""),
                proposed.language().tag(),
                proposed.message().subject(),
                proposed.message().text(),
                about(proposed));
    }

    private static Mail mail(Letter letter) {
        var stopWord = Told.reader()
                .in(Language.find(letter.language()).orElse(Language.ENGLISH))
                .say(new ComingSaid.StopWord());
        return new Mail(letter.id(), letter.address(), letter.language(), letter.subject(), letter.text(), stopWord);
    }

    /** Whether the server was reached. */
    private boolean hand(Mailer mailer, Mail mail) {
        var delivery = mailer.send(mail, desk.now());
        desk.book().mails().end(mail.id(), delivery, desk.now());
        return delivery.outcome() != Delivery.Outcome.NOT_SENT;
    }

    private Mailer mailer() {
        return ShopMailer.find(desk, letterhead.shopName()).orElseThrow(() -> new Refused(new ComingSaid.NoServer()));
    }

    public void showSent(ServerRequest request, ServerResponse response) {
        sendSent(response, 200, Asked.numberOf(Pages.queryValue(request, "from")), "");
    }

    private void sendSent(ServerResponse response, int status, int from, String error) {
        var mails = desk.book().mails();
        pages.send(
                response,
                status,
                "desk/coming/sent",
                new SentMailPage(
                        new Slice<>(mails.list(from, MAILS_ON_A_PAGE), from, mails.count(), MAILS_ON_A_PAGE),
                        Told.reader().at(desk.clock().getZone()),
                        error));
    }

    /** One that did not arrive for certain is given to the server once more, as the same e-mail. */
    public void sendAgain(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var id = typed.get("mail");
        int seen = Asked.numberOf(typed.get("events"));
        try {
            var mailer = mailer();
            var kept = desk.book()
                    .mails()
                    .find(id)
                    .orElseThrow(() -> new PageException(404, new DeskSaid.FormNotUnderstood()));
            if (!new ComingRows(desk, letterhead)
                    .permitsMail(kept.letter().customerId(), kept.letter().about())) {
                throw new Refused(new ComingSaid.DeclinedSince());
            }
            hand(
                    mailer,
                    mail(desk.book().mails().beginAgain(id, seen, desk.now()).letter()));
        } catch (BookException | Refused e) {
            sendSent(response, 409, 0, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, CustomerLinks.sentMail());
    }
}
