package cornerbook.core.finding;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.changeover.ChangeOverBetween;
import cornerbook.core.changeover.ChangeOverOfPlace;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Said;
import cornerbook.core.season.ChangeOver;
import cornerbook.core.season.Climate;
import cornerbook.core.season.DistancePerDay;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One visit with everything that judging it rests on, put together once: what was known on its day, the readings that stand, what
 * the car ran, its sets and where they stand, the day that everything has to hold to, and what was done. The same history,
 * limits, knowledge and climate give the same case.
 */
public final class Case {
    private final CarHistory history;
    private final Visit visit;
    private final List<Visit> visits;
    private final LimitTable limits;
    private final Knowledge knowledge;
    private final @Nullable ChangeOverOfPlace place;
    private final ChangeOver changeOver;
    private final List<StandingReadings> readingsByVisit;
    private final RunHistory runs;
    private final Optional<WheelSet> goingOn;
    private final Optional<WheelSet> comingOff;
    private final LocalDate dueBySeason;
    private final LocalDate nextVisit;

    /**
     * A visit of a car. Later visits do not count.
     *
     * @param place with its climate; null when it is not known
     * @throws java.util.NoSuchElementException when the history has no such visit
     */
    public Case(
            CarHistory history,
            String visitId,
            LimitTable limits,
            Knowledge knowledge,
            @Nullable ChangeOverOfPlace place) {
        this.history = history;
        this.limits = limits;
        this.knowledge = knowledge;
        this.place = place;
        changeOver = place == null
                ? ChangeOver.USUAL
                : place.under(limits.findWinterLaw(history.vehicle().jurisdiction()));
        visit = history.getVisit(visitId);
        visits = history.visits().subList(0, place(history, visit) + 1);
        readingsByVisit = visits.stream().map(StandingReadings::new).toList();
        runs = new RunHistory(history, visits, knowledge);
        var arrivedOn = asItStands(visit.arrivedOn());
        goingOn = asItStands(visit.leftOn()).or(() -> seasonsSet(arrivedOn)).or(() -> arrivedOn);
        comingOff = arrivedOn.filter(
                set -> goingOn.filter(on -> on.id().equals(set.id())).isEmpty());
        dueBySeason = dueBySeason(arrivedOn);
        var agreed = visit.card().nextVisitDue();
        nextVisit = agreed != null && agreed.isAfter(visit.date()) ? agreed : dueBySeason;
    }

    /** Of a visit among those of its car; by its id, as comparing all that was read takes longer. */
    private static int place(CarHistory history, Visit visit) {
        int place = 0;
        while (!history.visits().get(place).id().equals(visit.id())) {
            place++;
        }
        return place;
    }

    private LocalDate dueBySeason(Optional<WheelSet> arrivedOn) {
        var season = goingOn.map(WheelSet::season).orElse(SeasonKind.ALL_SEASON);
        boolean stays = arrivedOn.map(WheelSet::id).equals(goingOn.map(WheelSet::id));
        return stays ? changeOver.ofWheelsThatStay(visit.date(), season) : changeOver.after(visit.date(), season);
    }

    /**
     * The set that a car stands on, with the four wheels that are on the car: one of them may have come in the place of another,
     * and it is those on the car that wear, carry and differ. A temporary spare is none of them.
     */
    private Optional<WheelSet> asItStands(Map<Corner, String> wheelAt) {
        var wheels = wheelAt.values().stream()
                .flatMap(tag -> history.findWheel(tag).stream())
                .filter(wheel -> !wheel.tyre().isTemporarySpare())
                .toList();
        return history.findSetOn(wheelAt)
                .map(set -> wheels.size() != Corner.values().length
                                || (wheels.containsAll(set.wheels())
                                        && set.wheels().containsAll(wheels))
                        ? set
                        : new WheelSet(set.id(), set.season(), set.storePlace(), wheels));
    }

    /** The stored set of the season to come; empty when the car came on it, or has none. */
    private Optional<WheelSet> seasonsSet(Optional<WheelSet> arrivedOn) {
        var season = ChangeOver.leavingOn(visit.date());
        var arrived = arrivedOn.map(WheelSet::season);
        if (arrived.isEmpty() || arrived.get() == SeasonKind.ALL_SEASON || arrived.get() == season) {
            return Optional.empty();
        }
        return history.sets().stream().filter(set -> set.season() == season).findFirst();
    }

    public CarHistory history() {
        return history;
    }

    public Vehicle vehicle() {
        return history.vehicle();
    }

    public Visit visit() {
        return visit;
    }

