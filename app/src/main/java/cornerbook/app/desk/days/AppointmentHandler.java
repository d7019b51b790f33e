package cornerbook.app.desk.days;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentSaid;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.SetsThere;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.days.AppointmentPage.Choices;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.request.PageException;
import cornerbook.core.car.CarHistory;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Days are agreed with customers, moved and called off. */
public final class AppointmentHandler {
    private static final int CARS_ON_A_PAGE = 25;
    private static final String TEMPLATE = "desk/days/appointment";

    private final Desk desk;
    private final Pages pages;

    public AppointmentHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** For the car of the address, or that of its visit; else the car is looked for first. */
    public void showNew(ServerRequest request, ServerResponse response) {
        var car = Pages.queryValue(request, "car");
        var visit = Pages.queryValue(request, "visit");
        if (car.isEmpty() && visit.isEmpty()) {
            choose(Pages.queryValue(request, "q"), response);
            return;
        }
        var history = car.isEmpty() ? desk.getHistoryOfVisit(visit) : desk.getHistory(car);
        var work = Form.ofQuery(request)
                .choice("work", List.of(PlannedWork.values()))
                .orElse(PlannedWork.WHEELS_AND_BRAKES);
        var fields = Map.of(
                "id", UUID.randomUUID().toString(),
                "day", Pages.queryValue(request, "day"),
                "work", work.name());
        send(response, 200, carOf(history), List.of(), new Form(fields), "");
    }

    private void choose(String query, ServerResponse response) {
        var found = desk.book().search().find(query, 0, CARS_ON_A_PAGE);
        pages.send(response, 200, "desk/days/choose-car", new ChooseCarPage(query, found.cars(), found.all()));
    }

    public void make(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var history = desk.getHistory(typed.get("car"));
        var id = typed.identity("id");
        try {
            var plan = inTime(plan(typed), history.vehicle().id(), typed);
            desk.book()
                    .appointments()
                    .make(
                            id,
                            history.vehicle().id(),
                            choice(AppointmentState.ofNew(), typed, "state"),
                            plan,
                            because(typed),
                            desk.today());
            Pages.redirect(response, DayLinks.days(plan.day()));
        } catch (BookException | IllegalArgumentException e) {
            send(response, 422, carOf(history), List.of(), typed, Typed.sentence(e));
        }
    }

    public void show(ServerRequest request, ServerResponse response) {
        var turns = turns(request);
        send(response, 200, turns.getLast().car(), turns, fieldsOf(turns.getLast()), "");
    }

    public void change(ServerRequest request, ServerResponse response) {
        var turns = turns(request);
        var typed = Form.read(request);
        var entryId = typed.identity("id");
        try {
            var plan = inTime(plan(typed), turns.getLast().car().id(), typed);
            desk.book()
                    .appointments()
                    .change(entryId, turns.getLast().id(), seenTurn(typed), plan, because(typed), desk.today());
            Pages.redirect(response, DayLinks.days(plan.day()));
        } catch (BookException | IllegalArgumentException e) {
            send(response, 422, turns.getLast().car(), turns, typed, Typed.sentence(e));
        }
    }

    /** Confirmed, not come or called off. */
    public void say(ServerRequest request, ServerResponse response) {
        var turns = turns(request);
        var typed = Form.read(request);
        var entryId = typed.identity("id");
        var agreed = turns.getLast();
        var ledger = desk.book().appointments();
        try {
            switch (choice(
                    List.of(AppointmentState.BOOKED, AppointmentState.MISSED, AppointmentState.CALLED_OFF),
                    typed,
                    "state")) {
                case MISSED -> ledger.miss(entryId, agreed.id(), seenTurn(typed), because(typed), desk.today());
                case CALLED_OFF -> ledger.callOff(entryId, agreed.id(), seenTurn(typed), because(typed));
                default -> ledger.confirm(entryId, agreed.id(), seenTurn(typed), because(typed));
            }
            Pages.redirect(response, DayLinks.days(agreed.plan().day()));
        } catch (BookException e) {
            var shown = new HashMap<>(fieldsOf(agreed).fields());
            shown.put("reason", typed.get("reason"));
            shown.put("person", typed.get("person"));
            send(response, 422, agreed.car(), turns, new Form(shown), Typed.sentence(e));
        }
    }

