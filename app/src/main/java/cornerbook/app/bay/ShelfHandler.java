package cornerbook.app.bay;

import cornerbook.app.book.rack.By;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.FreePlaces;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Where the set goes that comes off a car. A place is asked for and taken at once: another tablet may take it. */
final class ShelfHandler {
    private static final int REFUSED = 409;

    private final Desk desk;

    ShelfHandler(Desk desk) {
        this.desk = desk;
    }

    /**
     * Of a set that comes off.
     *
     * @param tag of one of its wheels; null where none comes off
     * @param place where it lies, or the free place for it; null where there is none
     * @param lies whether it lies there already
     * @param sentence why it was not laid down; null when it was not refused
     */
    record Shelf(
            @Nullable String tag,
            @Nullable String place,
            boolean lies,
            @Nullable String sentence) {}

    void show(ServerRequest request, ServerResponse response) {
        try {
            BayHandler.send(response, 200, shelf(Pages.pathValue(request, "id"), null));
        } catch (PageException e) {
            BayHandler.send(response, e.status(), new Shelf(null, null, false, Told.say(e.said())));
        }
    }

    /** The set is laid at the place that was shown. */
    void put(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        try {
            var said = new Entry(BayJson.read(request), "");
            var set = set(visitId);
            KnownPeople.onTabletThatAsks(desk).require(said.person(), "/person");
            if (set.isPresent()) {
                desk.book()
                        .stock()
                        .put(
                                UUID.randomUUID().toString(),
                                set.get().tags().getFirst(),
                                said.text("place"),
                                new By(said.person(), desk.now()),
                                desk.today());
            }
            BayHandler.send(response, 200, shelf(visitId, null));
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            BayHandler.send(response, REFUSED, shelf(visitId, Typed.sentence(e)));
        } catch (PageException e) {
            BayHandler.send(response, e.status(), new Shelf(null, null, false, Told.say(e.said())));
        } catch (RefusedEntry e) {
            BayHandler.send(response, 400, new Shelf(null, null, false, EntryAnswer.sentence(e.said())));
        }
    }

    private Shelf shelf(String visitId, @Nullable String sentence) {
        var free = FreePlaces.of(desk);
        return set(visitId)
                // Where no rack was named there is nothing to propose, and nothing is missing.
                .filter(set -> set.lies() || !free.map().places().isEmpty())
                .map(set -> new Shelf(
                        set.tags().getFirst(),
                        set.lies()
                                ? set.place()
                                : free.propose(set).map(place -> place.name()).orElse(null),
                        set.lies(),
                        sentence))
                .orElse(new Shelf(null, null, false, sentence));
    }

    /** The one on which the car came, unless it leaves on it. */
    private Optional<KeptSet> set(String visitId) {
        var visit = desk.getVisit(visitId);
        return visit.arrivedOn().entrySet().stream()
                .min(Map.Entry.comparingByKey())
                .flatMap(first -> desk.book().stock().find(first.getValue()))
                .filter(set -> set.tags().stream().noneMatch(visit.leftOn()::containsValue));
    }
}
