package cornerbook.core.days.plan;

import cornerbook.core.days.WorkHours;
import cornerbook.core.days.plan.PlanSaid.Slipped;
import cornerbook.core.days.plan.PlanSaid.Stays;
import cornerbook.core.days.plan.Wanted.Agreed;
import cornerbook.core.days.plan.Wanted.Stage;
import cornerbook.core.say.Amount;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The days with what stays: each visit with an agreed time lies where somebody has that time, the rest of the stations is free.
 *
 * @param stations all, earliest day first
 * @param kept what stays
 * @param slipped by the id of a visit, why what was agreed cannot stay
 * @param free what nothing has yet
 */
public record Board(List<Station> stations, List<Kept> kept, Map<String, Slipped> slipped, List<Stretch> free) {
    /** By so much two cars may overlap: nobody is told another time for it. Common practice, no source. */
    static final int SLACK_MINUTES = 15;

    /** A shorter stretch takes nothing: common practice, no source. */
    private static final int SHORTEST_STRETCH = 5;

    public Board {
        stations = List.copyOf(stations);
        kept = List.copyOf(kept);
        slipped = Map.copyOf(slipped);
        free = List.copyOf(free);
    }

    /**
     * Lays what stays: first work that has begun, then what was agreed. A visit that begins in somebody's hours and goes on beyond their end stays: that is for a person to say.
     *
     * @param visits those without an agreed time are left out
     */
    public static Board of(List<Station> stations, List<Wanted> visits) {
        var free = new ArrayList<>(stations.stream()
                .map(station -> new Stretch(station, station.hours()))
                .toList());
        var kept = new ArrayList<Kept>();
        var slipped = new LinkedHashMap<String, Slipped>();
        for (var visit : visits.stream().filter(each -> each.is(Stage.AT_WORK)).toList()) {
            kept.add(goesOn(free, visit));
        }
        for (var visit : visits.stream()
                .filter(each -> hasTime(each) && !each.is(Stage.AT_WORK))
                .sorted(Comparator.comparing((Wanted each) -> agreed(each).day())
                        .thenComparingInt(Board::start)
                        .thenComparing(Wanted::id))
                .toList()) {
            var place = visit.is(Stage.NOT_HERE_YET) ? Optional.<Stretch>empty() : find(free, visit);
            if (place.isPresent()) {
                kept.add(take(free, place.get(), visit, start(visit), whyItStays(place.get(), visit)));
            } else {
                slipped.put(visit.id(), why(stations, kept, visit));
            }
        }
        free.removeIf(stretch -> stretch.minutes() < SHORTEST_STRETCH);
        free.sort(Comparator.comparing(Stretch::day));
        return new Board(stations, kept, slipped, free);
    }

    /** Work that has begun goes on where its person is, else where its hoist is, else with whoever is free first. */
    private static Kept goesOn(List<Stretch> free, Wanted visit) {
        var agreed = agreed(visit);
        var left = new PlanSaid.IsAtWork(Amount.of(visit.minutes(), "min"));
        return free.stream()
                .filter(stretch -> stretch.day().equals(agreed.day()) && stretch.minutes() > 0)
                .min(Comparator.comparingInt((Stretch stretch) ->
                                isOr(agreed.person(), stretch.station().person()))
                        .thenComparingInt(stretch ->
                                isOr(agreed.hoist(), stretch.station().hoist()))
                        .thenComparingInt(stretch -> stretch.free().begins())
                        .thenComparing(stretch -> stretch.station().person()))
                .map(stretch -> take(free, stretch, visit, stretch.free().begins(), left))
                .orElseGet(() -> new Kept(visit, null, start(visit), left));
    }

    private static Optional<Stretch> find(List<Stretch> free, Wanted visit) {
        var agreed = agreed(visit);
        return free.stream()
                .filter(stretch -> stretch.day().equals(agreed.day()) && !isTooSoon(visit))
                .filter(stretch -> agreed.person() == null
                        || agreed.person().equals(stretch.station().person()))
                .filter(stretch -> takes(stretch, start(visit), visit.minutes()))
                .min(Comparator.comparingInt((Stretch stretch) ->
                                isOr(agreed.hoist(), stretch.station().hoist()))
                        .thenComparingInt(stretch -> stretch.station().skills().containsAll(visit.needs()) ? 0 : 1)
                        .thenComparing(stretch -> stretch.station().person()));
    }

    private static int isOr(@Nullable String wanted, @Nullable String there) {
        return wanted == null || wanted.equals(there) ? 0 : 1;
    }

