package cornerbook.app.exchange.table;

import cornerbook.app.book.out.CarRows;
import cornerbook.app.parquet.ParquetColumn;
import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One table of the book.
 *
 * @param name of its file, without the ending
 * @param columns in their order
 * @param rows that a car has in it
 */
record BookTable<R>(String name, List<TableColumn<R>> columns, Function<CarRows, Stream<R>> rows) {
    BookTable {
        columns = List.copyOf(columns);
    }

    /** Its columns as they are written. */
    List<ParquetColumn> columns(boolean withNames) {
        return wanted(withNames).stream().map(TableColumn::column).toList();
    }

    /** Writes the rows of a car. */
    void write(CarRows car, boolean withNames, TableWriter writer) throws IOException {
        var wanted = wanted(withNames);
        for (var row : (Iterable<R>) rows.apply(car)::iterator) {
            var values = new @Nullable Object[wanted.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = wanted.get(i).value().apply(row);
            }
            writer.add(values);
        }
    }

    private List<TableColumn<R>> wanted(boolean withNames) {
        return columns.stream().filter(each -> withNames || !each.personal()).toList();
    }
}
