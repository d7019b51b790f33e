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

    /** The ids of a car that is new to the book. */
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
        history.visits().forEach(visit -> refuse(vehicleId, visit));
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
        refuse(
                "select id, visit_id as owner from reading where id in (<ids>)",
                visit.readings().stream().map(Reading::id).toList(),
                taken -> new StoreSaid.ReadingTaken(taken.id, visit.id(), taken.owner));
    }

    private record Taken(String id, String owner) {}

    private void refuse(String query, List<String> ids, Function<Taken, Said> sentence) {
        if (ids.isEmpty()) {
            return;
        }
        handle.createQuery(query)
                .bindList("ids", ids)
                .map((row, context) -> new Taken(row.getString("id"), row.getString("owner")))
                .findFirst()
                .ifPresent(taken -> {
                    throw new BookException(sentence.apply(taken));
                });
    }
}
