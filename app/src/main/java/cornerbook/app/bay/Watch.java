package cornerbook.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** Who has which sheet open, and tells them when something changed on it. Safe for use by many threads. */
final class Watch implements AutoCloseable {
    private final ConcurrentHashMap<String, List<Watcher>> watchersByVisit = new ConcurrentHashMap<>();
    private volatile boolean closed;

    /** One sheet that is open on one tablet. */
    final class Watcher implements AutoCloseable {
        private final String visitId;
        private final String person;
        private final BlockingQueue<Boolean> changes = new LinkedBlockingQueue<>();

        private Watcher(String visitId, String person) {
            this.visitId = visitId;
            this.person = person;
        }

        /**
         * Waits for the next change; several that came meanwhile count as one.
         *
         * @return true after a change, false when none came in time; empty when the server stops
         */
        Optional<Boolean> next(long seconds) {
            try {
                var changed = changes.poll(seconds, TimeUnit.SECONDS);
                changes.clear();
                return closed ? Optional.empty() : Optional.of(changed != null);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            }
        }

        @Override
        public void close() {
            watchersByVisit.computeIfPresent(visitId, (id, watchers) -> {
                watchers.remove(this);
                return watchers.isEmpty() ? null : watchers;
            });
            tell(visitId);
        }
    }

    /** Opens a sheet; the others that have it open are told. */
    Watcher open(String visitId, String person) {
        var watcher = new Watcher(visitId, person);
        watchersByVisit.compute(visitId, (id, known) -> {
            var watchers = known == null ? new CopyOnWriteArrayList<Watcher>() : known;
            watchers.add(watcher);
            return watchers;
        });
        tell(visitId);
        return watcher;
    }

    /** The names of those who have it open, each once; people without a name are left out. */
    List<String> people(String visitId) {
        return watchersByVisit.getOrDefault(visitId, List.of()).stream()
                .map(watcher -> watcher.person)
                .filter(person -> !person.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    /** Something changed on a sheet. */
    void tell(String visitId) {
        watchersByVisit.getOrDefault(visitId, List.of()).forEach(watcher -> watcher.changes.add(true));
    }

    @Override
    public void close() {
        closed = true;
        watchersByVisit.keySet().forEach(this::tell);
    }
}
