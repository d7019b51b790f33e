package cornerbook.app.log;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** Where the log goes: to a file beside the book, and while pages are served to standard error too. Safe for use by many threads. */
public final class Log {
    /** The logger above all of the program's own; held, for a logger that nobody holds loses its level. */
    private static final Logger OWN = Logger.getLogger("cornerbook");

    private static final Logger ALL = Logger.getLogger("");

    private static @Nullable LogFile kept;

    private Log() {}

    /** Nothing is written anywhere yet. Of libraries only what ends something is taken: they tell of each start and font. */
    public static void begin() {
        LogManager.getLogManager().reset();
        ALL.setLevel(Level.SEVERE);
        OWN.setLevel(Level.INFO);
    }

    /** From now on warnings and faults are shown to whoever runs the server, one line each. */
    public static void showOn(PrintStream err) {
        replace(new LogLines(err));
    }

    /** From now on everything is kept in the folder of a book; in none when that folder is not there. */
    public static synchronized void keepIn(Path book) {
        var file = new LogFile(book);
        replace(file);
        kept = file;
    }

    /** The file that has what is written next; in the system's temporary folder where no book was opened. */
    public static synchronized Path file() {
        var file = kept;
        if (file != null) {
            return file.path();
        }
        try {
            keepIn(Files.createTempDirectory("cornerbook"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file();
    }

    /** The last line: the Java machine takes its loggers away while it stops. */
    public static synchronized void end(String what) {
        var file = kept;
        if (file != null) {
            var record = new LogRecord(Level.INFO, what);
            record.setLoggerName(OWN.getName());
            file.publish(record);
        }
    }

    private static void replace(Handler handler) {
        for (var before : ALL.getHandlers()) {
            if (before.getClass() == handler.getClass()) {
                ALL.removeHandler(before);
            }
        }
        ALL.addHandler(handler);
    }
}