    /** The visit and those before it, earliest first. */
    public List<Visit> visits() {
        return visits;
    }

    /** Of the visit, those that stand. */
    public StandingReadings readings() {
        return readingsByVisit.getLast();
    }

    /** Of each of {@link #visits()}, those that stand. */
    public List<StandingReadings> readingsByVisit() {
        return readingsByVisit;
    }

    /** What the car ran until the visit. */
    public RunHistory runs() {
        return runs;
    }

    /** How far the car will run in a day, whatever the season. */
    public DistancePerDay distance() {
        return runs.next(SeasonKind.ALL_SEASON);
    }

    /** The set that the car leaves on: as recorded, and until then the season's set, or the one that it came on. */
    public Optional<WheelSet> goingOn() {
        return goingOn;
    }

    /** The set that it came on and does not leave on. */
    public Optional<WheelSet> comingOff() {
        return comingOff;
    }

    /** Where the wheels of a set stand, or stood when they were last on the car; listed order for a set that never was. */
    private Map<Corner, String> positions(WheelSet set) {
        var tags = set.wheels().stream().map(Wheel::tag).toList();
        for (var earlier : visits.reversed()) {
            for (var wheelAt : List.of(earlier.leftOn(), earlier.arrivedOn())) {
                if (wheelAt.values().stream().anyMatch(tags::contains)) {
                    return wheelAt;
                }
            }
        }
        var listed = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            if (corner.ordinal() < tags.size()) {
                listed.put(corner, tags.get(corner.ordinal()));
            }
        }
        return listed;
    }

    /** Where the wheels of a set stand on the car now; empty while they do not all. */
    public Optional<Map<Corner, String>> standing(WheelSet set) {
        var tags = set.wheels().stream().map(Wheel::tag).collect(Collectors.toSet());
        return Stream.of(visit.leftOn(), visit.arrivedOn())
                .filter(wheelAt -> !wheelAt.isEmpty())
                .findFirst()
                .filter(wheelAt -> wheelAt.size() == Corner.values().length && tags.containsAll(wheelAt.values()));
    }

    /** The set that goes on until the next visit, then the one that comes off over its next season. */
    public List<SetSpan> spans() {
        return Stream.concat(
                        goingOn.stream()
                                .map(set -> new SetSpan(
                                        set, SetSpan.Role.GOING_ON, positions(set), visit.date(), nextVisit)),
                        comingOff.stream()
                                .map(set -> new SetSpan(
                                        set,
                                        SetSpan.Role.COMING_OFF,
                                        visit.arrivedOn(),
                                        nextVisit,
                                        changeOver.after(nextVisit, set.season()))))
                .toList();
    }

    /** The days on which cars are changed over in the place. */
    public ChangeOver changeOver() {
        return changeOver;
    }

    /**
     * The days on which the wheels that the car leaves on come off with the least risk, whatever day is agreed; empty for wheels
     * that stay on all year, and where the climate does not tell.
     */
    public Optional<ChangeOverBetween> changeOverDays() {
        var season = goingOn.map(WheelSet::season).orElse(SeasonKind.ALL_SEASON);
        var days =
                season == SeasonKind.ALL_SEASON ? null : changeOver.turn(season).days();
        return days == null || place == null
                ? Optional.empty()
                : Optional.of(new ChangeOverBetween(
                        days.from().atYear(dueBySeason.getYear()),
                        days.until().atYear(dueBySeason.getYear()),
                        days.byLaw(),
                        Said.verbatim(place.climate().place())));
    }

    /** The day that everything has to hold to: as agreed, or the season's change-over where none was, or the day agreed is not ahead. */
    public LocalDate nextVisit() {
        return nextVisit;
    }

    public LimitTable limits() {
        return limits;
    }

    /** What binds this car at any time of the year, whatever the season of its wheels. */
    public Limit limit(Limit.Kind kind) {
        return limits.get(vehicle().jurisdiction(), kind, null);
    }

    /** What binds this car on a set, on some day of its time. */
    public Limit limit(Limit.Kind kind, SetSpan span) {
        return limits.get(vehicle().jurisdiction(), kind, span.set().season(), span.from(), span.until());
    }

    public Knowledge knowledge() {
        return knowledge;
    }

    /** Of the place; null when it is not known. */
    public @Nullable Climate climate() {
        return place == null ? null : place.climate();
    }

    /** What was done at the visit, one {@link Work} each; behind it what a file that the visit came in says in its own words. */
    public List<Said> workDone() {
        return WorkDone.of(history, visit, readings());
    }
}