    private static boolean takes(Stretch stretch, int start, int minutes) {
        var free = stretch.free();
        return !free.spans().isEmpty()
                && start >= free.begins() - slack(stretch)
                && start < free.ends()
                && (free.between(start, free.ends()).minutes() >= minutes - SLACK_MINUTES
                        || free.ends() == stretch.station().hours().ends());
    }

    /** Before the first minute of a person's day there is nothing to overlap with. */
    private static int slack(Stretch stretch) {
        return stretch.free().begins() == stretch.station().hours().begins()
                        && !stretch.station().begun()
                ? 0
                : SLACK_MINUTES;
    }

    private static Kept take(List<Stretch> free, Stretch from, Wanted visit, int start, Stays why) {
        var hours = from.free();
        var after = hours.between(start, hours.ends());
        int end = after.endsAfter(visit.minutes());
        free.remove(from);
        free.add(new Stretch(from.station(), hours.between(hours.begins(), start)));
        free.add(new Stretch(from.station(), hours.between(end, hours.ends())));
        return new Kept(visit, from.station(), start, why);
    }

    /** What speaks against it and does not outweigh that it was agreed, the gravest first. */
    private static Stays whyItStays(Stretch place, Wanted visit) {
        var station = place.station();
        var lacking = visit.needs().stream()
                .filter(skill -> !station.skills().contains(skill))
                .min(Comparator.naturalOrder());
        if (lacking.isPresent()) {
            return new PlanSaid.StaysThoughNotTrained(station.person(), lacking.get());
        }
        var free = place.free();
        int start = start(visit);
        int wanting = visit.minutes() - free.between(start, free.ends()).minutes();
        boolean isLast = free.ends() == station.hours().ends();
        if (isLast && wanting > 0) {
            return new PlanSaid.StaysThoughItEndsLate(Amount.of(wanting, "min"));
        }
        int before = free.begins() == station.hours().begins() ? 0 : free.begins() - start;
        int overlap = Math.max(before, wanting);
        return overlap > 0
                ? new PlanSaid.StaysThoughItOverlaps(Amount.of(overlap, "min"))
                : new PlanSaid.StaysAsAgreed();
    }

    /** What is agreed cannot be: what the visit needs is not there yet. */
    static boolean isTooSoon(Wanted visit) {
        return agreed(visit).day().isBefore(visit.earliest());
    }

    private static Slipped why(List<Station> stations, List<Kept> kept, Wanted visit) {
        var agreed = agreed(visit);
        if (visit.is(Stage.NOT_HERE_YET)) {
            return new PlanSaid.NotHereYet(WorkHours.clock(start(visit)));
        }
        if (isTooSoon(visit)) {
            return new PlanSaid.SetIsNotThere(visit.earliest());
        }
        var ofDay = stations.stream()
                .filter(station -> station.day().equals(agreed.day()))
                .toList();
        if (ofDay.isEmpty()) {
            return new PlanSaid.NobodyWorks(agreed.day());
        }
        var person = agreed.person();
        if (person != null
                && ofDay.stream().noneMatch(station -> station.person().equals(person))) {
            return new PlanSaid.IsAway(person, agreed.day());
        }
        return kept.stream()
                .filter(each -> each.visit().is(Stage.AT_WORK))
                .flatMap(each -> longer(each, visit).stream())
                .findFirst()
                .orElseGet(() -> new PlanSaid.TimeIsTaken(agreed.day()));
    }

    /** Where the person whom a visit was agreed with is at work on another until later than its start. */
    private static Optional<Slipped> longer(Kept atWork, Wanted visit) {
        var station = atWork.station();
        if (station == null
                || !station.day().equals(agreed(visit).day())
                || !station.person().equals(agreed(visit).person())) {
            return Optional.empty();
        }
        int end = station.hours()
                .between(atWork.start(), station.hours().ends())
                .endsAfter(atWork.visit().minutes());
        return end > start(visit)
                ? Optional.of(new PlanSaid.AnotherTakesLonger(station.person(), WorkHours.clock(end)))
                : Optional.empty();
    }

    private static boolean hasTime(Wanted visit) {
        var agreed = visit.agreed();
        return agreed != null && agreed.start() != null;
    }

    private static Agreed agreed(Wanted visit) {
        return Objects.requireNonNull(visit.agreed());
    }

    private static int start(Wanted visit) {
        return Objects.requireNonNull(agreed(visit).start());
    }

    /** How much work a day takes in all, min. */
    public int minutes(LocalDate day) {
        return stations.stream()
                .filter(station -> station.day().equals(day))
                .mapToInt(station -> station.hours().minutes())
                .sum();
    }
}
