package cornerbook.app.book.store;

import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** A store that tells when something was written. */
public final class ToldStore implements BookStore {
    private final BookStore store;
    private final Changes changes;

    public ToldStore(BookStore store, Changes changes) {
        this.store = store;
        this.changes = changes;
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        return store.read(work);
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        T done = store.write(work);
        changes.tell();
        return done;
    }

    @Override
    public void copyTo(Path copy, Path target) {
        store.copyTo(copy, target);
    }

    @Override
    public List<Said> damage(Handle handle) {
        return store.damage(handle);
    }

    @Override
    public List<Said> loosePointers(Handle handle) {
        return store.loosePointers(handle);
    }

    @Override
    public void close() {
        store.close();
    }
}
