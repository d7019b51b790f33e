package cornerbook.app.desk.days;

import cornerbook.app.book.Book;
import cornerbook.app.log.Faults;
import cornerbook.app.planner.Planner;
import cornerbook.core.days.plan.DayPlan;
import cornerbook.core.days.plan.PlanGap;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** Searches for a plan in the background, one at a time. Nothing of it is stored. */
final class PlanWork implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(PlanWork.class.getName());

    static final int LONGEST_SECONDS = 20;
    private static final Duration UNIMPROVED = Duration.ofSeconds(3);
    private static final int CLOSING_SECONDS = 5;
    private static final long NS_PER_S = 1_000_000_000;

    private final Book book;
    private final ScheduledThreadPoolExecutor executor = new ScheduledThreadPoolExecutor(
            1, Thread.ofPlatform().name("day-plan").daemon().factory());

    private volatile PlanState state = new PlanState.None();
    private volatile long begun;
    private volatile @Nullable Planner planner;

    PlanWork(Book book) {
        this.book = book;
    }

    /** How far it is now. */
    PlanState state() {
        var now = state;
        return now instanceof PlanState.Searching searching
                ? new PlanState.Searching(
                        searching.asked(), (int) ((System.nanoTime() - begun) / NS_PER_S), searching.points())
                : now;
    }

    /** Returns at once; while one is being searched for, nothing else is begun. */
    synchronized void begin(PlanAsked asked, ZonedDateTime now) {
        if (state instanceof PlanState.Searching) {
            return;
        }
        begun = System.nanoTime();
        state = new PlanState.Searching(asked, 0, null);
        // What becomes of it is told by the state.
        Future<?> unused = executor.schedule(() -> search(asked, now), 0, TimeUnit.SECONDS);
    }

    /** Takes the best that there is, when one is being searched for; throws away what waits for an answer. */
    synchronized void stop() {
        var searching = planner;
        if (searching != null) {
            searching.stop();
        } else if (!(state instanceof PlanState.Searching)) {
            state = new PlanState.None();
        }
    }

    synchronized void accepted(int changes) {
        state = new PlanState.Accepted(changes);
    }

    private void search(PlanAsked asked, ZonedDateTime now) {
        try {
            var gathered = DayPlanner.gather(book, asked, now);
            var problem = gathered.problem(asked.freePercent());
            var search = new Planner(problem, Duration.ofSeconds(LONGEST_SECONDS), UNIMPROVED);
            planner = search;
            var found = search.search(better -> state = new PlanState.Searching(asked, 0, better.points()));
            var rows = DayPlanner.rows(gathered, DayPlan.of(problem, found));
            state = new PlanState.Proposed(asked, gathered, rows, PlanGap.of(problem, found));
        } catch (RuntimeException | LinkageError e) {
            state = new PlanState.Failed(Faults.note("planning the days", e));
        } finally {
            planner = null;
        }
    }

    @Override
    public void close() {
        stop();
        executor.shutdown();
        try {
            if (!executor.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS)) {
                LOG.info("Stopped before the days were planned");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
