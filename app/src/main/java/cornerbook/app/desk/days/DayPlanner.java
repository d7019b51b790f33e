package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.appointment.PlannedTurn;
import cornerbook.app.book.coming.ComingCar;
import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.book.coming.ComingLedger;
import cornerbook.core.coming.Matter;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import cornerbook.core.days.plan.DayPlan;
import cornerbook.core.days.plan.Placement;
import cornerbook.core.days.plan.PlanProblem;
import cornerbook.core.days.plan.Wanted;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Gathers what is to be planned, and holds a plan against what the book has. */
public final class DayPlanner {
    /** More customers are not planned at once. */
    private static final int MOST_CUSTOMERS = 1000;

    /** The change-over of a car is not sooner than so many days before it is due. Common practice, no source. */
    private static final int DAYS_OF_SEASON = 28;

    private DayPlanner() {}

    /** A car that is due and has no appointment. */
    private record DueCar(PlanRow.Of car, PlannedWork work, int minutes, LocalDate due, Set<Matter> matters) {
        boolean isOfSeason() {
            return matters.equals(Set.of(Matter.NEXT_VISIT));
        }
    }

    /**
     * What a plan rests on; where two of them are the same, the plan still holds.
     *
     * @param visits all that have or want a place
     * @param beside what cars are due for that the work of their plan does not say
     */
    public record Gathered(
            DayFacts facts,
            List<Wanted> visits,
            Map<String, Plan> due,
            Map<String, PlanRow.Of> cars,
            Map<String, List<Matter>> beside) {
        public Gathered {
            visits = List.copyOf(visits);
            due = Map.copyOf(due);
            cars = Map.copyOf(cars);
            beside = Map.copyOf(beside);
        }

        /** Whether a plan made from the one is one for the other. */
        boolean isSame(Gathered other) {
            return visits.equals(other.visits)
                    && facts.stations().equals(other.facts.stations())
                    && facts.appointments().stream()
                            .map(Appointment::turn)
                            .toList()
                            .equals(other.facts.appointments().stream()
                                    .map(Appointment::turn)
                                    .toList());
        }

        PlanProblem problem(int freePercent) {
            return PlanProblem.of(facts.stations(), visits, freePercent);
        }
    }

    static Gathered gather(Book book, PlanAsked asked, LocalDateTime now) {
        var today = now.toLocalDate();
        var first = asked.first(today);
        var facts = DayFacts.of(book, first, asked.last(today), now);
        var visits = new ArrayList<Wanted>();
        var cars = new LinkedHashMap<String, PlanRow.Of>();
        for (var appointment : facts.appointments()) {
            visits.add(facts.wanted(appointment, first));
            cars.put(appointment.id(), of(appointment.car()));
        }
        var last = asked.last(today);
        book.dayWishes().listWaiting().stream()
                .flatMap(wish -> facts.standing(wish).stream())
                .filter(wish ->
                        !wish.earliest().isBefore(first) && !wish.earliest().isAfter(last))
                .forEach(visits::add);
        var due = new LinkedHashMap<String, Plan>();
        var beside = new LinkedHashMap<String, List<Matter>>();
        if (asked.withDue()) {
            var highVoltage = book.cars().listThatMayHaveHighVoltage();
            var expected =
                    facts.appointments().stream().map(each -> each.car().id()).collect(Collectors.toSet());
            for (var car : due(book, ComingLedger.Days.until(asked.last(today), today))) {
                // It comes in these weeks: what else it needs is for that day.
                if (expected.contains(car.car().carId())) {
                    continue;
                }
                var id = "due-" + car.car().carId();
                var earliest = car.isOfSeason() ? car.due().minusDays(DAYS_OF_SEASON) : first;
                visits.add(new Wanted(
                        id,
                        car.minutes(),
                        facts.there()
                                .earliest(car.car().carId(), car.work(), earliest.isBefore(first) ? first : earliest),
                        car.due(),
                        Set.of(),
                        facts.skills()
                                .asked(Skill.of(
                                        car.work(),
                                        highVoltage.contains(car.car().carId()))),
                        null));
                cars.put(id, car.car());
                due.put(id, new Plan(car.due(), null, car.work(), car.minutes(), null, null, ""));
                beside.put(id, PlanRow.beside(car.work(), car.matters()));
            }
        }
        return new Gathered(facts, visits, due, cars, beside);
    }

