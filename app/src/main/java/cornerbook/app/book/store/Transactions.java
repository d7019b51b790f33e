package cornerbook.app.book.store;

import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/**
 * Where a ledger gets at the rows of the book. Each piece of work is one transaction, so that a ledger's method is done whole
 * or not at all.
 */
public interface Transactions {
    /** Runs the work on the book as it stands at one moment. */
    <T> T read(Function<Handle, T> work);

    /** Runs the work in one transaction that is on the disk when this returns; writers take turns. */
    <T> T write(Function<Handle, T> work);

    /** Those that are part of a transaction that goes on: what one ledger asks of another is done with it or not at all. */
    static Transactions within(Handle transaction) {
        return new Transactions() {
            @Override
            public <T> T read(Function<Handle, T> work) {
                return work.apply(transaction);
            }

            @Override
            public <T> T write(Function<Handle, T> work) {
                return work.apply(transaction);
            }
        };
    }
}
