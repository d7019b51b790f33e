package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.appointment.DayAsking;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.desk.SetsThere;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import cornerbook.core.days.plan.Openings;
import cornerbook.core.days.plan.Openings.Opening;
import cornerbook.core.days.plan.Wanted;
import cornerbook.core.days.plan.Wanted.Agreed;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where one more car fits beside all that is agreed, and beside what customers have picked and the shop has not answered yet: nothing is
 * given away twice.
 */
public final class DayOffers {
    /** What a customer chooses from on a day. */
    private static final int MOST_TIMES = 6;

    private final DayFacts facts;
    private final Openings openings;
    private final LocalDate first;
    private final LocalDate last;

    private DayOffers(DayFacts facts, Openings openings, LocalDate first, LocalDate last) {
        this.facts = facts;
        this.openings = openings;
        this.first = first;
        this.last = last;
    }

    /** The places of a day. */
    public record OfferedDay(LocalDate day, List<Opening> openings) {
        public OfferedDay {
            openings = List.copyOf(openings);
        }
    }

    /**
     * Of the days until one, today among them.
     *
     * @param now at the shop: nothing begins today before it
     * @param without the asking whose own wish takes no room; empty for none
     */
    static DayOffers of(Book book, LocalDateTime now, LocalDate last, String without) {
        var today = now.toLocalDate();
        var facts = DayFacts.of(book, today, last, now);
        var visits = new ArrayList<Wanted>();
        facts.appointments().forEach(each -> visits.add(facts.standing(each, today)));
        book.dayWishes().listWaiting().stream()
                .filter(wish -> !wish.asking().id().equals(without))
                .flatMap(wish -> facts.standing(wish).stream())
                .forEach(visits::add);
        visits.addAll(here(book, facts, today));
        return new DayOffers(
                facts,
                Openings.beside(
                        facts.stations(), visits, today, Objects.requireNonNull(DayFacts.minuteOf(now.toLocalTime()))),
                today,
                last);
    }

    /** Cars that are here without appointment; each takes what wheels and brakes take here. */
    private static List<Wanted> here(Book book, DayFacts facts, LocalDate today) {
        var expected = facts.appointments().stream()
                .map(Appointment::visitId)
                .flatMap(id -> Optional.ofNullable(id).stream())
                .collect(Collectors.toSet());
        int minutes = DayPlanner.minutes(
                PlannedWork.WHEELS_AND_BRAKES, book.clockedTimes().expected());
        return book.visits().list(today).stream()
                .filter(visit -> !expected.contains(visit.visitId()))
                .filter(visit -> visit.state() == VisitState.WAITING || visit.state() == VisitState.ON_THE_HOIST)
                .map(visit -> new Wanted(
                        visit.visitId(), minutes, today, null, Set.of(), Set.of(), new Agreed(today, null, null, null)))
                .toList();
    }

    /** For a car that stands here: today as far as it goes, what is left for such cars included. */
    List<Opening> today(PlannedWork work, int minutes, boolean highVoltage) {
        return openings.on(first, minutes, needs(work, highVoltage));
    }

    /**
     * The days after today that have room, a share of each left for cars that come without appointment.
     *
     * @param earliest none before it
     */
    List<OfferedDay> later(PlannedWork work, int minutes, boolean highVoltage, LocalDate earliest) {
        return first.plusDays(1)
                .datesUntil(last.plusDays(1))
                .filter(day -> !day.isBefore(earliest))
                .filter(day -> openings.hasRoom(day, minutes, PlanAsked.USUAL.freePercent()))
                .map(day -> new OfferedDay(
                        day,
                        openings.on(day, minutes, needs(work, highVoltage)).stream()
                                .limit(MOST_TIMES)
                                .toList()))
                .filter(day -> !day.openings().isEmpty())
                .toList();
    }

    /** The same of what a customer was asked. */
    List<OfferedDay> later(DayAsking asking) {
        return later(
                asking.work(),
                asking.minutes(),
                asking.car().mayHaveHighVoltage(),
                facts.there().earliest(asking.car().id(), asking.work(), first));
    }

    /** From when on sets that lie elsewhere can be there. */
    SetsThere there() {
        return facts.there();
    }

    private Set<Skill> needs(PlannedWork work, boolean highVoltage) {
        return facts.skills().asked(Skill.of(work, highVoltage));
    }
}
