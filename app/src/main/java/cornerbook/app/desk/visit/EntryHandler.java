package cornerbook.app.desk.visit;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.estimate.WorkTold;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.visit.RecordedRetorque;
import cornerbook.app.desk.BrakeDust;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.asked.ToolChoice;
import cornerbook.app.desk.asked.WheelProposal;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.desk.visit.EntryPage.DueRetorque;
import cornerbook.app.desk.visit.EntryPage.RetorqueForm;
import cornerbook.app.judge.Judged;
import cornerbook.app.request.Told;
import cornerbook.core.car.Visit;
import cornerbook.core.release.Release;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.season.judge.OdometerRange;
import cornerbook.core.tool.ShopTool;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The entry form of a visit: readings, wheels leaving on, re-torque. */
public final class EntryHandler {
    private static final RetorqueForm NOTHING_TYPED = new RetorqueForm("", "", "", "", "", AskedOdometer.NONE);
    private final Desk desk;
    private final Pages pages;

    public EntryHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.ofQuery(request);
        var leaving = new LeavingForm(open, typed);
        send(response, 200, open, new EntryForm(open, Form.EMPTY), leaving, typed, NOTHING_TYPED);
    }

    public void saveReadings(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        var form = new EntryForm(open, typed);
        var leaving = new LeavingForm(open, typed);
        var readings = form.check(desk.today(), open.visit().leftOn());
        form.checkWrenches(desk.book().tools().list());
        if (form.isSound() && !asks(form, open.with(readings, open.visit().leftOn()))) {
            try {
                chooseTools(open.visit().id(), typed);
                desk.book().readings().add(open.visit().id(), readings);
                // The wheels are not recorded with the readings; what was typed about them comes back with the page.
                var kept = leaving.unrecorded(new WheelProposal(desk.assessor(), open).standing());
                Pages.redirect(response, VisitLinks.saved(open.visit().id(), readings.size(), kept));
                return;
            } catch (BookException e) {
                form.refuse(Typed.sentence(e));
            }
        }
        send(response, 422, open, form, leaving, typed, NOTHING_TYPED);
    }

    /** Readings that were typed and not stored yet are stored with the wheels, or none of both. */
    public void saveLeaving(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        var form = new EntryForm(open, typed);
        var leaving = new LeavingForm(open, typed);
        var readings = form.check(desk.today(), leaving.chosen());
        form.checkWrenches(desk.book().tools().list());
        var identities = leaving.check(readings, desk.today());
        if (form.isSound() && leaving.isSound() && !asks(form, open.with(readings, leaving.chosen()))) {
            try {
                var visitId = open.visit().id();
                chooseTools(visitId, typed);
                desk.book()
                        .visits()
                        .recordLeaving(
                                visitId,
                                leaving.chosen(),
                                identities,
                                readings,
                                new Because(
                                        null,
                                        Told.say(new VisitSaid.RecordedAnew()),
                                        VisitDataHandler.person(),
                                        desk.today()));
                desk.learning().learnSoon();
                Pages.redirect(response, VisitLinks.saved(visitId, readings.size(), Map.of()) + "#leaving");
                return;
            } catch (BookException e) {
                leaving.refuse(Typed.sentence(e));
            }
        }
        send(response, 422, open, form, leaving, typed, NOTHING_TYPED);
    }

    /** Stores each choice of a tool that is another than the form showed. */
    private void chooseTools(String visitId, Form typed) {
        for (var kind : ShopTool.Kind.values()) {
            var field = "tool." + kind.name();
            var tool = typed.get(field);
            if (typed.has(field) && !tool.equals(typed.get("shown." + field))) {
                var seed = String.join("|", typed.get("form"), visitId, kind.name(), tool);
                desk.book()
                        .usedTools()
                        .choose(
                                UUID.nameUUIDFromBytes(seed.getBytes(StandardCharsets.UTF_8))
                                        .toString(),
                                visitId,
                                kind,
                                tool);
            }
        }
    }

    /** What cannot be judged is stored unasked: a car must not be locked by an entry that only another one can put right. */
    private boolean asks(EntryForm form, OpenVisit typed) {
        form.question(Judged.of(
                        "visit " + typed.visit().id(),
                        () -> desk.assessor()
                                .doubted(typed.history(), typed.visit().id()))
                .orElse(List.of()));
        return form.questions().count() > 0;
    }

    public void saveRetorque(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        var error = "";
        var asked = AskedOdometer.NONE;
        try {
            var system = EntryUnits.of(typed).system();
            var date = dateOf(typed.get("date"), desk.today());
            double odometerKm = Typed.valueOf(AskedOdometer.of(typed), "km", system);
            double torqueNm = Typed.valueOf(typed.get("torque"), "N·m", system);
            var expected = Optional.of(OdometerRange.after(open.history(), open.visit(), date));
            // What is earlier than the visit is no re-torque of it, and is refused.
            var doubt = odometerKm < open.visit().odometerKm()
                    ? Optional.<AskedOdometer>empty()
                    : AskedOdometer.of(expected, odometerKm, typed);
            if (doubt.isEmpty()) {
                desk.book().retorques().record(open.visit().id(), date, odometerKm, torqueNm, typed.person());
                Pages.redirect(response, VisitLinks.visit(open.visit().id()) + "#retorque");
                return;
            }
            asked = doubt.get();
        } catch (BookException | IllegalArgumentException e) {
            error = Typed.sentence(e);
        }
        var retorque = new RetorqueForm(
                typed.get("date"),
                asked.asks() ? "" : AskedOdometer.of(typed),
                typed.get("torque"),
                typed.get("person"),
                error,
                asked);
        send(
                response,
                422,
                open,
                new EntryForm(open, Form.EMPTY),
                new LeavingForm(open, Form.EMPTY),
                Form.EMPTY,
                retorque);
    }

    static LocalDate dateOf(String text, LocalDate today) {
        try {
            var date = LocalDate.parse(text);
            if (date.isAfter(today)) {
                throw new Refused(new DeskSaid.InTheFuture(date, today));
            }
            return date;
        } catch (DateTimeParseException e) {
            throw new Refused(new DeskSaid.NoDay(today.toString()));
        }
    }

    private OpenVisit open(ServerRequest request) {
        return desk.getOpenVisit(Pages.pathValue(request, "id"));
    }

    private void send(
            ServerResponse response,
            int status,
            OpenVisit open,
            EntryForm form,
            LeavingForm leaving,
            Form typed,
            RetorqueForm retorqueForm) {
        var formId = typed.get("form");
        var saved = typed.get("saved");
        var proposal = new WheelProposal(desk.assessor(), open);
        var ofSets = open.history().sets().stream().map(proposal::of).toList();
        var standing = ofSets.stream()
                .filter(fill -> fill.setId().equals(typed.get("set")))
                .findFirst()
                .orElseGet(proposal::standing);
        pages.send(
                response,
                status,
                "desk/visit/entry",
                new EntryPage(
                        open,
                        form.page(formId.isEmpty() ? UUID.randomUUID().toString() : formId),
                        saved.matches("[0-9]{1,3}") ? Integer.valueOf(saved) : null,
                        leaving.page(standing, ofSets),
                        dueRetorque(open.visit().id(), retorqueForm),
                        written(open),
                        BrakeDust.ofWeek(desk.book(), open.visit().date()),
                        ToolChoice.of(desk.book(), open.visit())));
    }

    private static Said said(RecordedRetorque again) {
        return new VisitSaid.TightenedAgain(
                again.date(),
                again.odometerKm() == null ? null : Amount.of(again.odometerKm(), "km"),
                again.torqueNm() == null ? null : Amount.exact(again.torqueNm(), "N·m"),
                again.person());
    }

    private EntryPage.Written written(OpenVisit open) {
        var visit = open.visit();
        var notes = desk.book().bay().read(visit.id());
        var departure = notes.departure().orElse(null);
        return new EntryPage.Written(
                VisitDataPage.changes(desk.book(), open),
                notes.remarks(),
                departure != null,
                // Nothing is judged here: what was unsafe stands as it was told then.
                Departure.leftOpen(departure, visit, notes.ticks(), Release.of(visit, List.of()), Told.reader()),
                agreed(visit),
                desk.book()
                        .retorques()
                        .findRecorded(visit.id())
                        .map(EntryHandler::said)
                        .orElse(null));
    }

    private List<Said> agreed(Visit visit) {
        var work = desk.book().estimates().of(visit.id());
        return Stream.of(WorkTold.agreedAndFree(work, visit), WorkTold.declined(work, work.standing().stream()))
                .flatMap(List::stream)
                .toList();
    }

    private @Nullable DueRetorque dueRetorque(String visitId, RetorqueForm typed) {
        return desk.book()
                .retorques()
                .findOpen(visitId)
                .map(due -> new DueRetorque(due, typed, VisitDataHandler.person()))
                .orElse(null);
    }
}
