package cornerbook.app.book.bay;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.photo.PhotoLedger;
import cornerbook.app.book.photo.PhotoSaid;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.visit.ReadingLedger;
import cornerbook.app.book.visit.VisitChanges;
import cornerbook.app.book.visit.VisitSaid;
import cornerbook.app.book.visit.VisitValue;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * What was entered at the wrong corner or the wrong car, and goes to where it belongs. Where it was it is kept, struck, and the book
 * says where it went, why, and who said so.
 */
public final class Misplaced {
    private final Transactions store;

    public Misplaced(Transactions store) {
        this.store = store;
    }

    /** What can be entered in a wrong place. */
    public enum Thing {
        READING,
        TICK,
        PHOTO
    }

    /** Several things of one visit, by their ids. */
    public record Things(Set<String> readings, Set<String> ticks, Set<String> photos) {
        public Things {
            readings = Set.copyOf(readings);
            ticks = Set.copyOf(ticks);
            photos = Set.copyOf(photos);
        }

        private boolean isEmpty() {
            return readings.isEmpty() && ticks.isEmpty() && photos.isEmpty();
        }
    }

    /**
     * Where it goes.
     *
     * @param visitId of the same car, or of another
     * @param corner null where it stays at its own, or has none
     * @param instead whether a reading comes in the place of what was read there already
     */
    public record Goal(String visitId, @Nullable Corner corner, boolean instead) {}

    /**
     * Moves one thing.
     *
     * @param id of a reading, a tick or a photo that stands
     * @param because has a name and the id of the entry
     * @param at when it was said
     * @throws BookException when it stands no more, is there already, or cannot be there
     */
    public Arrival move(String visitId, Thing thing, String id, Goal goal, Because because, Instant at) {
        return store.write(handle -> {
            var cars = new CarLedger(within(handle));
            var changes =
                    new VisitChanges(handle, cars.getOfVisit(visitId).vehicle().id());
            if (changes.has(because)) {
                return Arrival.ALREADY;
            }
            move(
                    handle,
                    visitId,
                    switch (thing) {
                        case READING -> new Things(Set.of(id), Set.of(), Set.of());
                        case TICK -> new Things(Set.of(), Set.of(id), Set.of());
                        case PHOTO -> new Things(Set.of(), Set.of(), Set.of(id));
                    },
                    goal,
                    because,
                    at);
            return Arrival.STORED;
        });
    }

    /**
     * Moves several things, all of them or none.
     *
     * @param at when it was said
     * @throws BookException when nothing is chosen, or one of them stands no more, is there already, or cannot be there; or when what
     *     was entered at several corners goes to one
     */
    public void move(String visitId, Things things, Goal goal, Because because, Instant at) {
        store.write(handle -> {
            if (things.isEmpty()) {
                throw new BookException(new VisitSaid.NothingToMove());
            }
            if (goal.corner() != null && corners(handle, visitId, things) > 1) {
                throw new BookException(new VisitSaid.SeveralCorners(goal.corner()));
            }
            move(handle, visitId, things, goal, because, at);
            return visitId;
        });
    }

    private static long corners(Handle handle, String visitId, Things things) {
        var visit = new CarLedger(within(handle)).getOfVisit(visitId).getVisit(visitId);
        return Stream.of(
                        visit.readings().stream()
                                .filter(reading -> things.readings().contains(reading.id()))
                                .map(Reading::corner),
                        new BayRows(handle)
                                .listTicks(visitId).stream()
                                        .filter(tick -> things.ticks().contains(tick.id()))
                                        .map(WorkTick::corner),
                        new PhotoLedger(within(handle))
                                .list(visitId).stream()
                                        .filter(photo -> things.photos().contains(photo.id()))
                                        .map(Photo::corner))
                .flatMap(each -> each)
                .filter(Objects::nonNull)
                .distinct()
                .count();
    }

