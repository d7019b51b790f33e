package cornerbook.app.desk.visit;

import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.work.Remark;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.EntryUnits;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.asked.WheelProposal;
import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.request.Caller;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.season.judge.OdometerRange;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Opens a visit. */
public final class NewVisitHandler {
    private static final double EXAMPLE_KM = 48_200;

    private final Desk desk;
    private final Pages pages;

    public NewVisitHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var history = desk.getHistory(Pages.pathValue(request, "id"));
        var asked = Pages.queryValue(request, "set");
        var fill = history.sets().stream()
                .filter(set -> set.id().equals(asked))
                .findFirst()
                .map(set -> WheelProposal.unmoved(history, set));
        pages.send(
                response,
                200,
                "desk/visit/new-visit",
                new NewVisitPage(
                        history,
                        UUID.randomUUID().toString(),
                        new NewVisitPage.Fields(desk.today().toString(), "", "", Map.of()),
                        fill.orElseGet(() -> asItLeft(history)),
                        "",
                        AskedOdometer.NONE));
    }

    public void save(ServerRequest request, ServerResponse response) {
        var history = desk.getHistory(Pages.pathValue(request, "id"));
        var typed = Form.read(request);
        var arrivedOn = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            if (!typed.get(corner.name()).isEmpty()) {
                arrivedOn.put(corner, typed.get(corner.name()));
            }
        }
        var error = "";
        var asked = AskedOdometer.NONE;
        try {
            var visit = read(typed, arrivedOn);
            boolean known =
                    history.visits().stream().anyMatch(other -> other.id().equals(visit.id()));
            var doubt = known
                    ? Optional.<AskedOdometer>empty()
                    : AskedOdometer.of(OdometerRange.of(history, visit), visit.odometerKm(), typed);
            if (doubt.isEmpty()) {
                if (!known) {
                    desk.book().visits().add(history.vehicle().id(), visit);
                    remarks(typed).forEach((topic, words) -> remark(visit, topic, words));
                }
                Pages.redirect(response, VisitLinks.visit(visit.id()));
                return;
            }
            asked = doubt.get();
        } catch (BookException | IllegalArgumentException e) {
            error = Typed.sentence(e);
        }
        pages.send(
                response,
                422,
                "desk/visit/new-visit",
                new NewVisitPage(
                        history,
                        typed.get("visit"),
                        new NewVisitPage.Fields(
                                typed.get("date"),
                                asked.asks() ? "" : AskedOdometer.of(typed),
                                typed.get("technician"),
                                remarks(typed)),
                        new Fill("", Said.verbatim(""), arrivedOn),
                        error,
                        asked));
    }

    private static Map<Remark.Topic, String> remarks(Form typed) {
        var remarks = new EnumMap<Remark.Topic, String>(Remark.Topic.class);
        for (var topic : NewVisitPage.ASKED) {
            if (!typed.get(topic.name()).isEmpty()) {
                remarks.put(topic, typed.get(topic.name()));
            }
        }
        return remarks;
    }

    private void remark(Visit visit, Remark.Topic topic, String words) {
        var technician = Objects.requireNonNullElse(visit.card().technician(), "");
        var person = Caller.current().tablet().map(TabletAtWork::person).orElse(technician);
        desk.book()
                .bay()
                .addRemark(visit.id(), new Remark(UUID.randomUUID().toString(), topic, words, person, desk.now()));
    }

    private Visit read(Form typed, Map<Corner, String> arrivedOn) {
        if (AskedOdometer.of(typed).isEmpty()) {
            throw new Refused(new DeskSaid.OdometerMissing(Amount.of(EXAMPLE_KM, "km")));
        }
        return new Visit(
                typed.identity("visit"),
                EntryHandler.dateOf(typed.get("date"), desk.today()),
                Typed.valueOf(
                        AskedOdometer.of(typed), "km", EntryUnits.of(typed).system()),
                arrivedOn,
                Map.of(),
                replacedOdometer(typed),
                new JobCard(
                        typed.get("technician").isEmpty() ? null : typed.get("technician"),
                        List.of(),
                        null,
                        null,
                        List.of()),
                Set.of());
    }

    /** An odometer that was replaced begins anew; what the old one read is a reading of its own. */
    private static List<Reading> replacedOdometer(Form typed) {
        var text = typed.get(AskedOdometer.REPLACED);
        var measure = Measure.REPLACED_ODOMETER;
        var written = EntryUnits.of(typed).withUnit(text, measure);
        return text.isEmpty()
                ? List.of()
                : List.of(new Reading(
                        UUID.nameUUIDFromBytes((typed.identity("visit") + measure).getBytes(StandardCharsets.UTF_8))
                                .toString(),
                        measure,
                        null,
                        null,
                        null,
                        Typed.valueOf(measure, written),
                        written,
                        null,
                        null));
    }

    private static Fill asItLeft(CarHistory history) {
        if (history.visits().isEmpty()) {
            return new Fill("", Said.verbatim(""), Map.of());
        }
        var last = history.visits().getLast();
        return new Fill(
                "",
                Said.verbatim(Told.labels("app/desk/visit").of("as-it-last-left")),
                last.leftOn().isEmpty() ? last.arrivedOn() : last.leftOn());
    }
}
