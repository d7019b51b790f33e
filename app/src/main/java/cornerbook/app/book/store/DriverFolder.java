package cornerbook.app.book.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * Where the library that SQLite's driver loads is put: a folder in the temporary one, for this process alone. A process that
 * ends takes its own away; what one that was killed has left, the next one takes. The system's lock on a file in it tells
 * whether its process lives. Left to itself the driver compares what it has put there with its own, byte by byte, which is a
 * tenth of the work of a start.
 */
final class DriverFolder {
    private static final String PROPERTY = "org.sqlite.lib.path";
    private static final String PREFIX = "cornerbook-driver-";
    private static final String LOCK = "in-use";
    /** A younger one may not be locked yet. */
    private static final Duration YOUNG = Duration.ofMinutes(1);

    /** Never closed: the lock is held until the process ends. */
    private static @Nullable FileChannel lock;

    private DriverFolder() {}

    /** To be called before the driver loads its library. */
    static synchronized void prepare() {
        if (lock != null || System.getProperty(PROPERTY) != null) {
            return;
        }
        var temporary = Path.of(System.getProperty("java.io.tmpdir"));
        try {
            clear(temporary);
            var folder = Files.createTempDirectory(temporary, PREFIX);
            var file = folder.resolve(LOCK);
            var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            channel.lock();
            lock = channel;
            // Taken away in the opposite order.
            folder.toFile().deleteOnExit();
            file.toFile().deleteOnExit();
            bring(LibraryLoaderUtil.getNativeLibName(), folder);
            System.setProperty(PROPERTY, folder.toString());
        } catch (IOException e) {
            // The driver tries the temporary folder itself, and says what fails.
        }
    }

    private static void bring(String library, Path folder) throws IOException {
        var file = folder.resolve(library);
        file.toFile().deleteOnExit();
        try (var stream = SQLiteJDBCLoader.class.getResourceAsStream(
                LibraryLoaderUtil.getNativeLibResourcePath() + "/" + library)) {
            if (stream != null) {
                Files.copy(stream, file);
            }
        }
    }

    private static void clear(Path temporary) throws IOException {
        var limit = Instant.now().minus(YOUNG);
        try (var left = Files.newDirectoryStream(temporary, PREFIX + "*")) {
            for (var folder : left) {
                if (Files.getLastModifiedTime(folder).toInstant().isBefore(limit)) {
                    clearUnlessInUse(folder);
                }
            }
        }
    }

    private static void clearUnlessInUse(Path folder) {
        try (var channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.WRITE);
                var taken = channel.tryLock()) {
            if (taken != null) {
                try (var files = Files.newDirectoryStream(folder)) {
                    for (var file : files) {
                        Files.delete(file);
                    }
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            // Somebody else's, or just taken away by another process.
        }
    }
}
