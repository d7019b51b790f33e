package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.judge.JudgeCode;
import cornerbook.app.log.Faults;
import cornerbook.core.assess.Assessor;
import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The assessor with the climate of the place and what the book has learned, learned anew in the background after visits. */
public final class Learning implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Learning.class.getName());

    private static final int CLOSING_SECONDS = 10;

    private final Book book;
    private final Clock clock;
    /** By the limits alone. */
    private final Assessor plain;
    /** A thread of its own: learning from a big book takes seconds, which pages would wait for on a thread that they share. */
    private final ExecutorService executor = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().name("learn").daemon().factory());

    private final AtomicBoolean wanted = new AtomicBoolean();
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

    /** Returns at once. Wishes that come while it learns are met by one further run. */
    public void learnSoon() {
        if (!wanted.getAndSet(true)) {
            executor.execute(this::learn);
        }
    }

    private void learn() {
        wanted.set(false);
        try {
            book.knowledge().learn(LocalDate.now(clock));
            readAnew();
        } catch (BookException e) {
            LOG.log(Level.WARNING, "The book could not be learned from; what was known before serves", e);
        } catch (RuntimeException e) {
            Faults.note("learning from the book; what was known before serves", e);
        }
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
