package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.appointment.PlannedTurn;
import cornerbook.app.book.coming.ComingCar;
import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.book.coming.ComingLedger;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.core.coming.Matter;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import cornerbook.core.days.plan.DayPlan;
import cornerbook.core.days.plan.Placement;
import cornerbook.core.days.plan.PlanProblem;
import cornerbook.core.days.plan.Wanted;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
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
     * @param now at the shop, when it was gathered
     * @param visits all that have or want a place
     * @param plans of cars that have no appointment: those that are due, and those that came without
     * @param beside what cars are due for that the work of their plan does not say
     */
    public record Gathered(
            ZonedDateTime now,
            DayFacts facts,
            List<Wanted> visits,
            Map<String, Plan> plans,
            Map<String, PlanRow.Of> cars,
            Map<String, List<Matter>> beside) {
        public Gathered {
            visits = List.copyOf(visits);
            plans = Map.copyOf(plans);
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

    static Gathered gather(Book book, PlanAsked asked, ZonedDateTime now) {
        var today = now.toLocalDate();
        var first = asked.first(today);
        var here = CarsHere.of(book, now);
        var facts = DayFacts.of(book, first, asked.last(today), now.toLocalDateTime())
                .left(here.moment());
        var visits = new ArrayList<Wanted>();
        var cars = new LinkedHashMap<String, PlanRow.Of>();
        var plans = new LinkedHashMap<String, Plan>();
        var comeOrHere = new HashSet<String>();
        for (var appointment : facts.appointments()) {
            comeOrHere.add(appointment.car().id());
            cars.put(appointment.id(), of(appointment.car()));
            facts.wanted(appointment, first, here).ifPresent(visits::add);
        }
        if (asked.withToday()) {
            for (var visit : here.withoutAppointment(facts.appointments())) {
                comeOrHere.add(visit.vehicleId());
                cars.put(visit.visitId(), of(visit));
                plans.put(visit.visitId(), here.planOf(visit));
                visits.add(here.wanted(visit));
            }
        }
        var last = asked.last(today);
        book.dayWishes().listWaiting().stream()
                .flatMap(wish -> facts.standing(wish).stream())
                .filter(wish ->
                        !wish.earliest().isBefore(first) && !wish.earliest().isAfter(last))
                .forEach(visits::add);
        var beside = new LinkedHashMap<String, List<Matter>>();
        if (asked.withDue()) {
            var highVoltage = book.cars().listThatMayHaveHighVoltage();
            // Who is due has first to be reached: not today.
            var firstOfDue = asked.firstOfDue(today);
            for (var car : due(book, ComingLedger.Days.until(asked.last(today), today))) {
                // It comes in these weeks: what else it needs is for that day.
                if (comeOrHere.contains(car.car().carId())) {
                    continue;
                }
                var id = "due-" + car.car().carId();
                var earliest = car.isOfSeason() ? car.due().minusDays(DAYS_OF_SEASON) : firstOfDue;
                visits.add(new Wanted(
                        id,
                        car.minutes(),
                        facts.there()
                                .earliest(
                                        car.car().carId(),
                                        car.work(),
                                        earliest.isBefore(firstOfDue) ? firstOfDue : earliest),
                        car.due(),
                        Set.of(),
                        facts.skills()
                                .asked(Skill.of(
                                        car.work(),
                                        highVoltage.contains(car.car().carId()))),
                        null));
                cars.put(id, car.car());
                plans.put(id, new Plan(car.due(), null, car.work(), car.minutes(), null, null, ""));
                beside.put(id, PlanRow.beside(car.work(), car.matters()));
            }
        }
        return new Gathered(now, facts, visits, plans, cars, beside);
    }

    private static PlanRow.Of of(Appointment.Car car) {
        return new PlanRow.Of(car.id(), car.name(), car.plate(), car.customerId(), car.customerName(), car.phone());
    }

    /** Of a car that came without appointment: it is here, so nobody has to be called. */
    private static PlanRow.Of of(VisitSummary visit) {
        return new PlanRow.Of(visit.vehicleId(), visit.vehicleName(), visit.plate(), "", visit.customerName(), null);
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

    /** All that has or gets a place: what would be another than the book has it first, by day and time, then what stays. */
    static List<PlanRow> rows(Gathered gathered, DayPlan plan) {
        var before = gathered.facts().appointments().stream().collect(Collectors.toMap(Appointment::id, each -> each));
        return plan.placements().stream()
                .filter(placement ->
                        gathered.cars().containsKey(placement.visit().id()))
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
                .orElseGet(() -> Objects.requireNonNull(gathered.plans().get(id)));
        var after = placement.isKept() ? was : after(was, placement);
        if (appointment.isPresent() && was.equals(after) && !placement.isKept()) {
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
}
