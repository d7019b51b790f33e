package cornerbook.app.book.visit;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.car.CarLedger;
import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.brake.judge.DustRule;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** What was measured and seen at visits. Readings are only added. */
public final class ReadingLedger {
    private final Transactions store;

    public ReadingLedger(Transactions store) {
        this.store = store;
    }

    public Optional<Reading> find(String readingId) {
        return store.read(handle -> handle.select("select * from reading where id = ?", readingId)
                .map((row, context) -> CarReader.reading(row))
                .findFirst());
    }

    /** Brake pairs, one to an axle, that were worked on at the visits of these days, both counted. */
    public int countBrakePairs(LocalDate from, LocalDate until) {
        return store.read(handle -> handle
                .createQuery(
                        "select reading.* from reading join visit on visit.id = reading.visit_id where visit.cancelled = 0 and "
                                + CarReader.STANDS
                                + " and visit.visit_date between :from and :until and reading.measure in (<measures>)")
                .bind("from", from.toString())
                .bind("until", until.toString())
                .bindList(
                        "measures", DustRule.measures().stream().map(Enum::name).toList())
                .map((row, context) -> Map.entry(row.getString("visit_id"), CarReader.reading(row)))
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())))
                .values()
                .stream()
                .mapToInt(DustRule::pairsServiced)
                .sum());
    }

    /**
     * Moves what was read at the wrong car to a visit of the right one. At the wrong one it stays, struck, with reason and name; what
     * was read of a wheel is read of the wheel at the same corner.
     *
     * @param readingIds of readings that stand
     * @throws BookException when one of them stands no more, or cannot be of the other car
     */
    public void move(String visitId, Set<String> readingIds, String toVisitId, Because because) {
        move(visitId, readingIds, toVisitId, null, false, because);
    }

    /**
     * The same to another corner, of the same car or of another.
     *
     * @param corner null where each stays at its own
     * @param instead whether it corrects what was read there already
     * @throws BookException when one of them stands no more, is there already, or cannot be there; or when something was read there
     *     that it is not to correct
     */
    public void move(
            String visitId,
            Set<String> readingIds,
            String toVisitId,
            @Nullable Corner corner,
            boolean instead,
            Because because) {
        store.write(handle -> {
            var cars = new CarLedger(within(handle));
            var wrong = cars.getOfVisit(visitId);
            var right = cars.getOfVisit(toVisitId);
            var visit = wrong.getVisit(visitId);
            var readings = new StandingReadings(visit)
                    .all().stream()
                            .filter(reading -> readingIds.contains(reading.id()))
                            .toList();
            if (readings.isEmpty() || readings.size() < readingIds.size()) {
                throw new BookException(new VisitSaid.PutRightMeanwhile());
            }
            var changes = new VisitChanges(handle, wrong.vehicle().id());
            for (var reading : readings) {
                boolean sameCorner = corner == null || corner == reading.corner();
                if (visitId.equals(toVisitId) && (sameCorner || reading.corner() == null)) {
                    throw new BookException(new VisitSaid.NoOtherPlace());
                }
                var moved = MovedReadings.at(
                        right.getVisit(toVisitId), visit, reading, reading.corner() == null ? null : corner);
                var there = new StandingReadings(right.getVisit(toVisitId)).at(moved);
                if (there.isPresent()) {
                    if (!instead) {
                        throw new BookException(new VisitSaid.ReadThereAlready(VisitSaid.ReadAt.of(there.get())));
                    }
                    moved = MovedReadings.instead(there.get(), moved, because.reason());
                }
                add(handle, cars.getOfVisit(toVisitId), toVisitId, List.of(moved));
                MovedReadings.strike(handle, visit, reading, moved);
                changes.keepChanged(
                        visitId,
                        VisitValue.READING,
                        VisitValue.write(reading),
                        VisitValue.place(
                                corner,
                                visitId.equals(toVisitId)
                                        ? null
                                        : right.vehicle().plate()),
                        because);
            }
            new CarWriter(handle).countChange(visitId);
            var changed = cars.getOfVisit(visitId);
            VisitLedger.refuseProblems(changed);
            if (readings.stream().anyMatch(reading -> reading.measure() == Measure.WHEEL_TORQUE)) {
                new RetorqueLedger(within(handle)).change(changed, changed.getVisit(visitId));
            }
            return visitId;
        });
    }

    private static boolean isMoved(Handle handle, Reading reading) {
        return handle.select("select 1 from moved_reading where reading_id = ?", reading.id())
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    /** Appends readings to a visit. A reading that is there already, with the same content, counts once. */
    public void add(String visitId, List<Reading> readings) {
        store.write(handle -> add(handle, new CarLedger(within(handle)).getOfVisit(visitId), visitId, readings));
    }

    /**
     * The same to a visit of a car that was read in this transaction.
     *
     * @return those that were not there yet
     */
    public List<Reading> add(CarHistory history, String visitId, List<Reading> readings) {
        return store.write(handle -> add(handle, history, visitId, readings));
    }

    private static List<Reading> add(Handle handle, CarHistory history, String visitId, List<Reading> readings) {
        var visit = history.getVisit(visitId);
        var ledger = new ReadingLedger(within(handle));
        var fresh = new ArrayList<Reading>();
        for (var reading : readings) {
            var known = ledger.find(reading.id());
            if (known.isEmpty()) {
                VisitRules.refuseNew(history.vehicle(), reading).ifPresent(problem -> {
                    throw new BookException(problem);
                });
                fresh.add(reading);
            } else if (!visit.readings().contains(known.get()) && !isMoved(handle, reading)) {
                throw new BookException(new VisitSaid.ReadingElsewhere(reading.id()));
            } else if (!known.get().equals(reading)) {
                throw new BookException(new VisitSaid.ReadingOtherwise(reading.id()));
            }
        }
        var all = new ArrayList<>(visit.readings());
        all.addAll(fresh);
        var longer = visit.withReadings(all);
        var changed = VisitLedger.replaced(history, longer);
        VisitLedger.refuseProblems(changed);
        new CarWriter(handle).writeReadings(visitId, fresh);
        if (fresh.stream().anyMatch(reading -> reading.measure() == Measure.WHEEL_TORQUE)) {
            new RetorqueLedger(within(handle)).change(changed, longer);
        }
        return fresh;
    }
}
