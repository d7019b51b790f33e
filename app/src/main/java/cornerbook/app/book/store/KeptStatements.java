package cornerbook.app.book.store;

import java.io.Serial;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/**
 * Statements that write many rows: each is prepared once and kept until the connection is given back. Whoever writes car after
 * car has the same ones for all of them. Values are text, numbers, content, or nothing.
 */
public final class KeptStatements {
    private final Handle handle;
    private final Map<String, PreparedStatement> bySql = new HashMap<>();

    /** Those of a transaction that goes on. */
    public KeptStatements(Handle handle) {
        this.handle = handle;
    }

    /** Runs a statement at once; gives how many rows it wrote. */
    public int execute(String sql, @Nullable Object... values) {
        try {
            return bound(sql, values).executeUpdate();
        } catch (SQLException e) {
            throw new NotWritten(e);
        }
    }

    /** Puts a row by, to be written with the others of its statement by {@link #write}. */
    public void add(String sql, @Nullable Object... values) {
        try {
            bound(sql, values).addBatch();
        } catch (SQLException e) {
            throw new NotWritten(e);
        }
    }

    /** Writes the rows that were put by; gives of each, in their order, how many there are more. */
    public int[] write(String sql) {
        try {
            return statement(sql).executeBatch();
        } catch (SQLException e) {
            throw new NotWritten(e);
        }
    }

    private PreparedStatement bound(String sql, @Nullable Object... values) throws SQLException {
        var statement = statement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        return statement;
    }

    private PreparedStatement statement(String sql) throws SQLException {
        var known = bySql.get(sql);
        if (known != null) {
            return known;
        }
        var prepared = handle.getConnection().prepareStatement(sql);
        handle.addCleanable(prepared::close);
        bySql.put(sql, prepared);
        return prepared;
    }

    /** The store tells what it means. */
    private static final class NotWritten extends JdbiException {
        @Serial
        private static final long serialVersionUID = 1;

        NotWritten(SQLException cause) {
            super("rows were not written", cause);
        }
    }
}
