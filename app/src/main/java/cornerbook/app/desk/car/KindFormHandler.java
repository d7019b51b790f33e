package cornerbook.app.desk.car;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.exchange.KindFile;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Vehicle;
import cornerbook.core.finding.Problem;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The data sheet of a kind of car as a form: new, of a car of the book, or one that is kept. */
public final class KindFormHandler {
    private static final String WAS = "was";
    private static final String CAR = "car";

    private final Desk desk;
    private final Pages pages;

    public KindFormHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var was = Pages.queryValue(request, "kind");
        var like = Pages.queryValue(request, "like");
        var car = like.isEmpty()
                ? Pages.queryValue(request, CAR)
                : findNamed(like).map(Vehicle::id).orElse("");
        if (!was.isEmpty() && findKept(was).isEmpty()) {
            throw new PageException(404, new CarSaid.NoSuchSheet(was));
        }
        if (!car.isEmpty() && desk.book().cars().find(car).isEmpty()) {
            throw new PageException(404, new CarSaid.NoCarForSheet(car));
        }
        if (!like.isEmpty() && car.isEmpty()) {
            send(
                    response,
                    422,
                    was,
                    "",
                    new CarFields(
                            Map.of(KindFile.NAME, like),
                            Map.of("", Typed.sentence(Told.say(new CarSaid.NoCarOfKind(like))))));
            return;
        }
        var shown = CarDataUnits.of(Map.of()).shown(values(was, car), KindFile.fields());
        send(response, 200, was, car, new CarFields(shown, Map.of()));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var form = Form.read(request);
        var typed = form.fields();
        var was = form.get(WAS);
        var car = form.get(CAR);
        switch (KindFile.read(CarDataUnits.of(typed).meant(typed, values(was, car), KindFile.fields()), desk.today())) {
            case KindFile.Faulty faulty ->
                send(response, 422, was, car, new CarFields(typed, byField(faulty.problems())));
            case KindFile.Read read -> {
                var name = read.kind().name();
                if (!name.equals(was) && findKept(name).isPresent()) {
                    var kept = Typed.sentence(Told.say(new CarSaid.SheetKept(name)));
                    send(response, 422, was, car, new CarFields(typed, Map.of(KindFile.NAME, kept)));
                } else {
                    desk.book().kindSheets().change(was, name, KindFile.write(read.kind()));
                    Pages.redirect(response, ShopLinks.kinds());
                }
            }
        }
    }

    /** What stands where the form begins; a sheet that was removed meanwhile has nothing. */
    private Map<String, String> values(String was, String car) {
        return findKept(was)
                .or(() -> desk.book().cars().find(car).map(CarHistory::vehicle).map(each -> KindFile.of(each, "")))
                .map(KindFile::values)
                .orElse(Map.of());
    }

    private Optional<KindFile.Kind> findKept(String name) {
        return KindFile.readAll(desk.book().kindSheets().find(name).stream().toList(), desk.today()).stream()
                .findFirst();
    }

    /** The latest car of that name of which more than its tyres is known. */
    private Optional<Vehicle> findNamed(String kind) {
        return desk.book().cars().listNamedLike(kind, null).stream()
                .filter(car -> KindFile.of(car, "").name().equalsIgnoreCase(kind.strip()))
                .findFirst();
    }

    private static Map<String, String> byField(List<Problem> problems) {
        var errors = new HashMap<>(CarDataHandler.byField(
                problems.stream()
                        .filter(problem -> !KindFile.OWN.contains(problem.where()))
                        .toList(),
                KindFile.fields()));
        problems.stream()
                .filter(problem -> KindFile.OWN.contains(problem.where()))
                .forEach(problem -> errors.putIfAbsent(problem.where(), Typed.sentence(Told.say(problem.message()))));
        return errors;
    }

    private void send(ServerResponse response, int status, String was, String car, CarFields form) {
        pages.send(
                response,
                status,
                "desk/car/kind",
                new KindFormPage(was, car, desk.book().cars().listKinds(), form));
    }
}
