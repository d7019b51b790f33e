package cornerbook.app.book.move;

import java.sql.DatabaseMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.MetaData;
import org.jspecify.annotations.Nullable;

/**
 * A table of the book.
 *
 * @param columns their names
 * @param own the pointer of a row to another one of the same table; null when there is none
 */
record Table(String name, List<String> columns, @Nullable Pointer own) {
    /** Made anew in each place: the list of migrations, and what lists, orders, calls, the search and learning take from the cars. */
    private static final Set<String> MADE_ANEW = Set.of(
            "flyway_schema_history", "judged_by", "car_verdict", "car_need", "car_due", "car_words", "car_share");

    /**
     * A foreign key.
     *
     * @param column the column that points
     * @param table the table that it points to
     * @param key the column there
     */
    record Pointer(String column, String table, String key) {}

    Table {
        columns = List.copyOf(columns);
    }

    /** All tables, each after those that it points to. */
    static List<Table> all(Handle handle) {
        return handle.queryMetadata((MetaData.MetaDataValueProvider<List<Table>>) Table::all);
    }

    private static List<Table> all(DatabaseMetaData metadata) throws SQLException {
        var schema = metadata.getConnection().getSchema();
        var tables = new TreeMap<String, Table>();
        var pointers = new TreeMap<String, Set<String>>();
        try (var found = metadata.getTables(null, schema, "%", new String[] {"TABLE"})) {
            while (found.next()) {
                var name = found.getString("TABLE_NAME");
                if (!MADE_ANEW.contains(name)) {
                    pointers.put(name, new HashSet<>());
                }
            }
        }
        for (var each : pointers.entrySet()) {
            var name = each.getKey();
            Pointer own = null;
            for (var pointer : pointers(metadata, schema, name)) {
                if (pointer.table().equals(name)) {
                    own = pointer;
                } else {
                    each.getValue().add(pointer.table());
                }
            }
            tables.put(name, new Table(name, columns(metadata, schema, name), own));
        }
        return inTurn(tables, pointers);
    }

    private static List<Pointer> pointers(DatabaseMetaData metadata, @Nullable String schema, String table)
            throws SQLException {
        var pointers = new ArrayList<Pointer>();
        try (var found = metadata.getImportedKeys(null, schema, table)) {
            while (found.next()) {
                pointers.add(new Pointer(
                        found.getString("FKCOLUMN_NAME"),
                        found.getString("PKTABLE_NAME"),
                        found.getString("PKCOLUMN_NAME")));
            }
        }
        return pointers;
    }

    private static List<String> columns(DatabaseMetaData metadata, @Nullable String schema, String table)
            throws SQLException {
        var columns = new ArrayList<String>();
        try (var found = metadata.getColumns(null, schema, table, "%")) {
            while (found.next()) {
                columns.add(found.getString("COLUMN_NAME"));
            }
        }
        columns.sort(null);
        return columns;
    }

    private static List<Table> inTurn(Map<String, Table> tables, Map<String, Set<String>> pointers) {
        var done = new LinkedHashMap<String, Table>();
        while (done.size() < tables.size()) {
            int before = done.size();
            tables.forEach((name, table) -> {
                if (done.keySet().containsAll(pointers.getOrDefault(name, Set.of()))) {
                    done.putIfAbsent(name, table);
                }
            });
            if (done.size() == before) {
                throw new IllegalStateException("tables that point to each other");
            }
        }
        return List.copyOf(done.values());
    }

    /** Its rows, each after the one of this table that it points to. */
    String rowsInTurn() {
        if (own == null) {
            return rows();
        }
        return """
                with recursive turn (id, place) as (
                  select %1$s, 0 from %2$s where %3$s is null
                  union all
                  select row_of.%1$s, turn.place + 1 from %2$s row_of join turn on row_of.%3$s = turn.id)
                select %4$s from turn join %2$s row_of on row_of.%1$s = turn.id order by turn.place
                """.formatted(own.key(), name, own.column(), listed("row_of."));
    }

    /** Its rows as they come. */
    String rows() {
        return "select " + listed("") + " from " + name;
    }

    String insertion() {
        return "insert into %s (%s) values (%s)"
                .formatted(name, listed(""), columns.stream().map(each -> "?").collect(Collectors.joining(", ")));
    }

    /** In quotation marks, as some are words of SQL. */
    private String listed(String before) {
        return columns.stream().map(each -> before + '"' + each + '"').collect(Collectors.joining(", "));
    }
}
