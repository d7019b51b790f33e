package cornerbook.app.desk.car;

import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Links;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.exchange.NewCar;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.SameKind;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.SeasonKind;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Takes a new car at the door: what its first visit cannot begin without. The rest is given when it is met, or copied from a car of
 * the same kind.
 */
public final class NewCarHandler {
    private static final int MOST_ALIKE = 3;

    private final Desk desk;
    private final Pages pages;

    public NewCarHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, UUID.randomUUID().toString(), Map.of(NewCarPage.PLACE, usualPlace()), Map.of(), List.of());
    }

    public void save(ServerRequest request, ServerResponse response) {
        var form = Form.read(request);
        var typed = form.fields();
        var vehicleId = form.identity("car");
        if (desk.book().cars().findRevision(vehicleId).isPresent()) {
            Pages.redirect(response, Links.car(vehicleId));
            return;
        }
        var errors = missing(form);
        if (!errors.isEmpty()) {
            send(response, 422, vehicleId, typed, errors, List.of());
            return;
        }
        switch (NewCar.read(vehicleId, "owner-" + vehicleId, typed, desk.today())) {
            case VisitFile.Refused refused ->
                send(
                        response,
                        422,
                        vehicleId,
                        typed,
                        CarDataHandler.byField(refused.problems(), NewCarPage.fields()),
                        List.of());
            case VisitFile.Read read -> {
                var alike = form.has(NewCarPage.FROM)
                        ? List.<NewCarPage.Alike>of()
                        : alike(read.history().vehicle());
                if (alike.isEmpty()) {
                    add(response, form, read.history());
                } else {
                    send(response, 200, vehicleId, typed, Map.of(), alike);
                }
            }
        }
    }

    private List<NewCarPage.Alike> alike(Vehicle car) {
        return desk.book().cars().listNamedLike(car.name(), car.vin()).stream()
                .flatMap(
                        other -> SameKind.sign(car, other)
                                .map(sign -> new NewCarPage.Alike(other.id(), sign, NewCarPage.named(other)))
                                .stream())
                .sorted(Comparator.comparing(NewCarPage.Alike::sign))
                .limit(MOST_ALIKE)
                .toList();
    }

    private void add(ServerResponse response, Form form, CarHistory read) {
        var vehicle = desk.book()
                .cars()
                .find(form.get(NewCarPage.FROM))
                .map(CarHistory::vehicle)
                .map(other -> SameKind.complete(read.vehicle(), other, NewCarPage.named(other)))
                .orElse(read.vehicle());
        var car = NewCar.onItsWheels(
                new CarHistory(vehicle, read.customer(), List.of(), List.of()),
                SeasonKind.valueOf(form.get(NewCarPage.SEASON)));
        try {
            desk.book().records().addCar(car);
            Pages.redirect(
                    response,
                    Links.newVisitOn(vehicle.id(), car.sets().getFirst().id()));
        } catch (BookException e) {
            send(response, 422, vehicle.id(), form.fields(), Map.of("", Typed.sentence(e)), List.of());
        }
    }

    private static Map<String, String> missing(Form form) {
        var errors = new HashMap<String, String>();
        NewCarPage.ASKED.stream()
                .filter(pointer -> form.get(pointer).isEmpty())
                .forEach(pointer -> errors.put(pointer, NewCarPage.leftOut()));
        if (Arrays.stream(SeasonKind.values()).noneMatch(season -> season.name().equals(form.get(NewCarPage.SEASON)))) {
            errors.put(NewCarPage.SEASON, NewCarPage.leftOut());
        }
        return errors;
    }

    /** Whose law most cars of the book are judged by: a shop stands in one place. */
    private String usualPlace() {
        return desk.book()
                .cars()
                .findUsualPlace()
                .filter(place -> !place.equals(Vehicle.ANY_PLACE))
                .orElse("");
    }

    private void send(
            ServerResponse response,
            int status,
            String vehicleId,
            Map<String, String> typed,
            Map<String, String> errors,
            List<NewCarPage.Alike> alike) {
        pages.send(
                response,
                status,
                "desk/car/new-car",
                new NewCarPage(
                        vehicleId, typed, errors, alike, desk.book().cars().listKinds()));
    }
}
