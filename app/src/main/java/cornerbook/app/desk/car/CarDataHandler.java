package cornerbook.app.desk.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.exchange.CarField;
import cornerbook.app.exchange.CarForm;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Problem;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Changes the data of a car that is in the book. */
public final class CarDataHandler {
    private static final Pattern ONE_WHEEL = Pattern.compile("(/wheelSets/\\d+)/wheels/\\d+");

    private final Desk desk;
    private final Pages pages;

    public CarDataHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var vehicleId = Pages.pathValue(request, "id");
        // The revision first: a change in between is then refused, not lost.
        long revision = desk.book().cars().findRevision(vehicleId).orElse(0L);
        var history = desk.getHistory(vehicleId);
        send(
                response,
                200,
                known(
                        history,
                        String.valueOf(revision),
                        CarDataUnits.of(Map.of()).shown(CarForm.values(history), CarForm.fields(history)),
                        Map.of()));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var history = desk.getHistory(Pages.pathValue(request, "id"));
        var typed = Form.read(request).fields();
        var revision = typed.getOrDefault("revision", "");
        if (!revision.matches("\\d{1,18}")) {
            throw new PageException(400, new DeskSaid.FormNotUnderstood());
        }
        var errors = store(
                CarForm.read(
                        history,
                        CarDataUnits.of(typed).meant(typed, CarForm.values(history), fields(history)),
                        1,
                        desk.today()),
                changed -> desk.book().cars().change(changed, Long.parseLong(revision), desk.today()),
                fields(history));
        if (errors.isEmpty()) {
            Pages.redirect(response, CarLinks.car(history.vehicle().id()));
        } else {
            send(response, 422, known(history, revision, typed, errors));
        }
    }

    /** What to do with a car that can stand. */
    private interface Keeping {
        void keep(CarHistory car);
    }

    private static Map<String, String> store(VisitFile.Result result, Keeping keeping, List<CarField> fields) {
        switch (result) {
            case VisitFile.Refused refused -> {
                return byField(refused.problems(), fields);
            }
            case VisitFile.Read read -> {
                try {
                    keeping.keep(read.history());
                    return Map.of();
                } catch (BookException e) {
                    return Map.of("", Typed.sentence(e));
                }
            }
        }
    }

    /** Each problem at its field, else at its object, else on top of the page. The wheels of a new set have their fields in common. */
    static Map<String, String> byField(List<Problem> problems, List<CarField> fields) {
        var places = new ArrayList<String>();
        for (CarField field : fields) {
            places.add(field.pointer());
            places.add(field.group());
        }
        var errors = new HashMap<String, String>();
        for (var problem : problems) {
            var where = places.contains(problem.where())
                    ? problem.where()
                    : ONE_WHEEL.matcher(problem.where()).replaceAll("$1");
            errors.putIfAbsent(places.contains(where) ? where : "", Typed.sentence(Told.say(problem.message())));
        }
        return errors;
    }

    private static List<CarField> fields(CarHistory history) {
        var fields = new ArrayList<>(CarForm.fields(history));
        fields.addAll(CarForm.setFields(history.sets().size()));
        return fields;
    }

    private CarDataPage known(
            CarHistory history, String revision, Map<String, String> typed, Map<String, String> errors) {
        var vehicle = history.vehicle();
        return new CarDataPage(
                vehicle.id(),
                vehicle.name(),
                revision,
                history.sets(),
                desk.book().cars().listWheelChanges(vehicle.id()),
                1,
                typed,
                errors);
    }

    private void send(ServerResponse response, int status, CarDataPage page) {
        pages.send(response, status, "desk/car/car-data", page);
    }
}
