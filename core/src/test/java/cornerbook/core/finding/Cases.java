package cornerbook.core.finding;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.changeover.ChangeOverOfPlace;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.season.Climate;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.WearKnowledge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Cases for the tests of the judges: an invented car at the last of its visits, by invented limits. */
public record Cases(
        CarHistory history, Knowledge knowledge, @Nullable Climate climate) {
    private static final double NO_DOUBT = 1e-9;

    public static Cases of(CarHistory history) {
        return new Cases(history, Knowledge.NONE, null);
    }

    /** A vehicle on the wheels of {@link Cars#history}. */
    public static Cases of(Vehicle vehicle, Visit... visits) {
        return of(vehicle, List.of(visits));
    }

    public static Cases of(Vehicle vehicle, List<Visit> visits) {
        var car = Cars.history();
        return of(new CarHistory(vehicle, car.customer(), car.sets(), visits));
    }

    /** The car of {@link Cars#vehicle} with the one wheel of a set at a corner, and none at the others. */
    public static Cases onlyOn(WheelSet set, Corner corner) {
        var wheelAt = Map.of(corner, set.wheels().getFirst().tag());
        var visit = new Visit("v", Cars.AUTUMN, 48_000, wheelAt, wheelAt, List.of());
        var car = Cars.history(visit);
        return of(new CarHistory(car.vehicle(), car.customer(), List.of(set), car.visits()));
    }

    /** The same with the day of the next visit agreed. */
    public Cases until(LocalDate nextVisit) {
        var visits = new ArrayList<>(history.visits());
        var last = visits.removeLast();
        var card = last.card();
        visits.add(new Visit(
                last.id(),
                last.date(),
                last.odometerKm(),
                last.arrivedOn(),
                last.leftOn(),
                last.readings(),
                new JobCard(card.technician(), card.workDone(), card.notes(), nextVisit, card.tools()),
                last.tightened()));
        return new Cases(
                new CarHistory(history.vehicle(), history.customer(), history.sets(), visits), knowledge, climate);
    }

    /** The same of a car that is known to run so far per day, whatever it ran before; its seasons differ by so much. */
    public Cases running(double kmPerDay, double sdKm) {
        var known = new DistancePrior(kmPerDay, NO_DOUBT, sdKm, 1);
        var distances = Arrays.stream(SeasonKind.values()).collect(Collectors.toMap(season -> season, season -> known));
        return new Cases(history, new Knowledge(null, WearKnowledge.NONE, distances, null), climate);
    }

    /** The same where this climate is known. */
    public Cases in(@Nullable Climate place) {
        return new Cases(history, knowledge, place);
    }

    public Case last() {
        return new Case(
                history,
                history.visits().getLast().id(),
                new LimitTable(Cars.LIMITS),
                knowledge,
                climate == null ? null : new ChangeOverOfPlace(climate));
    }
}
