package cornerbook.app.web;

import cornerbook.app.book.BookException;
import cornerbook.app.book.OpenRetorque;
import cornerbook.app.web.EntryPage.Leaving;
import cornerbook.app.web.EntryPage.RetorqueForm;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Visit;
import cornerbook.core.visit.WheelSet;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The entry form of a visit: readings, wheels leaving on, re-torque. */
final class EntryHandler {
    private static final RetorqueForm NOTHING_TYPED = new RetorqueForm("", "", "", "");
    private final Desk desk;
    private final Pages pages;

    EntryHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    void show(ServerRequest request, ServerResponse response) {
        var opened = open(request);
        var leaving = propose(opened, Pages.queryValue(request, "set"));
        send(
                response,
                200,
                opened,
                new EntryForm(opened.history, opened.visit, Form.EMPTY),
                Form.EMPTY,
                savedCount(request),
                leaving,
                NOTHING_TYPED);
    }

    void saveReadings(ServerRequest request, ServerResponse response) {
        var opened = open(request);
        var typed = Form.read(request);
        var form = new EntryForm(opened.history, opened.visit, typed);
        var readings = form.check(desk.today());
        if (form.isSound()) {
            try {
                desk.book().addReadings(opened.visit.id(), readings);
                Pages.redirect(response, Links.visit(opened.visit.id()) + "?saved=" + readings.size());
                return;
            } catch (BookException e) {
                form.refuse(Typed.sentence(String.valueOf(e.getMessage())));
            }
        }
        send(response, 422, opened, form, typed, null, propose(opened, ""), NOTHING_TYPED);
    }

