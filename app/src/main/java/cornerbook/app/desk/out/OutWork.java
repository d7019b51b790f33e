package cornerbook.app.desk.out;

import cornerbook.app.book.Book;
import cornerbook.app.log.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * Takes the book out in the background, one file at a time. What was made stays until another is asked for, it is removed, or the
 * server stops: it may hold names.
 */
final class OutWork implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(OutWork.class.getName());

    private static final int CLOSING_SECONDS = 5;

    private final Book book;
    private final Clock clock;
    private final ScheduledThreadPoolExecutor executor = new ScheduledThreadPoolExecutor(
            1, Thread.ofPlatform().name("take-out").daemon().factory());

    private volatile OutState state = new OutState.None();
    private volatile boolean stopped;
    private @Nullable Path folder;

    OutWork(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    OutState state() {
        return state;
    }

    /** Returns at once; while one is being made, nothing else is begun. */
    synchronized void begin(OutKind kind, boolean withNames) {
        if (state instanceof OutState.Making) {
            return;
        }
        removeFile();
        stopped = false;
        state = new OutState.Making(kind, withNames, 0, 0);
        // What becomes of it is told by the state.
        Future<?> unused = executor.schedule(() -> make(kind, withNames), 0, TimeUnit.SECONDS);
    }

    /** Stops what is being made, and removes what was made. */
    synchronized void remove() {
        if (state instanceof OutState.Making) {
            stopped = true;
        } else {
            removeFile();
            state = new OutState.None();
        }
    }

    private void make(OutKind kind, boolean withNames) {
        try {
            var place = place();
            var file = Files.createTempFile(place, "book", ".zip");
            int left = BookZip.write(book, place, file, kind, withNames, (done, all) -> {
                if (stopped) {
                    throw new CancellationException();
                }
                state = new OutState.Making(kind, withNames, done, all);
            });
            state = new OutState.Made(kind, withNames, file, Files.size(file), clock.instant(), left);
        } catch (CancellationException e) {
            removeFile();
            state = new OutState.None();
        } catch (IOException | RuntimeException e) {
            removeFile();
            state = new OutState.Failed(kind, Faults.note("taking the book out", e));
        }
    }

    /** Only its owner may read what is in it. */
    private synchronized Path place() throws IOException {
        var known = folder;
        if (known == null) {
            known = Files.createTempDirectory("cornerbook-out");
            folder = known;
        }
        return known;
    }

    private synchronized void removeFile() {
        var made = folder;
        if (made == null) {
            return;
        }
        folder = null;
        try (var files = Files.list(made)) {
            for (var file : files.toList()) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(made);
        } catch (IOException e) {
            Faults.note("removing what was taken out in " + made, e);
        }
    }

    @Override
    public void close() {
        stopped = true;
        executor.shutdown();
        try {
            if (!executor.awaitTermination(CLOSING_SECONDS, TimeUnit.SECONDS)) {
                LOG.info("Stopped before the book was taken out");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        removeFile();
    }
}
