package cornerbook.app.book.store;

import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Where the rows of a book are. Turns the database's failures into sentences. */
public interface BookStore extends Transactions, AutoCloseable {
    /** Writes a copy of the book, as it stands at one moment, to a file that is not there and is moved to the target later. */
    void copyTo(Path copy, Path target);

    /** What is wrong with the store's own files, one sentence each. */
    List<Said> damage(Handle handle);

    /** Rows that point to others that are not there, one sentence each. */
    List<Said> loosePointers(Handle handle);

    /** Connections are opened and closed with each piece of work; a store that keeps one more closes it here. */
    @Override
    default void close() {}
}
