package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.log.Faults;
import cornerbook.core.assess.Assessor;
import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The assessor with the climate of the place and what the book has learned, learned anew in the background after visits. */
public final class Learning implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Learning.class.getName());

    private static final int CLOSING_SECONDS = 10;

    private final Book book;
    private final Clock clock;
    private final ExecutorService executor =
            Executors.newSingleThreadExecutor(Thread.ofVirtual().name("learn").factory());
    private final AtomicBoolean wanted = new AtomicBoolean();
    private volatile Assessor assessor;

    public Learning(Book book, Assessor assessor, Clock clock) {
        this.book = book;
        this.clock = clock;
        this.assessor =
                assessor.with(book.knowledge().read()).in(book.climate().find().orElse(null));
    }

    Assessor assessor() {
        return assessor;
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
            var knowledge = book.knowledge().learn(LocalDate.now(clock));
            change(known -> known.with(knowledge));
        } catch (BookException e) {
            LOG.log(Level.WARNING, "The book could not be learned from; what was known before serves", e);
        } catch (RuntimeException e) {
            Faults.note("learning from the book; what was known before serves", e);
        }
    }

    /** The book has another climate now; the next assessment counts on it. */
    public void climateChanged() {
        var climate = book.climate().find().orElse(null);
        change(known -> known.in(climate));
    }

    private synchronized void change(UnaryOperator<Assessor> by) {
        assessor = by.apply(assessor);
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
