package cornerbook.app.exchange.table;

import cornerbook.app.parquet.ParquetColumn;
import cornerbook.app.parquet.ParquetColumn.Kind;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A column of a table.
 *
 * @param personal whether it may tell who somebody is, so that it is left out unless it is asked for
 * @param value of a row, of the column's kind
 */
record TableColumn<R>(ParquetColumn column, boolean personal, Function<R, @Nullable Object> value) {
    static <R> TableColumn<R> of(String name, Kind kind, Function<R, @Nullable Object> value) {
        return new TableColumn<>(new ParquetColumn(name, kind), false, value);
    }

    static <R> TableColumn<R> personal(String name, Function<R, @Nullable Object> value) {
        return new TableColumn<>(new ParquetColumn(name, Kind.TEXT), true, value);
    }
}