    private List<Appointment> turns(ServerRequest request) {
        var turns = desk.book().appointments().listTurns(Pages.pathValue(request, "id"));
        if (turns.isEmpty()) {
            throw new PageException(404, new AppointmentSaid.NoAppointment());
        }
        return turns;
    }

    private Plan plan(Form typed) {
        var choices = choices();
        var work = choice(List.of(PlannedWork.values()), typed, "work");
        var minutes = typed.get("minutes");
        return new Plan(
                day(typed.get("day")),
                time(typed.get("time")),
                work,
                minutes.isEmpty() ? (int) Math.round(choices.expected(work).usual()) : minutes(minutes),
                known(typed.get("hoist"), choices.hoists(), DaysSaid.NoHoist::new),
                known(typed.get("worker"), choices.people(), DaysSaid.NoWorker::new),
                typed.get("note"));
    }

    private LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new DeskSaid.NoDay(desk.today().toString()));
        }
    }

    private static @Nullable LocalTime time(String text) {
        if (text.isEmpty()) {
            return null;
        }
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new DaysSaid.NoTime(text));
        }
    }

    /** The set of the car is there on that day, or somebody has said that it will be all the same. */
    private Plan inTime(Plan plan, String carId, Form typed) {
        var wanting = SetsThere.of(desk.book(), carId, desk.localNow()).wanting(carId, plan);
        if (wanting != null && !typed.has("sooner")) {
            throw new Refused(new DaysSaid.SetComesLater(wanting.set().place().room(), wanting.day()));
        }
        return plan;
    }

    private static int minutes(String text) {
        if (!text.matches("\\d{1,6}")) {
            throw new Refused(new DaysSaid.NoMinutes(text));
        }
        return Integer.parseInt(text);
    }

    private static @Nullable String known(String text, List<String> known, Function<String, Said> unknown) {
        if (text.isEmpty()) {
            return null;
        }
        if (!known.contains(text)) {
            throw new Refused(unknown.apply(text));
        }
        return text;
    }

    private static <E extends Enum<E>> E choice(List<E> choices, Form typed, String name) {
        return typed.choice(name, choices).orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
    }

    private static int seenTurn(Form typed) {
        var turn = typed.get("turn");
        if (!turn.matches("\\d{1,6}")) {
            throw new PageException(400, new DeskSaid.FormNotUnderstood());
        }
        return Integer.parseInt(turn);
    }

    private Because because(Form typed) {
        var reason = typed.get("reason");
        return new Because(reason.isEmpty() ? null : reason, typed.person(), desk.now());
    }

    private Choices choices() {
        return new Choices(
                desk.book().tools().list().stream()
                        .filter(tool -> tool.kind() == ShopTool.Kind.HOIST)
                        .map(ShopTool::id)
                        .toList(),
                desk.book().devices().listPeople(),
                desk.book().clockedTimes().expected());
    }

    static Appointment.Car carOf(CarHistory history) {
        var vehicle = history.vehicle();
        var customer = history.customer();
        return new Appointment.Car(
                vehicle.id(),
                vehicle.name(),
                vehicle.plate(),
                customer.id(),
                customer.name(),
                customer.phone(),
                vehicle.mayHaveHighVoltage());
    }

    private static Form fieldsOf(Appointment agreed) {
        var plan = agreed.plan();
        return new Form(Map.of(
                "id", UUID.randomUUID().toString(),
                "turn", Integer.toString(agreed.turn()),
                "day", plan.day().toString(),
                "time", Objects.toString(plan.time(), ""),
                "work", plan.work().name(),
                "minutes", Integer.toString(plan.minutes()),
                "hoist", Objects.toString(plan.hoist(), ""),
                "worker", Objects.toString(plan.worker(), ""),
                "note", plan.note()));
    }

    private void send(
            ServerResponse response,
            int status,
            Appointment.Car car,
            List<Appointment> turns,
            Form typed,
            String error) {
        pages.send(
                response,
                status,
                TEMPLATE,
                new AppointmentPage(
                        desk.today(),
                        car,
                        turns,
                        typed,
                        choices(),
                        desk.book().skills().list(),
                        SetsThere.of(desk.book(), car.id(), desk.localNow())
                                .byCar()
                                .get(car.id()),
                        error));
    }
}