    void saveLeaving(ServerRequest request, ServerResponse response) {
        var opened = open(request);
        var typed = Form.read(request);
        var chosen = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            if (!typed.get(corner.name()).isEmpty()) {
                chosen.put(corner, typed.get(corner.name()));
            }
        }
        String error;
        if (chosen.size() < Corner.values().length) {
            error = "A car leaves on four wheels; choose one at each corner.";
        } else {
            try {
                desk.book().recordLeaving(opened.visit.id(), chosen);
                Pages.redirect(response, Links.visit(opened.visit.id()) + "#leaving");
                return;
            } catch (BookException e) {
                error = Typed.sentence(String.valueOf(e.getMessage()));
            }
        }
        var leaving = new Leaving(chosen, !opened.visit.leftOn().isEmpty(), "as you chose them", error);
        send(
                response,
                422,
                opened,
                new EntryForm(opened.history, opened.visit, Form.EMPTY),
                Form.EMPTY,
                null,
                leaving,
                NOTHING_TYPED);
    }

    void saveRetorque(ServerRequest request, ServerResponse response) {
        var opened = open(request);
        var typed = Form.read(request);
        String error;
        try {
            desk.book()
                    .recordRetorque(
                            opened.visit.id(),
                            dateOf(typed.get("date"), desk.today()),
                            Typed.valueOf(typed.get("odometer"), "km"),
                            Typed.valueOf(typed.get("torque"), "N·m"));
            Pages.redirect(response, Links.visit(opened.visit.id()) + "#retorque");
            return;
        } catch (BookException | IllegalArgumentException e) {
            error = Typed.sentence(String.valueOf(e.getMessage()));
        }
        var retorque = new RetorqueForm(typed.get("date"), typed.get("odometer"), typed.get("torque"), error);
        send(
                response,
                422,
                opened,
                new EntryForm(opened.history, opened.visit, Form.EMPTY),
                Form.EMPTY,
                null,
                propose(opened, ""),
                retorque);
    }

    static LocalDate dateOf(String text, LocalDate today) {
        try {
            var date = LocalDate.parse(text);
            if (date.isAfter(today)) {
                throw new IllegalArgumentException(
                        "The date %s lies in the future, expected %s or earlier.".formatted(date, today));
            }
            return date;
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    "The date is missing or not a date, expected one as %s.".formatted(today), e);
        }
    }

    private record Opened(CarHistory history, Visit visit) {}

    private Opened open(ServerRequest request) {
        var visitId = Pages.pathValue(request, "id");
        var history = desk.getHistoryOfVisit(visitId);
        return new Opened(history, history.getVisit(visitId));
    }

    private static @Nullable Integer savedCount(ServerRequest request) {
        var saved = Pages.queryValue(request, "saved");
        return saved.matches("[0-9]{1,3}") ? Integer.valueOf(saved) : null;
    }

    /** The wheels that are filled in: those recorded, else the plan for the set asked for, else those it came on. */
    private Leaving propose(Opened opened, String setId) {
        var visit = opened.visit;
        var set = opened.history.sets().stream()
                .filter(candidate -> candidate.id().equals(setId))
                .findFirst();
        if (set.isPresent()) {
            return planned(opened, set.get());
        }
        return visit.leftOn().isEmpty()
                ? new Leaving(visit.arrivedOn(), false, "the wheels that it came on", "")
                : new Leaving(visit.leftOn(), true, "as recorded", "");
    }

    private Leaving planned(Opened opened, WheelSet set) {
        boolean recorded = !opened.visit.leftOn().isEmpty();
        var unmoved = lastCorners(opened, set);
        if (unmoved.size() == Corner.values().length) {
            var visits = opened.history.visits().stream()
                    .map(visit -> visit.equals(opened.visit) ? leavingOn(visit, unmoved) : visit)
                    .toList();
            var imagined =
                    new CarHistory(opened.history.vehicle(), opened.history.customer(), opened.history.sets(), visits);
            var plan = desk.assessor().assess(imagined, opened.visit.id()).plan();
            if (plan != null) {
                return new Leaving(plan.wheelAt(), recorded, "as the wheel plan has them", "");
            }
        }
        return new Leaving(unmoved, recorded, "where they ran before", "");
    }

    private static Map<Corner, String> lastCorners(Opened opened, WheelSet set) {
        for (var visit : opened.history.visits().reversed()) {
            for (var wheelAt : List.of(visit.leftOn(), visit.arrivedOn())) {
                if (wheelAt.size() == Corner.values().length
                        && wheelAt.values().stream()
                                .allMatch(tag -> set.wheels().stream()
                                        .anyMatch(wheel -> wheel.tag().equals(tag)))) {
                    return wheelAt;
                }
            }
        }
        // A set that has never run stands in the order of its list.
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        for (int i = 0; i < Math.min(set.wheels().size(), Corner.values().length); i++) {
            wheelAt.put(Corner.values()[i], set.wheels().get(i).tag());
        }
        return wheelAt;
    }

    private static Visit leavingOn(Visit visit, Map<Corner, String> leftOn) {
        return new Visit(
                visit.id(),
                visit.date(),
                visit.odometerKm(),
                visit.technician(),
                visit.arrivedOn(),
                leftOn,
                visit.readings(),
                visit.workDone(),
                visit.notes(),
                visit.nextVisitDue());
    }

    private void send(
            ServerResponse response,
            int status,
            Opened opened,
            EntryForm form,
            Form typed,
            @Nullable Integer saved,
            Leaving leaving,
            RetorqueForm retorqueForm) {
        var formId = typed.get("form");
        pages.send(
                response,
                status,
                "entry",
                new EntryPage(
                        opened.history,
                        opened.visit,
                        formId.isEmpty() ? UUID.randomUUID().toString() : formId,
                        form.corners(),
                        form.vehicle(),
                        form.problem(),
                        form.errors(),
                        saved,
                        leaving,
                        openRetorque(opened.visit.id()),
                        retorqueForm));
    }

    private @Nullable OpenRetorque openRetorque(String visitId) {
        return desk.book().listOpenRetorques().stream()
                .filter(open -> open.visitId().equals(visitId))
                .findFirst()
                .orElse(null);
    }
}
