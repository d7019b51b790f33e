package cornerbook.app.desk.wheel;

import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.FreePlaces;
import cornerbook.app.desk.LabelFields;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.label.ShelfLabels;
import cornerbook.app.sheet.label.StorePlace;
import cornerbook.app.sheet.label.WheelLabels;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The page of one wheel, as its tag opens it, and labels for the shelves that sets lie on. */
public final class WheelHandler {
    private final Desk desk;
    private final Pages pages;

    public WheelHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /** What was scanned or typed into the field. */
    public void find(ServerRequest request, ServerResponse response) {
        Pages.redirect(response, CarLinks.wheel(Pages.queryValue(request, "tag")));
    }

    public void show(ServerRequest request, ServerResponse response) {
        var tag = Pages.pathValue(request, "tag");
        var history = getHistoryOfWheel(tag);
        pages.send(response, 200, "desk/wheel/wheel", WheelPage.of(history, tag, desk.assessor()));
    }

    public void sendLabels(ServerRequest request, ServerResponse response) {
        Pages.sendPdf(
                response,
                "shelf-labels",
                ShelfLabels.render(
                        desk.book().cars().readStored(), LabelFields.place(Form.ofQuery(request)), Told.reader()));
    }

    /** Of one set, of the sets of a visit, or of all sets of the cars of a day. */
    public void sendTags(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        var from = LabelFields.place(asked);
        var sets = asked.has("wheel")
                ? ofSet(asked.get("wheel"))
                : asked.has("visit") ? List.of(ofVisit(asked.get("visit"))) : ofDay(asked.get("day"));
        var tags = tags(sets);
        if (tags.isEmpty()) {
            throw new PageException(404, new WheelSaid.NoWheelToTag());
        }
        Pages.sendPdf(response, "wheel-tags", WheelLabels.render(tags, from, Told.reader()));
    }

    /** Sets of a car whose wheels get labels. */
    private record OfCar(CarHistory history, List<WheelSet> sets) {
        Stream<KeptSet.Key> keys() {
            return sets.stream().map(this::key);
        }

        KeptSet.Key key(WheelSet set) {
            return new KeptSet.Key(history.vehicle().id(), set.id());
        }
    }

    private List<OfCar> ofSet(String tag) {
        var history = getHistoryOfWheel(tag);
        return List.of(new OfCar(history, history.findSetOf(tag).stream().toList()));
    }

    /** The sets that the car came or leaves on, and that were planned. */
    private OfCar ofVisit(String visitId) {
        var history = desk.getHistoryOfVisit(visitId);
        var visit = history.getVisit(visitId);
        var plans = WheelPage.plans(history, visitId, desk.assessor()).stream()
                .map(planned -> planned.set().id())
                .toList();
        return new OfCar(
                history,
                history.sets().stream()
                        .filter(set -> plans.contains(set.id()) || isOn(set, visit))
                        .toList());
    }

    private static boolean isOn(WheelSet set, Visit visit) {
        return set.wheels().stream()
                .anyMatch(wheel -> visit.arrivedOn().containsValue(wheel.tag())
                        || visit.leftOn().containsValue(wheel.tag()));
    }

    private List<OfCar> ofDay(String day) {
        try {
            return desk.book().visits().list(LocalDate.parse(day)).stream()
                    .map(visit -> ofVisit(visit.visitId()))
                    .distinct()
                    .toList();
        } catch (DateTimeParseException e) {
            throw new PageException(422, new WheelSaid.NoSuchDay(day, "2026-11-25"));
        }
    }

    private List<WheelLabels.Tag> tags(List<OfCar> cars) {
        var keys = cars.stream().flatMap(OfCar::keys).collect(Collectors.toSet());
        var places = FreePlaces.of(desk).forLabels(set -> keys.contains(set.key()));
        return cars.stream().flatMap(car -> tags(car, places)).distinct().toList();
    }

    private Stream<WheelLabels.Tag> tags(OfCar car, Map<KeptSet.Key, StorePlace> places) {
        var history = car.history();
        var plans = WheelPage.plans(history, desk.assessor());
        return car.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .map(wheel -> WheelPage.of(history, wheel.tag(), plans))
                .map(page -> new WheelLabels.Tag(
                        page.wheel().tag(),
                        history.vehicle().plate(),
                        page.set().season(),
                        page.on().isPresent() ? page.before() : page.last(),
                        page.on().orElse(page.next()),
                        page.depthsMm(),
                        places.get(car.key(page.set())),
                        page.wheel().tyre().size()));
    }

    private CarHistory getHistoryOfWheel(String tag) {
        return desk.book()
                .cars()
                .findOfWheel(tag)
                .orElseThrow(() -> new PageException(404, new WheelSaid.NoSuchWheel(tag)));
    }
}
