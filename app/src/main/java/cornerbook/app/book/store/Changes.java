package cornerbook.app.book.store;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Tells whoever wants to know that this process has written to the book. What another process writes is not told. */
public final class Changes {
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /**
     * Runs after each piece of work that may have changed the book, in the thread that did it.
     *
     * @param listener returns at once, and asks nothing of the book
     */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    void tell() {
        listeners.forEach(Runnable::run);
    }
}