    private static PlanRow.Of of(Appointment.Car car) {
        return new PlanRow.Of(car.id(), car.name(), car.plate(), car.customerId(), car.customerName(), car.phone());
    }

    private static List<DueCar> due(Book book, ComingLedger.Days days) {
        var expected = book.clockedTimes().expected();
        return book.coming().list(days, 0, MOST_CUSTOMERS).list().stream()
                .flatMap(customer -> customer.cars().stream().map(car -> due(customer, car, expected)))
                .toList();
    }

    private static DueCar due(ComingCustomer customer, ComingCar car, Map<PlannedWork, ExpectedMinutes> expected) {
        var matters = car.matters().stream().map(ComingCar.Due::matter).collect(Collectors.toSet());
        var work = ComingLedger.work(matters);
        var owner = customer.customer();
        return new DueCar(
                new PlanRow.Of(car.id(), car.name(), car.plate(), owner.id(), owner.name(), owner.phone()),
                work,
                minutes(work, expected),
                car.matters().stream()
                        .map(ComingCar.Due::day)
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                matters);
    }

    static int minutes(PlannedWork work, Map<PlannedWork, ExpectedMinutes> expected) {
        return (int) Math.round(Objects.requireNonNull(expected.get(work)).usual());
    }

    /** What would be another than the book has it, by day and time; what has no place first. */
    static List<PlanRow> rows(Gathered gathered, DayPlan plan) {
        var before = gathered.facts().appointments().stream().collect(Collectors.toMap(Appointment::id, each -> each));
        return plan.placements().stream()
                .filter(placement -> !placement.isKept()
                        && gathered.cars().containsKey(placement.visit().id()))
                .flatMap(placement ->
                        row(
                                gathered,
                                placement,
                                Optional.ofNullable(before.get(placement.visit().id())))
                                .stream())
                .sorted(Comparator.comparing(PlanRow::kind))
                .toList();
    }

    private static Optional<PlanRow> row(Gathered gathered, Placement placement, Optional<Appointment> appointment) {
        var id = placement.visit().id();
        var was = appointment
                .map(Appointment::plan)
                .orElseGet(() -> Objects.requireNonNull(gathered.due().get(id)));
        var after = after(was, placement);
        if (appointment.isPresent() && was.equals(after)) {
            return Optional.empty();
        }
        return Optional.of(new PlanRow(
                appointment
                        .map(Appointment::id)
                        .orElseGet(() -> UUID.randomUUID().toString()),
                appointment.map(Appointment::turn).orElse(PlannedTurn.NEW),
                UUID.randomUUID().toString(),
                Objects.requireNonNull(gathered.cars().get(id)),
                appointment.isPresent() ? was : null,
                after,
                placement.why(),
                gathered.beside().getOrDefault(id, List.of())));
    }

    private static @Nullable Plan after(Plan was, Placement placement) {
        var station = placement.station();
        return station == null
                ? null
                : new Plan(
                        station.day(),
                        DayFacts.timeOf(placement.start()),
                        was.work(),
                        was.minutes(),
                        station.hoist() == null ? was.hoist() : station.hoist(),
                        station.person(),
                        was.note());
    }

    /** How many stay as they are. */
    static int kept(Gathered gathered, List<PlanRow> rows) {
        return (int) gathered.facts().appointments().stream()
                .map(Appointment::id)
                .filter(id -> rows.stream().noneMatch(row -> row.id().equals(id)))
                .count();
    }
}
