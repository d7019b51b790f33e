package cornerbook.app.book.out;

import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.out.CarRows.WheelRow;
import cornerbook.app.book.out.VisitRows.Person;
import cornerbook.app.book.out.VisitRows.ReadingRow;
import cornerbook.app.book.out.VisitRows.State;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** All readings of one visit, and which of them the book goes by. */
final class VisitReadings {
    private final List<Kept> all = new ArrayList<>();

    private record Kept(
            Reading reading,
            boolean moved,
            @Nullable String person,
            @Nullable Instant enteredAt) {}

    /** Where a reading was taken; two at one place are the same thing read twice. */
    private record Place(
            Measure measure,
            @Nullable Corner corner,
            @Nullable String wheelTag,
            @Nullable Spot spot) {
        static Place of(Reading reading) {
            return new Place(reading.measure(), reading.corner(), reading.wheelTag(), reading.spot());
        }
    }

    /** A row of readings with who entered it, and whether it was moved. */
    void add(ResultSet row) throws SQLException {
        var enteredAt = row.getString("made_at");
        all.add(new Kept(
                CarReader.reading(row),
                row.getString("moved") != null,
                row.getString("person"),
                enteredAt == null ? null : Instant.parse(enteredAt)));
    }

    List<ReadingRow> rows(boolean cancelled, Map<String, WheelRow> wheels, Map<String, Person> people) {
        var numberOf = new HashMap<String, Integer>();
        all.forEach(kept -> numberOf.put(kept.reading().id(), numberOf.size() + 1));
        var stay = all.stream().filter(kept -> !kept.moved()).map(Kept::reading).toList();
        var standing = new StandingReadings(stay);
        var counting = counting(standing);
        return all.stream()
                .map(kept -> {
                    var reading = kept.reading();
                    var id = reading.id();
                    return new ReadingRow(
                            numberOf.getOrDefault(id, 0),
                            reading,
                            numberOf.get(reading.corrects()),
                            state(kept, cancelled, standing.isCorrected(reading), counting.contains(id)),
                            wheels.get(reading.wheelTag()),
                            people.get(kept.person()),
                            kept.enteredAt());
                })
                .toList();
    }

    private static State state(Kept kept, boolean cancelled, boolean corrected, boolean counts) {
        if (cancelled) {
            return State.VISIT_CANCELLED;
        }
        if (kept.moved()) {
            return State.MOVED;
        }
        if (corrected) {
            return State.CORRECTED;
        }
        return counts ? State.COUNTS : State.READ_AGAIN;
    }

    /** Ids of the last that stand at each place. */
    private static Set<String> counting(StandingReadings standing) {
        var last = new HashMap<Place, String>();
        standing.all().forEach(reading -> last.put(Place.of(reading), reading.id()));
        return new HashSet<>(last.values());
    }
}
