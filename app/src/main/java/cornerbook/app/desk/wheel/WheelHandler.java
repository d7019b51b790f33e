package cornerbook.app.desk.wheel;

import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.LabelFields;
import cornerbook.app.desk.Links;
import cornerbook.app.desk.Pages;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.label.ShelfLabels;
import cornerbook.app.sheet.label.WheelLabels;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
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
        Pages.redirect(response, Links.wheel(Pages.queryValue(request, "tag")));
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
                ShelfLabels.render(desk.book().cars().readStored(), LabelFields.place(Form.ofQuery(request)), Told.reader()));
    }

    /** Of one set, of the sets of a visit, or of all sets of the cars of a day. */
    public void sendTags(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        var from = LabelFields.place(asked);
        var tags = asked.has("wheel")
                ? ofSet(asked.get("wheel"))
                : asked.has("visit") ? ofVisit(asked.get("visit")).toList() : ofDay(asked.get("day"));
        if (tags.isEmpty()) {
            throw new PageException(404, new WheelSaid.NoWheelToTag());
        }
        Pages.sendPdf(response, "wheel-tags", WheelLabels.render(tags, from, Told.reader()));
    }

    private List<WheelLabels.Tag> ofSet(String tag) {
        var history = getHistoryOfWheel(tag);
        return tags(history, history.findSetOf(tag).stream()).toList();
    }

    /** The sets that the car came or leaves on, and that were planned. */
    private Stream<WheelLabels.Tag> ofVisit(String visitId) {
        var history = desk.getHistoryOfVisit(visitId);
        var visit = history.getVisit(visitId);
        var plans = WheelPage.plans(history, visitId, desk.assessor()).stream()
                .map(planned -> planned.set().id())
                .toList();
        return tags(history, history.sets().stream().filter(set -> plans.contains(set.id()) || isOn(set, visit)));
    }

    private static boolean isOn(WheelSet set, Visit visit) {
        return set.wheels().stream()
                .anyMatch(wheel -> visit.arrivedOn().containsValue(wheel.tag())
                        || visit.leftOn().containsValue(wheel.tag()));
    }

    private List<WheelLabels.Tag> ofDay(String day) {
        try {
            return desk.book().visits().list(LocalDate.parse(day)).stream()
                    .flatMap(visit -> ofVisit(visit.visitId()))
                    .distinct()
                    .toList();
        } catch (DateTimeParseException e) {
            throw new PageException(422, new WheelSaid.NoSuchDay(day, "2026-11-25"));
        }
    }

    private Stream<WheelLabels.Tag> tags(CarHistory history, Stream<WheelSet> sets) {
        var plans = WheelPage.plans(history, desk.assessor());
        return sets.flatMap(set -> set.wheels().stream())
                .map(wheel -> WheelPage.of(history, wheel.tag(), plans))
                .map(page -> new WheelLabels.Tag(
                        page.wheel().tag(),
                        history.vehicle().plate(),
                        page.set().season(),
                        page.on().isPresent() ? page.before() : page.last(),
                        page.on().orElse(page.next()),
                        page.depthsMm(),
                        page.set().storePlace(),
                        page.wheel().tyre().size()));
    }

    private CarHistory getHistoryOfWheel(String tag) {
        return desk.book()
                .cars()
                .findOfWheel(tag)
                .orElseThrow(() -> new PageException(404, new WheelSaid.NoSuchWheel(tag)));
    }
}
