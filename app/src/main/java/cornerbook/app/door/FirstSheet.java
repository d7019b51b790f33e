package cornerbook.app.door;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Draws one sheet to nowhere when the first page has been answered: the first of a start takes many times as long as those after it,
 * for its code runs for the first time, and nobody wants one before having seen a page.
 */
final class FirstSheet implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(FirstSheet.class.getName());

    /** A browser asks for style and letters of the first page; those come before. */
    private static final Duration PAUSE = Duration.ofMillis(300);

    private final Supplier<Optional<Supplier<byte[]>>> reading;
    private final CountDownLatch answered = new CountDownLatch(1);
    private final CountDownLatch closing = new CountDownLatch(1);
    /** Drawing is waited for by nobody. */
    private final Thread thread = Thread.ofPlatform()
            .name("first-sheet")
            .daemon()
            .priority(Thread.MIN_PRIORITY)
            .unstarted(this::run);

    /**
     * Does nothing before it is started.
     *
     * @param reading asks the book for all that the sheet needs; what it gives draws it and asks nothing more
     */
    FirstSheet(Supplier<Optional<Supplier<byte[]>>> reading) {
        this.reading = reading;
    }

    void start() {
        thread.start();
    }

    /** Returns at once, each time. */
    void pageAnswered() {
        answered.countDown();
    }

    private void run() {
        try {
            answered.await();
            if (!closing.await(PAUSE.toMillis(), TimeUnit.MILLISECONDS)) {
                read().map(Supplier::get)
                        .ifPresent(sheet -> LOG.log(Level.FINE, "A sheet of {0} bytes was drawn ahead", sheet.length));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException e) {
            // Who asks for this sheet is told what is wrong with it.
            LOG.log(Level.INFO, "No sheet was drawn ahead", e);
        }
    }

    private synchronized Optional<Supplier<byte[]>> read() {
        return closing.getCount() == 0 ? Optional.empty() : reading.get();
    }

    /** Waits while the book is being read, never for the drawing. The book is not asked afterwards. */
    @Override
    public synchronized void close() {
        closing.countDown();
        answered.countDown();
    }
}
