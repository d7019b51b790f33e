package cornerbook.app.book.appointment;

import cornerbook.app.book.store.Transactions;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WorkStep;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How long visits took, by the clocks of the tablets: from the first reading or tick to the hand-over. What was done at a visit is told
 * by what was entered there.
 */
public final class ClockedTimes {
    /** Of the latest visits: how a shop works changes. Common practice, no source. */
    private static final int MOST_VISITS = 400;

    private static final double SECONDS_IN_A_MINUTE = 60;

    /** Names of the constants of the program, nothing that anybody typed. */
    private static final String READ_AT_BRAKES = Arrays.stream(Measure.values())
            .filter(ClockedTimes::isReadAtBrakes)
            .map(measure -> "'" + measure.name() + "'")
            .collect(Collectors.joining(", "));

    private final Transactions store;

    public ClockedTimes(Transactions store) {
        this.store = store;
    }

    private static boolean isReadAtBrakes(Measure measure) {
        return Arrays.stream(WorkStep.values())
                .filter(step -> step.compareTo(WorkStep.PADS_AND_MOVEMENT) >= 0 && step.compareTo(WorkStep.CLOSED) <= 0)
                .anyMatch(measure::isReadIn);
    }

    private record Clocked(PlannedWork work, double minutes) {}

    /** What to expect of each work, by the latest visits that were handed over. */
    public Map<PlannedWork, ExpectedMinutes> expected() {
        var clocked = store.read(handle -> handle.select("""
            select max(departure.made_at) as ended,
             (select min(reading_author.made_at) from reading join reading_author on reading_author.reading_id = reading.id where reading.visit_id = visit.id) as read_first,
             (select min(work_tick.made_at) from work_tick where work_tick.visit_id = visit.id) as ticked_first,
             case when exists (select 1 from reading where reading.visit_id = visit.id and reading.measure in (%s)) then 1 else 0 end as brakes,
             case when exists (select 1 from visit_wheel as on_it where on_it.visit_id = visit.id and on_it.moment = 'LEFT' and not exists
               (select 1 from visit_wheel as before where before.visit_id = visit.id and before.moment = 'ARRIVED' and before.wheel_tag = on_it.wheel_tag)) then 1 else 0 end as wheels
            from departure join visit on visit.id = departure.visit_id where visit.cancelled = 0 group by visit.id order by ended desc limit ?
            """.formatted(READ_AT_BRAKES), MOST_VISITS)
                .map((row, context) -> clocked(row))
                .list());
        var expected = new EnumMap<PlannedWork, ExpectedMinutes>(PlannedWork.class);
        for (var work : PlannedWork.values()) {
            expected.put(
                    work,
                    ExpectedMinutes.of(
                            work,
                            clocked.stream()
                                    .flatMap(Optional::stream)
                                    .filter(each -> each.work() == work)
                                    .map(Clocked::minutes)
                                    .toList()));
        }
        return expected;
    }

    /**
     * Work that has begun at the visits of a day.
     *
     * @param at of the first reading or tick, or when somebody said that the car is on the hoist
     * @param person who entered the latest of these; empty where nobody was named
     */
    public record Begun(Instant at, String person) {}

    /** By visit; one at which nothing was entered and of which nobody said it is left out. */
    public Map<String, Begun> begun(LocalDate day) {
        var begun = new HashMap<String, Begun>();
        store
                .read(handle -> handle.select("""
                    select visit.id, entered.made_at, entered.person from visit join (
                      select reading.visit_id, reading_author.made_at, reading_author.person
                        from reading join reading_author on reading_author.reading_id = reading.id
                      union all select visit_id, made_at, person from work_tick
                      union all select visit_id, made_at, person from visit_state where state = 'ON_THE_HOIST'
                    ) entered on entered.visit_id = visit.id
                    where visit.visit_date = ? and visit.cancelled = 0
                    """, day.toString())
                        .map((row, context) -> Map.entry(
                                row.getString("id"),
                                new Begun(Instant.parse(row.getString("made_at")), row.getString("person"))))
                        .list())
                .stream()
                .sorted(Comparator.comparing(each -> each.getValue().at()))
                .forEach(each -> begun.merge(
                        each.getKey(), each.getValue(), (first, later) -> new Begun(first.at(), later.person())));
        return begun;
    }

    /** Empty for a visit of which nothing was entered at a tablet. */
    private static Optional<Clocked> clocked(ResultSet row) throws SQLException {
        var work = work(row.getInt("wheels") == 1, row.getInt("brakes") == 1);
        var ended = Instant.parse(row.getString("ended"));
        return Stream.of(
                        Optional.ofNullable(row.getString("read_first")),
                        Optional.ofNullable(row.getString("ticked_first")))
                .flatMap(Optional::stream)
                .map(Instant::parse)
                .min(Instant::compareTo)
                .map(began -> new Clocked(
                        work, (double) Duration.between(began, ended).toSeconds() / SECONDS_IN_A_MINUTE));
    }

    private static PlannedWork work(boolean wheels, boolean brakes) {
        if (wheels) {
            return brakes ? PlannedWork.WHEELS_AND_BRAKES : PlannedWork.WHEELS;
        }
        return brakes ? PlannedWork.BRAKES : PlannedWork.OTHER;
    }
}
