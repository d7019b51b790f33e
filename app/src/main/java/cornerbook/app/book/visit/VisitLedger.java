package cornerbook.app.book.visit;

import cornerbook.app.book.car.CarReader;
import cornerbook.app.book.car.CarSaid;
import cornerbook.app.book.car.CarWriter;
import cornerbook.app.book.car.FittingLedger;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TakenIds;
import cornerbook.core.assess.IdentityRules;
import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Problem;
import cornerbook.core.say.Said;
import cornerbook.core.tread.judge.StoredWheelCheck;
import cornerbook.core.tread.judge.StoredWheelCheck.Identity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Adds cars and visits by the rules that they have to keep, and what follows from them. */
public final class VisitLedger {
    private final Handle handle;

    public VisitLedger(Handle handle) {
        this.handle = handle;
    }

    /** The car of a visit. */
    public Optional<CarHistory> findHistory(String visitId) {
        return handle.select("select vehicle_id from visit where id = ?", visitId)
                .mapTo(String.class)
                .findFirst()
                .flatMap(new CarReader(handle)::find);
    }

    public CarHistory getHistory(String visitId) {
        return findHistory(visitId).orElseThrow(() -> new BookException(new VisitSaid.NoVisit(visitId)));
    }

    /** A new car with its visits; gives its customer when the book knew other details of it. */
    public Optional<Customer> addCar(CarHistory history) {
        refuse(IdentityRules.check(history));
        refuseProblems(history);
        new TakenIds(handle).refuse(history);
        var changed = new CarWriter(handle).writeCar(history);
        if (!history.visits().isEmpty()) {
            new RetorqueLedger(handle).change(history, history.visits().getLast());
        }
        return changed;
    }

    public Visit add(String vehicleId, Visit visit) {
        var history = new CarReader(handle)
                .find(vehicleId)
                .orElseThrow(() -> new BookException(new CarSaid.NoCar(vehicleId)));
        var visits = new ArrayList<>(history.visits());
        visits.add(visit);
        var longer = with(history, visits);
        refuseProblems(longer);
        new TakenIds(handle).refuse(vehicleId, visit);
        new CarWriter(handle).writeVisit(vehicleId, visit);
        new FittingLedger(handle).rewrite(longer);
        new RetorqueLedger(handle).change(longer, visit);
        return visit;
    }

    public Visit recordLeaving(String visitId, Map<Corner, String> leftOn, List<Identity> identities) {
        var history = getHistory(visitId);
        var visit = history.getVisit(visitId);
        var left = visit.withLeftOn(leftOn);
        var changed = replaced(history, left);
        refuseProblems(changed);
        for (var tag : leftOn.values()) {
            if (!visit.arrivedOn().containsValue(tag)) {
                StoredWheelCheck.compareDepths(history, visit, tag).ifPresent(VisitLedger::refuse);
                identities.stream()
                        .filter(identity -> identity.wheelTag().equals(tag))
                        .flatMap(identity -> history.findWheel(tag).stream()
                                .flatMap(wheel -> StoredWheelCheck.compareIdentity(wheel, identity).stream()))
                        .forEach(VisitLedger::refuse);
            }
        }
        new CarWriter(handle).replaceLeaving(visitId, leftOn);
        new FittingLedger(handle).rewrite(changed);
        new RetorqueLedger(handle).change(changed, left);
        return left;
    }

    /**
     * The visit was on another day, or its odometer read something else.
     *
     * @param seen the visit that the change was made from
     * @param day on which it is put right
     */
    public Visit putRight(Visit seen, LocalDate date, double odometerKm, String reason, LocalDate day) {
        var history = getHistory(seen.id());
        var before = history.getVisit(seen.id());
        var after = before.withOdometer(date, odometerKm);
        if (after.equals(before)) {
            return before;
        }
        if (!before.equals(before.withOdometer(seen.date(), seen.odometerKm()))) {
            throw new BookException(new VisitSaid.PutRightMeanwhile());
        }
        new VisitChanges(handle, history.vehicle().id()).apply(history, before, after, reason, day);
        return after;
    }

    public static void refuseProblems(CarHistory history) {
        refuse(VisitRules.check(history, LocalDate.MAX));
    }

    public static CarHistory replaced(CarHistory history, Visit visit) {
        return with(
                history,
                history.visits().stream()
                        .map(other -> other.id().equals(visit.id()) ? visit : other)
                        .toList());
    }

    private static CarHistory with(CarHistory history, List<Visit> visits) {
        return new CarHistory(history.vehicle(), history.customer(), history.sets(), visits);
    }

    private static void refuse(List<Problem> problems) {
        problems.stream().findFirst().ifPresent(problem -> refuse(problem.message()));
    }

    private static void refuse(Said sentence) {
        throw new BookException(sentence);
    }
}
