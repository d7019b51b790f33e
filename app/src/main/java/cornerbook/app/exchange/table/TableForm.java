package cornerbook.app.exchange.table;

import cornerbook.app.parquet.ParquetColumn;
import cornerbook.app.parquet.ParquetWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How the tables are written. */
public enum TableForm {
    /** Apache Parquet. */
    PARQUET(".parquet"),
    /** Comma-separated values (RFC 4180) in UTF-8, names of columns first. */
    CSV(".csv");

    private final String ending;

    TableForm(String ending) {
        this.ending = ending;
    }

    String ending() {
        return ending;
    }

    TableWriter begin(OutputStream out, List<ParquetColumn> columns) throws IOException {
        return switch (this) {
            case PARQUET -> {
                var parquet = new ParquetWriter(out, columns);
                yield new TableWriter() {
                    @Override
                    public void add(@Nullable Object[] row) throws IOException {
                        parquet.add(row);
                    }

                    @Override
                    public void finish() throws IOException {
                        parquet.finish();
                    }
                };
            }
            case CSV -> new CsvRows(out, columns);
        };
    }
}
