package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.limits.JudgeCode;
import cornerbook.app.log.Faults;
import cornerbook.core.assess.Assessor;
import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The assessor with the climate of the place and what the book has learned, learned anew in the background after visits. */
public final class Learning implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Learning.class.getName());

    private static final int CLOSING_SECONDS = 10;
    /** Learning that takes no longer disturbs nobody, and may follow each visit. */
    private static final long QUICK_NANOS = 2_000_000_000L;
    /**
     * After a long one, so many times as long nothing is learned: among the many cars of such a book one visit more tells next to
     * nothing, and all verdicts are old by whatever is learned.
     */
    private static final int PAUSE = 300;

    private final Book book;
    private final Clock clock;
    /** By the limits alone. */
    private final Assessor plain;
    /** A thread of its own: learning from a big book takes seconds, which pages would wait for on a thread that they share. */
    private final ScheduledThreadPoolExecutor executor = new ScheduledThreadPoolExecutor(
            1, Thread.ofPlatform().name("learn").daemon().factory());

    private final AtomicBoolean wanted = new AtomicBoolean();
    /** By {@link System#nanoTime}. */
    private volatile long notBefore = System.nanoTime();

    private volatile Judging judging;

    public Learning(Book book, Assessor assessor, Clock clock) {
        this.book = book;
        this.clock = clock;
        this.plain = assessor;
        book.verdicts().judgeBy(JudgeCode.digest(assessor));
        this.judging = read();
    }

    /**
     * What cars are judged by.
     *
     * @param number that the book has for it
     */
    record Judging(Assessor assessor, long number) {}

    Judging judging() {
        return judging;
    }

    Assessor assessor() {
        return judging.assessor();
    }

    /** As {@link #learnSoon}, for a book that has learned nothing yet. */
    public void learnIfNew() {
        if (book.knowledge().read().learnedOn() == null) {
            learnSoon();
        }
    }

    /** Returns at once. Wishes that come while it learns, or in the pause after it, are met by one further run. */
    public void learnSoon() {
        if (!wanted.getAndSet(true)) {
            // What becomes of it is told by the assessor.
            Future<?> unused = executor.schedule(this::learn, notBefore - System.nanoTime(), TimeUnit.NANOSECONDS);
        }
    }

    private void learn() {
        wanted.set(false);
        long begun = System.nanoTime();
        try {
            book.knowledge().learn(LocalDate.now(clock));
            readAnew();
        } catch (BookException e) {
            LOG.log(Level.WARNING, "The book could not be learned from; what was known before serves", e);
        } catch (RuntimeException e) {
            Faults.note("learning from the book; what was known before serves", e);
        }
        notBefore = System.nanoTime() + pauseAfter(System.nanoTime() - begun);
    }

    /** How long nothing is learned after learning took so long, both in nanoseconds. */
    static long pauseAfter(long tookNanos) {
        return tookNanos <= QUICK_NANOS ? 0 : PAUSE * tookNanos;
    }

    /** The book has another climate or has learned something; the next assessment counts on it. */
    public synchronized void readAnew() {
        judging = read();
    }

    private Judging read() {
        var by = book.knowledge().judgedWith();
        return new Judging(plain.with(by.knowledge()).in(by.climate()), by.number());
    }

    /** Waits until it has learned what was wanted, but not for ever: what is not learned now is learned after the next visit. */
    @Override
    public void close() {
        executor.setExecuteExistingDelayedTasksAfterShutdownPolicy(notBefore - System.nanoTime() <= 0);
        executor.shutdown();
        try {
            if (!executor.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS)) {
                LOG.info("Stopped before all was learned");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
