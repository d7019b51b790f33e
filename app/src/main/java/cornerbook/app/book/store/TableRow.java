package cornerbook.app.book.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** One row to be written: column by column, so that no value can slip to a neighbour's place. */
public final class TableRow {
    private final String table;
    private final List<String> columns = new ArrayList<>();
    private final List<@Nullable Object> values = new ArrayList<>();

    public TableRow(String table) {
        this.table = table;
    }

    /** A number, text or content as it is, a flag as 0 or 1, a constant by its name, a date as ISO text. */
    public TableRow set(String column, @Nullable Object value) {
        columns.add(column);
        values.add(
                switch (value) {
                    case null -> null;
                    case Boolean flag -> flag ? 1 : 0;
                    case Enum<?> constant -> constant.name();
                    case Number number -> number;
                    case byte[] content -> content;
                    default -> value.toString();
                });
        return this;
    }

    /** Changes the row whose key this one has. */
    public void update(Handle handle, List<String> key) {
        var changed = new ArrayList<@Nullable Object>();
        var keyValues = new ArrayList<@Nullable Object>();
        for (int i = 0; i < columns.size(); i++) {
            (key.contains(columns.get(i)) ? keyValues : changed).add(values.get(i));
        }
        changed.addAll(keyValues);
        handle.execute(
                "update %s set %s where %s"
                        .formatted(
                                table,
                                columns.stream()
                                        .filter(column -> !key.contains(column))
                                        .map(column -> column + " = ?")
                                        .collect(Collectors.joining(", ")),
                                columns.stream()
                                        .filter(key::contains)
                                        .map(column -> column + " = ?")
                                        .collect(Collectors.joining(" and "))),
                changed.toArray());
    }

    public void insert(Handle handle) {
        handle.execute(insertion(), values.toArray());
    }

    /** Inserts the row by a statement that others like it have as well. */
    public void insert(KeptStatements statements) {
        statements.execute(insertion(), values.toArray());
    }

    /** Inserts the row unless one of its id is there already; gives whether it was not. */
    public boolean insertOnce(Handle handle) {
        return handle.execute(insertion() + " on conflict (id) do nothing", values.toArray()) > 0;
    }

    /** How many rows there are of a table, or of a part of it: the next one's place in a list that only grows. */
    public static int count(Handle handle, String of, Object... facts) {
        return handle.select("select count(*) from " + of, facts)
                .mapTo(Integer.class)
                .one();
    }

    private String insertion() {
        return "insert into %s (%s) values (%s)"
                .formatted(
                        table, String.join(", ", columns), String.join(", ", Collections.nCopies(columns.size(), "?")));
    }
}
