package cornerbook.app.desk.car;

import cornerbook.app.book.customer.KeptOfCustomer;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.exchange.KindFile;
import cornerbook.app.exchange.NewCar;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.request.Told;
import cornerbook.core.assess.SameKind;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.SeasonKind;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

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
        var typed = new HashMap<>(Map.of(NewCarPage.PLACE, usualPlace()));
        findOwner(Pages.queryValue(request, NewCarPage.CUSTOMER)).ifPresent(owner -> {
            typed.put(NewCarPage.CUSTOMER, owner.id());
            typed.put(NewCarPage.OWNER, owner.name());
            Optional.ofNullable(owner.phone()).ifPresent(phone -> typed.put(NewCarPage.PHONE, phone));
        });
        send(response, 200, UUID.randomUUID().toString(), typed, Map.of(), List.of());
    }

    public void save(ServerRequest request, ServerResponse response) {
        var form = Form.read(request);
        var typed = form.fields();
        var vehicleId = form.identity("car");
        if (desk.book().cars().findRevision(vehicleId).isPresent()) {
            Pages.redirect(response, CarLinks.car(vehicleId));
            return;
        }
        var errors = missing(form);
        if (!errors.isEmpty()) {
            send(response, 422, vehicleId, typed, errors, List.of());
            return;
        }
        var ownerId = findOwner(form.get(NewCarPage.CUSTOMER)).map(Customer::id).orElse("owner-" + vehicleId);
        switch (NewCar.read(vehicleId, ownerId, completed(form), desk.today())) {
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

    /** A customer whom the book knows, and whose data were not erased. */
    private Optional<Customer> findOwner(String customerId) {
        return desk.book()
                .customers()
                .find(customerId)
                .filter(kept -> kept.erased() == null)
                .map(KeptOfCustomer::customer);
    }

    /** What the shop has looked up for the kind outranks what the book has of another car. */
    private List<NewCarPage.Alike> alike(Vehicle car) {
        var sheets = kinds().stream()
                .flatMap(kind ->
                        SameKind.sign(car, kind.vehicle()).map(sign -> NewCarPage.Alike.ofSheet(kind, sign)).stream())
                .sorted(Comparator.comparing(NewCarPage.Alike::sign));
        return Stream.concat(sheets, cars(car)).limit(MOST_ALIKE).toList();
    }

    private Stream<NewCarPage.Alike> cars(Vehicle car) {
        return desk.book().cars().listNamedLike(car.name(), car.vin()).stream()
                .flatMap(
                        other -> SameKind.sign(car, other)
                                .map(sign -> new NewCarPage.Alike(other.id(), sign, NewCarPage.named(other)))
                                .stream())
                .sorted(Comparator.comparing(NewCarPage.Alike::sign));
    }

    private List<KindFile.Kind> kinds() {
        return KindFile.readAll(desk.book().kindSheets().list(), desk.today());
    }

    /**
     * What data are copied from.
     *
     * @param name as people tell it from others
     */
    private record Source(Vehicle vehicle, String name) {}

    /** Where the person chose to copy from; empty where nothing is copied. */
    private Optional<Source> findSource(Form form) {
        var from = form.get(NewCarPage.FROM);
        if (from.startsWith(NewCarPage.Alike.SHEET)) {
            return kinds().stream()
                    .filter(kind -> from.equals(NewCarPage.Alike.SHEET + kind.name()))
                    .findFirst()
                    .map(kind -> new Source(
                            kind.vehicle(), Told.labels("app/desk/car").of("sheet-named", "name", kind.name())));
        }
        return desk.book()
                .cars()
                .find(from)
                .map(CarHistory::vehicle)
                .map(other -> new Source(other, NewCarPage.named(other)));
    }

    private void add(ServerResponse response, Form form, CarHistory read) {
        var vehicle = findSource(form)
                .map(source -> SameKind.complete(read.vehicle(), source.vehicle(), source.name()))
                .orElse(read.vehicle());
        var car = NewCar.onItsWheels(
                new CarHistory(vehicle, read.customer(), List.of(), List.of()),
                SeasonKind.valueOf(form.get(NewCarPage.SEASON)),
                form.has(NewCarPage.SPARE));
        try {
            desk.book().records().addCar(car);
            Pages.redirect(
                    response,
                    CarLinks.newVisitOn(vehicle.id(), car.sets().getFirst().id()));
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

    /** The rear's size, where what data are copied from has another there and the same in front. */
    private Map<String, String> completed(Form form) {
        var completed = new HashMap<>(form.fields());
        if (form.get(NewCarPage.REAR_SIZE).isEmpty()) {
            findSource(form)
                    .map(Source::vehicle)
                    .filter(other -> other.front().tyreSize().equalsIgnoreCase(form.get(NewCarPage.SIZE)))
                    .ifPresent(other ->
                            completed.put(NewCarPage.REAR_SIZE, other.rear().tyreSize()));
        }
        return completed;
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
