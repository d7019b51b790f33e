package cornerbook.app.log;

import java.io.PrintStream;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;

/** Shows warnings and faults to a person, one line each; what led to them stands in the file alone. */
final class LogLines extends Handler {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");

    private final PrintStream err;

    LogLines(PrintStream err) {
        this.err = err;
        setLevel(Level.WARNING);
    }

    @Override
    public void publish(LogRecord record) {
        if (isLoggable(record)) {
            err.println(
                    TIME.format(record.getInstant().atZone(ZoneId.systemDefault())) + " " + LogWords.of(record) + ".");
        }
    }

    @Override
    public void flush() {
        err.flush();
    }

    @Override
    public void close() {
        flush();
    }
}
