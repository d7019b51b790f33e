package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.verdict.Gravest;
import cornerbook.app.book.verdict.KeptVerdict;
import cornerbook.app.book.verdict.VerdictLedger.Judgement;
import cornerbook.app.book.verdict.VerdictLedger.Needs;
import cornerbook.app.judge.Judged;
import cornerbook.app.log.Faults;
import cornerbook.core.assess.Assessor;
import java.time.Clock;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.locks.LockSupport;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Keeps in the book what lists show of each car, and the words by which it is found: in the background it writes anew whatever is
 * old, verdicts that a page has just shown first, then those of the cars that were here last. Each handful is on the disk before
 * the next is begun, so whoever is stopped goes on where it was.
 */
public final class CarLists implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(CarLists.class.getName());

    /** What a page shows waits for one handful at most. */
    private static final int AT_ONCE = 10;
    /** A visit's readings come one by one; they are waited for, or a car is judged by each of them. */
    private static final long SETTLE_NANOS = 100_000_000;

    private static final int CLOSING_MILLISECONDS = 10_000;

    private final Book book;
    private final Learning learning;
    private final Clock clock;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Semaphore wanted = new Semaphore(1);
    /** Judging keeps a processor busy: on a thread that pages share they would wait. */
    private final Thread thread = Thread.ofPlatform().name("car-lists").daemon().unstarted(this::run);

    private volatile boolean stopped;

    public CarLists(Book book, Learning learning, Clock clock) {
        this.book = book;
        this.learning = learning;
        this.clock = clock;
    }

    /** Judges what is old now, and from now on whatever becomes so. */
    public void start() {
        book.changes().listen(wanted::release);
        thread.start();
    }

    /** These cars are shown though their verdicts are old: they are judged before others. Returns at once. */
    public void ask(Collection<String> vehicleIds) {
        if (vehicleIds.isEmpty()) {
            return;
        }
        synchronized (asked) {
            asked.addAll(vehicleIds);
        }
        wanted.release();
        LockSupport.unpark(thread);
    }

    private void run() {
        // Asked before each wait: what closing releases may be drained with the rest.
        while (!stopped) {
            wanted.acquireUninterruptibly();
            rest(SETTLE_NANOS);
            wanted.drainPermits();
            try {
                if (!stopped) {
                    book.search().keepWords();
                    judgeOld();
                }
            } catch (BookException e) {
                LOG.log(Level.WARNING, "What lists show could not be kept; what was there is shown with its age", e);
            } catch (RuntimeException e) {
                Faults.note("keeping what lists show; what was there is shown with its age", e);
            }
        }
    }

    /** Returns when no verdict is old, or it is stopped. */
    public void judgeOld() {
        for (var next = next(); !next.isEmpty() && !stopped; next = next()) {
            long begun = System.nanoTime();
            judge(next);
            // Pages have at least as much of the processor.
            rest(System.nanoTime() - begun);
        }
    }

    private List<String> next() {
        var first = takeAsked();
        return first.isEmpty() ? book.verdicts().listOld(AT_ONCE) : first;
    }

    private List<String> takeAsked() {
        synchronized (asked) {
            var taken = asked.stream().limit(AT_ONCE).toList();
            taken.forEach(asked::remove);
            return taken;
        }
    }

    /** Not while somebody looks at a list. */
    private void rest(long nanos) {
        synchronized (asked) {
            if (!asked.isEmpty()) {
                return;
            }
        }
        if (!stopped && Thread.currentThread() == thread) {
            LockSupport.parkNanos(nanos);
        }
    }

    private void judge(List<String> vehicleIds) {
        if (book.verdicts().judgedBy() != learning.judging().number()) {
            // Another process has learned, or entered a climate.
            learning.readAnew();
        }
        var by = learning.judging();
        book.verdicts()
                .put(vehicleIds.stream()
                        .filter(id -> book.verdicts()
                                .find(id)
                                .filter(KeptVerdict::isOld)
                                .isPresent())
                        .flatMap(id -> judge(id, by).stream())
                        .toList());
    }

    /** Empty when there is no such car any longer. */
    private Optional<Judgement> judge(String vehicleId, Learning.Judging by) {
        var revision = book.cars().findRevision(vehicleId);
        if (revision.isEmpty()) {
            return Optional.empty();
        }
        var judged = Judged.of("car " + vehicleId, () -> latest(vehicleId, by.assessor()));
        var latest = judged.orElse(Optional.empty());
        return Optional.of(new Judgement(
                vehicleId,
                revision.get(),
                by.number(),
                clock.instant(),
                latest.flatMap(each -> Gravest.of(each.outcome().findings())).orElse(null),
                judged instanceof Judged.Failed<Optional<Latest>> failed ? failed.faultId() : null,
                latest.map(each -> new Needs(
                                each.visitId(),
                                each.outcome().needs(),
                                each.outcome().matters()))
                        .orElse(null)));
    }

    /** What the latest visit of a car comes to. */
    private record Latest(String visitId, Assessor.Outcome outcome) {}

    private Optional<Latest> latest(String vehicleId, Assessor assessor) {
        return book.cars()
                .find(vehicleId)
                .filter(history -> !history.visits().isEmpty())
                .map(history -> {
                    var visitId = history.visits().getLast().id();
                    return new Latest(visitId, assessor.outcome(history, visitId));
                });
    }

    /** Waits for the handful that is being judged. */
    @Override
    public void close() {
        stopped = true;
        wanted.release();
        LockSupport.unpark(thread);
        try {
            thread.join(CLOSING_MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
