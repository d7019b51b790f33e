package cornerbook.core.days.plan;

import cornerbook.core.quantity.Range;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Visits that are to be laid on stretches. Two things are asked of any plan: a stretch takes no more than its minutes, and what is laid
 * on a day leaves the share for cars that come without appointment. That share drives out nothing that was agreed: what has that day
 * already may have it on.
 *
 * <p>Stretches, visits and days are known by their places, for those who search.
 */
public final class PlanProblem {
    /** Of the visit that has no place. */
    public static final int NOWHERE = -1;

    private static final int MOST_PERCENT = 100;

    private final Board board;
    private final List<Wanted> visits;
    private final List<LocalDate> days;
    private final int[] dayOfStretch;
    private final int[] dayMinutes;
    private final int[] dayKept;
    private final int[] dayRoom;
    private final List<int[]> allowed;
    private final PlanCost cost = new PlanCost();

    private PlanProblem(Board board, List<Wanted> visits, int freePercent) {
        this.board = board;
        this.visits = visits;
        days = Stream.concat(
                        board.stations().stream().map(Station::day),
                        board.free().stream().map(Stretch::day))
                .distinct()
                .sorted()
                .toList();
        dayOfStretch = board.free().stream()
                .mapToInt(stretch -> days.indexOf(stretch.day()))
                .toArray();
        dayMinutes = days.stream().mapToInt(board::minutes).toArray();
        dayKept = new int[days.size()];
        for (var each : board.kept()) {
            var station = each.station();
            if (station != null) {
                dayKept[days.indexOf(station.day())] += each.visit().minutes();
            }
        }
        dayRoom = new int[days.size()];
        var agreed = agreedMinutes(visits);
        for (int day = 0; day < days.size(); day++) {
            int usable = dayMinutes[day] * (MOST_PERCENT - freePercent) / MOST_PERCENT - dayKept[day];
            dayRoom[day] = Math.max(Math.max(usable, 0), agreed.getOrDefault(days.get(day), 0));
        }
        allowed = visits.stream().map(this::allowed).toList();
    }

    /**
     * The problem.
     *
     * @param visits with an agreed time those that can stay are kept, the others are laid anew with all the rest
     * @param freePercent share of each day for cars that come without appointment, 0 to 100
     */
    public static PlanProblem of(List<Station> stations, List<Wanted> visits, int freePercent) {
        Range.check("freePercent", freePercent, 0, MOST_PERCENT, "%");
        var board = Board.of(stations, visits);
        var kept = board.kept().stream().map(each -> each.visit().id()).toList();
        return new PlanProblem(
                board,
                visits.stream().filter(visit -> !kept.contains(visit.id())).toList(),
                freePercent);
    }

    private static Map<LocalDate, Integer> agreedMinutes(List<Wanted> visits) {
        var minutes = new TreeMap<LocalDate, Integer>();
        for (var visit : visits) {
            var agreed = visit.agreed();
            if (agreed != null) {
                minutes.merge(agreed.day(), visit.minutes(), Integer::sum);
            }
        }
        return minutes;
    }

    private int[] allowed(Wanted visit) {
        return IntStream.range(0, board.free().size())
                .filter(place -> {
                    var stretch = board.free().get(place);
                    return stretch.minutes() >= visit.minutes()
                            && !stretch.day().isBefore(visit.earliest())
                            && (!visit.isOfItsDayOnly() || isAgreed(visit, stretch))
                            && stretch.station().skills().containsAll(visit.needs());
                })
                .toArray();
    }

    private static boolean isAgreed(Wanted visit, Stretch stretch) {
        var agreed = visit.agreed();
        return agreed != null && agreed.day().equals(stretch.day());
    }

    public Board board() {
        return board;
    }

    /** Those that are to be laid. */
    public List<Wanted> visits() {
        return visits;
    }

    public List<Stretch> stretches() {
        return board.free();
    }

    public int days() {
        return days.size();
    }

    /** Where the day of a stretch stands among all days. */
    public int dayOf(int stretch) {
        return dayOfStretch[stretch];
    }

    /** How much may be laid on a day beside what is kept, min. */
    public int roomOf(int day) {
        return dayRoom[day];
    }

    /** The stretches that a visit may have, in order. */
    public List<Integer> allowed(int visit) {
        return IntStream.of(allowed.get(visit)).boxed().toList();
    }

    /** What a visit costs in a stretch, or {@link #NOWHERE}, beside what the load of the days costs. */
    public long cost(int visit, int stretch) {
        return stretch == NOWHERE
                ? cost.unplaced(visits.get(visit))
                : cost.at(visits.get(visit), stretches().get(stretch)) + waiting(visits.get(visit), stretch);
    }

    /** Who is here, or should be, has its turn early: by how much later the stretch begins than the first of its day. */
    private long waiting(Wanted visit, int stretch) {
        boolean waits = visit.is(Wanted.Stage.HERE) || visit.is(Wanted.Stage.NOT_HERE_YET);
        if (!waits || !isAgreed(visit, stretches().get(stretch))) {
            return 0;
        }
        int day = dayOf(stretch);
        int first = IntStream.range(0, dayOfStretch.length)
                .filter(each -> dayOfStretch[each] == day)
                .map(each -> stretches().get(each).free().begins())
                .min()
                .orElseThrow();
        return cost.waiting(stretches().get(stretch).free().begins() - first);
    }

    /** What the load of a day costs with so much laid on it beside what is kept. */
    public long loadCost(int day, int minutes) {
        return PlanCost.load(dayKept[day] + minutes, dayMinutes[day]);
    }

    /**
     * What a plan comes to.
     *
     * @param plan the stretch of each visit, or {@link #NOWHERE}
     */
    public PlanScore score(List<Integer> plan) {
        var inStretch = new int[stretches().size()];
        var onDay = new int[days.size()];
        long points = 0;
        for (int visit = 0; visit < visits.size(); visit++) {
            int stretch = plan.get(visit);
            points += cost(visit, stretch);
            if (stretch != NOWHERE) {
                inStretch[stretch] += visits.get(visit).minutes();
                onDay[dayOf(stretch)] += visits.get(visit).minutes();
            }
        }
        int over = 0;
        for (int stretch = 0; stretch < inStretch.length; stretch++) {
            over += Math.max(0, inStretch[stretch] - stretches().get(stretch).minutes());
        }
        for (int day = 0; day < onDay.length; day++) {
            over += Math.max(0, onDay[day] - dayRoom[day]);
            points += loadCost(day, onDay[day]);
        }
        return new PlanScore(over, points);
    }

    /** How much a day has of what is kept, min. */
    public int keptOf(int day) {
        return dayKept[day];
    }

    /** How much work a day takes in all, min. */
    public int minutesOf(int day) {
        return dayMinutes[day];
    }
}
