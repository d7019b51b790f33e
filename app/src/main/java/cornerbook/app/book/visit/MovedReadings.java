package cornerbook.app.book.visit;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Readings that go from the wrong corner or the visit of the wrong car to the right one. Runs inside the caller's transaction. */
final class MovedReadings {
    private MovedReadings() {}

    /**
     * A reading as it is in its right place: born anew there, for nothing that was measured is changed.
     *
     * @param right the visit of the right car
     * @param wrong the visit that it was entered at
     * @param corner the right one; null where it is the one that the reading names
     */
    static Reading at(Visit right, Visit wrong, Reading reading, @Nullable Corner corner) {
        var there = corner == null ? reading.corner() : corner;
        return new Reading(
                UUID.randomUUID().toString(),
                reading.measure(),
                there,
                wheel(right, wrong, reading, there),
                reading.spot(),
                reading.value(),
                reading.asWritten(),
                null,
                null);
    }

    /** The same in place of what was read there: that stays, corrected. */
    static Reading instead(Reading there, Reading moved, String reason) {
        return new Reading(
                moved.id(),
                moved.measure(),
                moved.corner(),
                moved.wheelTag(),
                moved.spot(),
                moved.value(),
                moved.asWritten(),
                there.id(),
                reason);
    }

    private static @Nullable String wheel(Visit right, Visit wrong, Reading reading, @Nullable Corner goal) {
        var tag = reading.wheelTag();
        var corner = reading.corner();
        if (tag == null || corner == null || goal == null) {
            return null;
        }
        Map<Corner, String> wheelAt = tag.equals(wrong.arrivedOn().get(corner)) ? right.arrivedOn() : right.leftOn();
        var there = wheelAt.get(goal);
        if (there == null) {
            throw new BookException(new VisitSaid.NoWheelThere(goal));
        }
        return there;
    }

    /** Strikes a reading with all that it corrected, which else would stand again. Who took it took it at the right car. */
    static void strike(Handle handle, Visit visit, Reading reading, Reading moved) {
        new TableRow("moved_reading")
                .set("reading_id", reading.id())
                .set("moved_to", moved.id())
                .insert(handle);
        handle.execute(
                "insert into reading_author (reading_id, person, made_at) select ?, person, made_at from reading_author where reading_id = ?",
                moved.id(),
                reading.id());
        var corrects = reading.corrects();
        while (corrects != null) {
            new TableRow("moved_reading").set("reading_id", corrects).insert(handle);
            var id = corrects;
            corrects = visit.readings().stream()
                    .filter(each -> each.id().equals(id))
                    .map(Reading::corrects)
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElse(null);
        }
    }
}
