package cornerbook.app.desk.findings;

import cornerbook.app.book.estimate.WorkTold;
import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.HandoverSheet;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Subject;
import cornerbook.core.say.Said;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The findings of one visit, as a page and as the hand-over sheet. */
public final class FindingsHandler {
    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public FindingsHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var open = desk.getOpenVisit(visitId);
        var photos = desk.book().photos().list(visitId);
        var notes = desk.book().bay().read(visitId);
        pages.sendJudged(
                response,
                open.unjudged(),
                () -> new Pages.View(
                        200,
                        "desk/findings/findings",
                        new FindingsPage(
                                desk.assess(open),
                                photos,
                                notes.declined(),
                                notes.ticks(),
                                notes.departure(),
                                letterhead.isReached())));
    }

    public void sendSheet(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var open = desk.getOpenVisit(visitId);
        var notes = desk.book().records().notes(visitId);
        var customer = desk.customerReader(open.history());
        var reader = Language.find(Pages.queryValue(request, "language"))
                .map(customer::in)
                .orElse(customer);
        pages.sendJudgedPdf(
                response,
                open.unjudged(),
                "handover-" + open.visit().date(),
                () -> Optional.of(judged(open, notes, reader).get()),
                Told.labels("app/desk/findings").of("nothing-to-hand-over"));
    }

    /** What draws the sheet of the latest visit, for which the book is asked nothing more; empty where there was none. */
    public Optional<Supplier<byte[]>> latestSheet() {
        return desk.book()
                .visits()
                .findLatest()
                .map(desk::getOpenVisit)
                .map(open -> judged(
                        open, desk.book().records().notes(open.visit().id()), desk.customerReader(open.history())));
    }

    private Supplier<byte[]> judged(OpenVisit open, VisitNotes notes, Reader reader) {
        var assessment = desk.assess(open);
        var agreed = agreed(open.visit());
        var madeAt = desk.now();
        return () -> HandoverSheet.render(assessment, letterhead, madeAt, notes, agreed, reader);
    }

    /** What the findings asked for and nobody took stands on the sheet by itself. */
    private List<Said> agreed(Visit visit) {
        var work = desk.book().estimates().of(visit.id());
        var others = work.standing().stream().filter(each -> each.line().advice() == null);
        return Stream.of(WorkTold.agreedAndFree(work, visit), WorkTold.declined(work, others))
                .flatMap(List::stream)
                .toList();
    }

    /** The customer does not want what was advised, or wants it after all. */
    public void decline(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        var form = Form.read(request);
        var answer = desk.declined(
                desk.getOpenVisit(visitId),
                UUID.randomUUID().toString(),
                form.get("advice"),
                form.has("declined"),
                form.get("saidBy"),
                Caller.current().tablet().map(TabletAtWork::person).orElse(""),
                desk.now());
        desk.book().bay().addDeclined(visitId, answer);
        Pages.redirect(response, VisitLinks.findings(visitId) + "#declined");
    }

    /** What a photo belongs to, and whether the sheet shows it. */
    public void choosePhoto(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        desk.getVisit(visitId);
        var form = Form.read(request);
        try {
            var part = form.get("part").isEmpty() ? null : Subject.Part.valueOf(form.get("part"));
            desk.book().photos().choose(visitId, Pages.pathValue(request, "photo"), part, form.has("onSheet"));
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            throw new PageException(404, new FindingsSaid.NoSuchPhoto());
        } catch (IllegalArgumentException e) {
            throw new PageException(422, new FindingsSaid.UnknownPart());
        }
        Pages.redirect(response, VisitLinks.findings(visitId) + "#photos");
    }
}
