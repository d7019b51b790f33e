package cornerbook.app.desk.coming;

import cornerbook.app.book.coming.AskedMatter;
import cornerbook.app.book.coming.ComingLedger;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.desk.Calls;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.SetsThere;
import cornerbook.app.desk.Slice;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who is to be asked to come back, and what came of it. */
public final class ComingHandler {
    static final int CUSTOMERS_ON_A_PAGE = 20;
    private static final String MATTER = "of.";

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public ComingHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        var agreed = asked.get("agreed");
        send(response, 200, asked, agreed.isEmpty() ? null : desk.dayInAddress(agreed), "");
    }

    private void send(ServerResponse response, int status, Form asked, @Nullable LocalDate agreed, String error) {
        var days = Asked.days(asked, desk);
        int from = Asked.numberOf(asked.get("from"));
        var found = desk.book().coming().list(days, from, CUSTOMERS_ON_A_PAGE);
        var rows = new ComingRows(desk, letterhead);
        pages.send(
                response,
                status,
                "desk/coming/coming",
                new ComingPage(
                        days,
                        new Slice<>(
                                found.list().stream().map(rows::of).toList(), from, found.all(), CUSTOMERS_ON_A_PAGE),
                        desk.book().orders().countNotJudged(),
                        agreed,
                        error));
    }

    /** Somebody says what came of asking a customer. */
    public void answer(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var answer = Calls.answer(typed, desk);
        change(typed, response, null, () -> desk.book().coming().answer(typed.identity("id"), matters(typed), answer));
    }

    /** The customer comes on a day. */
    public void agree(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var person = typed.person();
        var answer = new CallAnswer(CallAnswer.Kind.WILL_COME, person == null ? "" : person, desk.now());
        change(typed, response, typed.get("day"), () -> {
            var day = day(typed.get("day"));
            refuseTooSoon(matters(typed), day);
            desk.book().coming().comes(typed.identity("id"), matters(typed), answer, day, desk.today());
        });
    }

    /** The set of a car lies elsewhere and is not there on that day: sooner is agreed where its appointment is made by itself. */
    private void refuseTooSoon(List<AskedMatter> matters, LocalDate day) {
        var there = SetsThere.of(desk.book(), desk.localNow());
        if (there.byCar().isEmpty()) {
            return;
        }
        matters.stream()
                .collect(Collectors.groupingBy(
                        AskedMatter::visitId, Collectors.mapping(AskedMatter::matter, Collectors.toSet())))
                .forEach((visitId, asked) -> desk.book()
                        .cars()
                        .findOfVisit(visitId)
                        .flatMap(history -> there.coming(history.vehicle().id(), ComingLedger.work(asked)))
                        .filter(coming -> coming.day().isAfter(day))
                        .ifPresent(coming -> {
                            throw new Refused(new ComingSaid.SetComesLater(
                                    coming.set().set().owner().vehicleName(),
                                    coming.set().place().room(),
                                    coming.day()));
                        }));
    }

    /** Does what a form asks, and shows the list again; what is refused, with why. */
    private void change(Form typed, ServerResponse response, @Nullable String agreed, Runnable work) {
        // What the address of the list cannot be is told before anything is kept.
        var address = CustomerLinks.coming() + "?until="
                + Asked.days(typed, desk).until() + "&from=" + Asked.numberOf(typed.get("from"));
        try {
            work.run();
        } catch (BookException | Refused e) {
            send(response, 409, typed, null, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, address + (agreed == null ? "" : "&agreed=" + agreed));
    }

    private static List<AskedMatter> matters(Form typed) {
        return typed.fields().keySet().stream()
                .filter(name -> name.startsWith(MATTER))
                .map(name -> AskedMatter.parse(name.substring(MATTER.length())))
                .sorted(Comparator.comparing(AskedMatter::toString))
                .toList();
    }

    private LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new DeskSaid.NoDay(desk.today().toString()));
        }
    }
}
