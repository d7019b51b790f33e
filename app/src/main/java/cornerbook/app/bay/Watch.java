package cornerbook.app.bay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Who has which sheet open, and tells them when something changed on it. What they are told is made once for all of them. Safe
 * for use by many threads.
 */
final class Watch implements AutoCloseable {
    /** More than a browser opens to one server; when a tablet has more, its oldest ends, for it is a page that is gone. */
    static final int MOST_OF_ONE_DEVICE = 12;

    private final ConcurrentHashMap<String, Sheet> sheets = new ConcurrentHashMap<>();
    private volatile boolean closed;
    private long opened;

    /** Those who have one sheet open, and the state that they were told last. */
    private static final class Sheet {
        private final Set<Watcher> watchers = new LinkedHashSet<>();
        private @Nullable String told;

        /** The state as of the last change; who asks while it is made waits for the same. */
        private synchronized String state(Supplier<String> make) {
            var known = told;
            if (known == null) {
                known = make.get();
                told = known;
            }
            return known;
        }

        /** What was told is old now. */
        private synchronized void tell() {
            told = null;
            watchers.forEach(Watcher::notice);
        }

        private synchronized List<String> people() {
            return watchers.stream()
                    .map(watcher -> watcher.person)
                    .filter(person -> !person.isEmpty())
                    .distinct()
                    .sorted()
                    .toList();
        }

        /** Adds or takes away; the others are told when other people have it open now, and who opens it never sees an old state. */
        private synchronized void change(Runnable change) {
            var before = people();
            change.run();
            if (before.equals(people())) {
                told = null;
            } else {
                tell();
            }
        }
    }

    /** One sheet that is open on one tablet. */
    final class Watcher implements AutoCloseable {
        private final String visitId;
        private final String person;
        private final String deviceId;
        private final long number;
        /** One notice is as good as many. */
        private final BlockingQueue<Boolean> changes = new ArrayBlockingQueue<>(1);

        private volatile boolean ended;

        private Watcher(String visitId, String person, String deviceId, long number) {
            this.visitId = visitId;
            this.person = person;
            this.deviceId = deviceId;
            this.number = number;
        }

        /**
         * Waits for the next change; several that came meanwhile count as one.
         *
         * @return true after a change, false when none came in time; empty when this is to end
         */
        Optional<Boolean> next(long seconds) {
            try {
                var changed = closed || ended || changes.poll(seconds, TimeUnit.SECONDS) != null;
                return closed || ended ? Optional.empty() : Optional.of(changed);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            }
        }

        /** The state after the last change, made by whoever asks first. */
        String state(Supplier<String> make) {
            var sheet = sheets.get(visitId);
            return sheet == null ? make.get() : sheet.state(make);
        }

        private void notice() {
            changes.offer(true);
        }

        private void end() {
            ended = true;
            notice();
        }

        @Override
        public void close() {
            sheets.computeIfPresent(visitId, (id, sheet) -> {
                sheet.change(() -> sheet.watchers.remove(this));
                return sheet.watchers.isEmpty() ? null : sheet;
            });
        }
    }

    /**
     * Opens a sheet; the others that have it open are told.
     *
     * @param deviceId of the paired tablet; empty for a browser of this machine
     */
    synchronized Watcher open(String visitId, String person, String deviceId) {
        var open = list(watcher -> watcher.deviceId.equals(deviceId) && !watcher.ended);
        if (open.size() >= MOST_OF_ONE_DEVICE) {
            open.getFirst().end();
        }
        opened++;
        var watcher = new Watcher(visitId, person, deviceId, opened);
        sheets.compute(visitId, (id, known) -> {
            var sheet = known == null ? new Sheet() : known;
            sheet.change(() -> sheet.watchers.add(watcher));
            return sheet;
        });
        return watcher;
    }

    /** The names of those who have it open, each once; people without a name are left out. */
    List<String> people(String visitId) {
        var sheet = sheets.get(visitId);
        return sheet == null ? List.of() : sheet.people();
    }

    /** Something changed on a sheet. */
    void tell(String visitId) {
        sheets.computeIfPresent(visitId, (id, sheet) -> {
            sheet.tell();
            return sheet;
        });
    }

    /** A tablet may see nothing any more. */
    void endOf(String deviceId) {
        list(watcher -> watcher.deviceId.equals(deviceId)).forEach(Watcher::end);
    }

    /** The oldest first. */
    private List<Watcher> list(Predicate<Watcher> which) {
        return sheets.values().stream()
                .flatMap(Watch::copy)
                .filter(which)
                .sorted(Comparator.comparingLong(watcher -> watcher.number))
                .toList();
    }

    private static Stream<Watcher> copy(Sheet sheet) {
        synchronized (sheet) {
            return new ArrayList<>(sheet.watchers).stream();
        }
    }

    @Override
    public void close() {
        closed = true;
        sheets.keySet().forEach(this::tell);
    }
}
