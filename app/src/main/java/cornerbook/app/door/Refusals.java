package cornerbook.app.door;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.logging.Logger;
import java.util.stream.Collectors;

/** Counts who was turned away at the door, and tells the log of them together: a stranger must not fill it. Safe for use by many threads. */
final class Refusals implements AutoCloseable {
    enum Reason {
        ANOTHER_NAME("for another name than this server's"),
        ANOTHER_SITE("changes sent by another site"),
        NOT_PAIRED("not paired"),
        WRONG_CODE("wrong pairing code"),
        WRONG_PIN("wrong name or PIN"),
        UNKNOWN_CALENDAR("unknown calendar address"),
        UNKNOWN_ESTIMATE("unknown address of an estimate"),
        UNKNOWN_ASKING("unknown address to pick a day");

        private final String words;

        Reason(String words) {
            this.words = words;
        }
    }

    private static final Logger LOG = Logger.getLogger(Refusals.class.getName());
    private static final Duration TOLD_EVERY = Duration.ofMinutes(10);

    private final Clock clock;
    private final Map<Reason, Integer> counts = new EnumMap<>(Reason.class);
    private Instant toldAt = Instant.MIN;

    Refusals(Clock clock) {
        this.clock = clock;
    }

    synchronized void count(Reason reason) {
        counts.merge(reason, 1, Math::addExact);
        if (toldAt.isBefore(clock.instant().minus(TOLD_EVERY))) {
            tell();
        }
    }

    /** What was not told yet. */
    @Override
    public synchronized void close() {
        if (!counts.isEmpty()) {
            tell();
        }
    }

    private void tell() {
        LOG.info(() -> "Requests refused: "
                + counts.entrySet().stream()
                        .map(each -> "%s %s".formatted(each.getValue(), each.getKey().words))
                        .collect(Collectors.joining(", ")));
        counts.clear();
        toldAt = clock.instant();
    }
}
