package cornerbook.app.book.store;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** Refuses what is new by its content but bears an id that names another thing in the book. */
public final class TakenIds {
    private final Handle handle;

    public TakenIds(Handle handle) {
        this.handle = handle;
    }

    /**
     * The ids of a car that is new to the book, without those of readings behind the last visit whose own id is taken: they are
     * refused as they are written, without asking for each.
     */
    public void refuse(CarHistory history) {
        var vehicleId = history.vehicle().id();
        refuse(
                "select id, id as owner from vehicle where id in (<ids>)",
                List.of(vehicleId),
                taken -> new StoreSaid.CarTaken(taken.id));
        refuseWheels(
                vehicleId,
                history.sets().stream()
                        .flatMap(set -> set.wheels().stream())
                        .map(Wheel::tag)
                        .toList());
        var visits = history.visits();
        var taken = list(
                "select id, vehicle_id as owner from visit where id in (<ids>)",
                visits.stream().map(Visit::id).toList());
        if (!taken.isEmpty()) {
            // A file is told of what stands first in it.
            visits.forEach(visit -> refuse(vehicleId, visit));
        }
    }

    /** The tags of wheels that are new to the book. */
    public void refuseWheels(String vehicleId, List<String> tags) {
        refuse(
                "select tag as id, vehicle_id as owner from wheel where tag in (<ids>)",
                tags,
                taken -> new StoreSaid.WheelTaken(taken.id, vehicleId, taken.owner));
    }

    /** The ids of a visit that is new to the book. */
    public void refuse(String vehicleId, Visit visit) {
        refuse(
                "select id, vehicle_id as owner from visit where id in (<ids>)",
                List.of(visit.id()),
                taken -> new StoreSaid.VisitTaken(taken.id, vehicleId, taken.owner));
        refuseReadings(visit.id(), visit.readings().stream().map(Reading::id).toList());
    }

    /** The ids of readings that are new to the book, of a visit. */
    public void refuseReadings(String visitId, List<String> ids) {
        refuse(
                "select id, visit_id as owner from reading where id in (<ids>)",
                ids,
                taken -> new StoreSaid.ReadingTaken(taken.id, visitId, taken.owner));
    }

    private record Taken(String id, String owner) {}

    private void refuse(String query, List<String> ids, Function<Taken, Said> sentence) {
        list(query, ids).stream().findFirst().ifPresent(taken -> {
            throw new BookException(sentence.apply(taken));
        });
    }

    private List<Taken> list(String query, List<String> ids) {
        return ids.isEmpty()
                ? List.of()
                : handle.createQuery(query)
                        .bindList("ids", ids)
                        .map((row, context) -> new Taken(row.getString("id"), row.getString("owner")))
                        .list();
    }
}
