package cornerbook.app.log;

import cornerbook.core.say.Saying;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.logging.LogRecord;
import java.util.logging.SimpleFormatter;
import java.util.stream.Stream;

/**
 * What may be written of something that happened. Messages of exceptions can hold what a person typed, a name or a plate, so
 * they are left out but for those of the Java machine itself and of {@code core}, without what stands in quotes, and for the name
 * of the sentence that a person is told; libraries' words are left out as well.
 */
final class LogWords {
    private static final String OWN = "cornerbook";
    private static final String CORE = "cornerbook.core.";
    private static final int MOST_FRAMES = 40;

    private LogWords() {}

    /** What happened, without a full stop. */
    static String of(LogRecord record) {
        var logger = Objects.requireNonNullElse(record.getLoggerName(), "");
        return logger.startsWith(OWN)
                ? new SimpleFormatter().formatMessage(record).replaceFirst("\\.$", "")
                : "A library tells of an error: " + logger;
    }

    /** What led to it, the outermost first, each with the places in the program where it was. */
    static List<String> trace(Throwable thrown) {
        var lines = new ArrayList<String>();
        Stream.iterate(thrown, Objects::nonNull, Throwable::getCause)
                .limit(MOST_FRAMES)
                .forEach(each -> {
                    lines.add(each.getClass().getName() + words(each));
                    Arrays.stream(each.getStackTrace()).limit(MOST_FRAMES).forEach(frame -> lines.add("  " + frame));
                });
        return lines;
    }

    private static String words(Throwable thrown) {
        if (thrown instanceof Saying saying) {
            // Its facts are what a person typed.
            return ": " + saying.said().getClass().getSimpleName();
        }
        var message = thrown.getMessage();
        return message == null || !tells(thrown) ? "" : ": " + message.replaceAll("\"[^\"]*\"", "\"…\"");
    }

    private static boolean tells(Throwable thrown) {
        var places = thrown.getStackTrace();
        return thrown instanceof NullPointerException
                || thrown instanceof IndexOutOfBoundsException
                || thrown instanceof ArithmeticException
                || thrown instanceof ClassCastException
                || (places.length > 0 && places[0].getClassName().startsWith(CORE));
    }
}
