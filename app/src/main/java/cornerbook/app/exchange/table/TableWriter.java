package cornerbook.app.exchange.table;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Writes a table row after row. */
interface TableWriter {
    void add(@Nullable Object[] row) throws IOException;

    /** Writes what is left: only then the file is whole. */
    void finish() throws IOException;
}
