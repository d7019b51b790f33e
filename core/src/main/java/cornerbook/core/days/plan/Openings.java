package cornerbook.core.days.plan;

import cornerbook.core.days.Skill;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Where one more visit fits beside all that is agreed. Visits that were agreed for a day without a time are laid first, the longest
 * first, each where it fits with its person or else anywhere; what fits nowhere still takes its minutes from the day.
 */
public final class Openings {
    /** Times that people are given are quarters of an hour. */
    private static final int QUARTER = 15;

    private static final int PERCENT = 100;
    private static final int DAY_MINUTES = 24 * 60;

    private final Board board;
    private final List<Stretch> free;
    private final Map<LocalDate, Integer> laid;

    private Openings(Board board, List<Stretch> free, Map<LocalDate, Integer> laid) {
        this.board = board;
        this.free = free;
        this.laid = laid;
    }

    /**
     * A place for a visit.
     *
     * @param start minute of the day
     * @param end minute of the day at which it would be done
     */
    public record Opening(Station station, int start, int end) {}

    /**
     * Beside these visits; those that nobody agreed on a day are left out.
     *
     * @param today the day of which a part is over
     * @param now minute of it before which nothing begins any more
     */
    public static Openings beside(List<Station> stations, List<Wanted> visits, LocalDate today, int now) {
        var board = Board.of(stations, visits);
        var laid = new TreeMap<LocalDate, Integer>();
        for (var each : board.kept()) {
            var station = each.station();
            if (station != null) {
                laid.merge(station.day(), each.visit().minutes(), Integer::sum);
            }
        }
        var free = board.free().stream()
                .map(stretch -> stretch.day().equals(today) ? from(stretch, now) : stretch)
                .filter(stretch -> stretch.minutes() > 0)
                .collect(Collectors.toCollection(ArrayList::new));
        var kept = board.kept().stream().map(each -> each.visit().id()).collect(Collectors.toSet());
        visits.stream()
                .filter(visit -> visit.agreed() != null && !kept.contains(visit.id()))
                .sorted(Comparator.comparingInt((Wanted visit) -> -visit.minutes())
                        .thenComparing(Wanted::id))
                .forEach(visit -> {
                    var agreed = visit.agreed();
                    if (agreed != null) {
                        laid.merge(agreed.day(), visit.minutes(), Integer::sum);
                        free.stream()
                                .filter(stretch ->
                                        stretch.day().equals(agreed.day()) && stretch.minutes() >= visit.minutes())
                                .min(Comparator.comparingInt((Stretch stretch) ->
                                                stretch.station().person().equals(agreed.person()) ? 0 : 1)
                                        .thenComparingInt(Stretch::minutes))
                                .ifPresent(stretch -> lay(free, stretch, visit.minutes()));
                    }
                });
        return new Openings(board, free, laid);
    }

    private static Stretch from(Stretch stretch, int now) {
        return new Stretch(stretch.station(), stretch.free().between(now, DAY_MINUTES));
    }

    private static void lay(List<Stretch> free, Stretch stretch, int minutes) {
        var hours = stretch.free();
        free.remove(stretch);
        var rest = new Stretch(stretch.station(), hours.between(hours.endsAfter(minutes), hours.ends()));
        if (rest.minutes() > 0) {
            free.add(rest);
        }
    }

    /** Whether a day has so much left when a share of it is kept for cars that come without appointment. */
    public boolean hasRoom(LocalDate day, int minutes, int freePercent) {
        return laid.getOrDefault(day, 0) + minutes <= board.minutes(day) * (PERCENT - freePercent) / PERCENT;
    }

    /** The places on a day, earliest first, one for each time. */
    public List<Opening> on(LocalDate day, int minutes, Set<Skill> needs) {
        var places = new TreeMap<Integer, Opening>();
        for (var stretch : free) {
            if (stretch.day().equals(day)
                    && stretch.minutes() >= minutes
                    && stretch.station().skills().containsAll(needs)) {
                addAll(places, stretch, minutes);
            }
        }
        return List.copyOf(places.values());
    }

    /** From its first quarter on, one after the other. */
    private static void addAll(Map<Integer, Opening> places, Stretch stretch, int minutes) {
        int start = stretch.free().begins();
        while (true) {
            start = Math.ceilDiv(start, QUARTER) * QUARTER;
            var rest = stretch.free().between(start, stretch.free().ends());
            if (rest.minutes() < minutes) {
                return;
            }
            start = rest.begins();
            int end = rest.endsAfter(minutes);
            places.putIfAbsent(start, new Opening(stretch.station(), start, end));
            start = end;
        }
    }
}