    private static void move(Handle handle, String visitId, Things things, Goal goal, Because because, Instant at) {
        if (!things.readings().isEmpty()) {
            new ReadingLedger(within(handle))
                    .move(visitId, things.readings(), goal.visitId(), goal.corner(), goal.instead(), because);
        }
        things.ticks().forEach(tick -> moveTick(handle, visitId, tick, goal, because, at));
        things.photos().forEach(photo -> movePhoto(handle, visitId, photo, goal, because));
    }

    private static void moveTick(Handle handle, String visitId, String id, Goal goal, Because because, Instant at) {
        var rows = new BayRows(handle);
        var tick = rows.listTicks(visitId).stream()
                .filter(each -> each.id().equals(id) && each.done())
                .filter(each -> StandingTicks.of(rows.listTicks(visitId))
                        .find(each.tick(), each.wheelTag())
                        .filter(WorkTick::done)
                        .isPresent())
                .findFirst()
                .orElseThrow(() -> new BookException(new VisitSaid.PutRightMeanwhile()));
        var there = there(handle, tick, goal);
        if (goal.visitId().equals(visitId) && there.tick().equals(tick.tick())) {
            throw new BookException(new VisitSaid.NoOtherPlace());
        }
        var ledger = new BayLedger(within(handle));
        var person = because.person() == null ? tick.person() : because.person();
        ledger.addTick(
                visitId,
                new WorkTick(
                        newId(), tick.tick(), tick.wheelTag(), WorkTick.Answer.TAKEN_BACK, true, List.of(), person, at),
                id);
        var stands = StandingTicks.of(rows.listTicks(goal.visitId())).find(there.tick(), there.wheelTag());
        ledger.addTick(goal.visitId(), there, stands.map(WorkTick::id).orElse(null));
        keep(handle, visitId, VisitValue.TICK, VisitValue.ofTick(tick.tick()), goal, because);
    }

    /** The same tick by the same person in its right place; that of a fastener is of the wheel there. */
    private static WorkTick there(Handle handle, WorkTick tick, Goal goal) {
        var name = tick.tick();
        String wheel = null;
        if (name.startsWith(WorkTick.FASTENER)) {
            var parts = name.substring(WorkTick.FASTENER.length()).split("\\.", -1);
            var corner = goal.corner() == null ? Corner.valueOf(parts[0]) : goal.corner();
            var car = new CarLedger(within(handle)).getOfVisit(goal.visitId());
            Map<Corner, String> wheelAt = car.getVisit(goal.visitId()).leftOn();
            wheel = wheelAt.get(corner);
            if (wheel == null || Integer.parseInt(parts[1]) > car.vehicle().fastenerCount()) {
                throw new BookException(new VisitSaid.NoWheelThere(corner));
            }
            name = WorkTick.FASTENER + corner + "." + parts[1];
        }
        return new WorkTick(newId(), name, wheel, WorkTick.Answer.DONE, true, List.of(), tick.person(), tick.madeAt());
    }

    private static void movePhoto(Handle handle, String visitId, String id, Goal goal, Because because) {
        var photos = new PhotoLedger(within(handle));
        var photo = photos.list(visitId).stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new BookException(new PhotoSaid.NoPhoto(id)));
        var corner = goal.corner() == null ? photo.corner() : goal.corner();
        if (goal.visitId().equals(visitId) && corner == photo.corner()) {
            throw new BookException(new VisitSaid.NoOtherPlace());
        }
        photos.move(visitId, id, goal.visitId(), corner);
        keep(handle, visitId, VisitValue.PHOTO, was(photo), goal, because);
    }

    private static String was(Photo photo) {
        return VisitValue.place(photo.corner(), null);
    }

    private static void keep(Handle handle, String visitId, VisitValue what, String was, Goal goal, Because because) {
        var cars = new CarLedger(within(handle));
        var plate = goal.visitId().equals(visitId)
                ? null
                : cars.getOfVisit(goal.visitId()).vehicle().plate();
        new VisitChanges(handle, cars.getOfVisit(visitId).vehicle().id())
                .keepChanged(visitId, what, was, VisitValue.place(goal.corner(), plate), because);
    }

    private static String newId() {
        return UUID.randomUUID().toString();
    }
}
