package cornerbook.app.desk.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.rack.Bringing;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.SetElsewhere;
import cornerbook.app.book.rack.SetElsewhere.Step;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.FreePlaces;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.say.Refused;
import cornerbook.core.store.OnTheWay;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Which sets have to be brought from a store elsewhere, what became of it, and which rooms are elsewhere. */
public final class BringHandler {
    private static final int UNFIT = 422;
    private static final int REFUSED = 409;
    private static final int WEEKS_AHEAD = 4;

    private final Desk desk;
    private final Pages pages;

    public BringHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, until(Pages.queryValue(request, "until")), "");
    }

    private void send(ServerResponse response, int status, LocalDate until, String error) {
        pages.send(response, status, "desk/store/bring", page(until, error));
    }

    private LocalDate until(String text) {
        return text.isEmpty() ? desk.today().plusWeeks(WEEKS_AHEAD) : desk.dayInAddress(text);
    }

    private BringPage page(LocalDate until, String error) {
        var today = desk.today();
        var sets = desk.book().bringing().list();
        if (sets.isEmpty()) {
            return new BringPage(today, until, List.of(), error);
        }
        var next = desk.book().appointments().list(today, until.isBefore(today) ? today : until).stream()
                .filter(each -> each.state().isOpen() && each.plan().work().changesWheels())
                .collect(Collectors.toMap(each -> each.car().id(), each -> each, (first, later) -> first));
        // Days before today count, too: by then it should have been asked for.
        var works = desk.book().hours().workingDays(today.minusDays(2L * OnTheWay.MOST_WORKING_DAYS));
        var free = FreePlaces.of(desk);
        var rows = sets.stream()
                .filter(set ->
                        set.last() != null || next.containsKey(set.set().key().vehicleId()))
                .map(set -> row(set, next, works, free))
                .sorted(Comparator.comparing(BringHandler::inTurn))
                .toList();
        return new BringPage(today, until, rows, error);
    }

    /** By the day on which it has to be asked for, then by that of the appointment; those without one first. */
    private static String inTurn(BringPage.Row row) {
        var appointment = row.appointment();
        return Objects.toString(row.askBy(), "") + " "
                + (appointment == null ? "" : appointment.plan().day());
    }

    private BringPage.Row row(
            SetElsewhere set, Map<String, Appointment> next, Predicate<LocalDate> works, FreePlaces free) {
        var appointment = next.get(set.set().key().vehicleId());
        return new BringPage.Row(
                set,
                appointment,
                appointment == null
                        ? null
                        : set.bringing().way().askBy(appointment.plan().day(), works),
                set.comes(desk.localNow(), works),
                set.last() == null ? null : free.proposeHere(set.set()).orElse(null));
    }

    /** The same for spreadsheets. */
    public void sendCsv(ServerRequest request, ServerResponse response) {
        response.header(HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"sets-to-bring.csv\"");
        Pages.sendPacked(
                response,
                "text/csv; charset=utf-8; header=present",
                BringCsv.of(page(until(Pages.queryValue(request, "until")), ""), Told.reader())
                        .getBytes(UTF_8));
    }

    /** One set or several were asked for, are not any more, or came. */
    public void say(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var until = until(typed.get("until"));
        var step = typed.choice("step", List.of(Step.values()))
                .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
        try {
            var sets = sets(typed);
            for (int i = 0; i < sets.size(); i++) {
                say(typed.identity("id." + i), sets.get(i), step, typed);
            }
        } catch (BookException | Refused e) {
            if (e instanceof BookException refusal && refusal.isFailure()) {
                throw e;
            }
            send(response, REFUSED, until, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, StoreLinks.bring() + "?until=" + until);
    }

    /** All that a form names, each of which still lies elsewhere. */
    private List<SetElsewhere> sets(Form typed) {
        var elsewhere = desk.book().bringing().list().stream()
                .collect(Collectors.toMap(each -> each.set().key(), each -> each));
        var named = new ArrayList<SetElsewhere>();
        while (typed.has("car." + named.size())) {
            var key = new KeptSet.Key(typed.get("car." + named.size()), typed.get("set." + named.size()));
            named.add(Optional.ofNullable(elsewhere.get(key))
                    .orElseThrow(() -> new Refused(new StoreSaid.SetIsNotElsewhere())));
        }
        return named;
    }

    private void say(String id, SetElsewhere set, Step step, Form typed) {
        var ledger = desk.book().bringing();
        var by = StoreHandler.by(typed, desk);
        var today = desk.today();
        var key = set.set().key();
        switch (step) {
            case ASKED -> ledger.ask(id, key, comesOn(set, typed.get("comes")), by, today);
            case HERE -> ledger.comeIn(id, key, typed.get("place").strip(), by, today);
            case NOT_ASKED -> ledger.askNoMore(id, key, by, today);
        }
    }

    /** The day that was named, else as long as it takes from there. */
    private LocalDate comesOn(SetElsewhere set, String text) {
        if (text.isEmpty()) {
            return set.bringing().comes(desk.localNow(), desk.book().hours().workingDays(desk.today()));
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new StoreSaid.NoDay(desk.today().toString()));
        }
    }

    /** That a room is elsewhere, or is not. */
    public void sayRoom(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            desk.book()
                    .bringing()
                    .say(typed.identity("id"), typed.get("room"), bringing(typed), StoreHandler.by(typed, desk));
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            sendStore(response, REFUSED, e);
            return;
        } catch (Refused e) {
            sendStore(response, UNFIT, e);
            return;
        }
        Pages.redirect(response, StoreLinks.store());
    }

    private void sendStore(ServerResponse response, int status, RuntimeException refusal) {
        pages.send(
                response,
                status,
                "desk/store/store",
                StorePage.of(desk, new RackForm("room", "", Form.EMPTY, Typed.sentence(refusal))));
    }

    private static @Nullable Bringing bringing(Form typed) {
        if (!typed.has("elsewhere")) {
            return null;
        }
        var days = typed.get("days");
        if (!days.matches("\\d{1,4}")) {
            throw new Refused(new StoreSaid.NoWholeNumber(days));
        }
        return new Bringing(new OnTheWay(Integer.parseInt(days)), lastHour(typed.get("hour")));
    }

    private static @Nullable LocalTime lastHour(String text) {
        if (text.isEmpty()) {
            return null;
        }
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new StoreSaid.NoHour(text));
        }
    }
}
