package cornerbook.app.exchange.table;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.parquet.ParquetColumn;
import cornerbook.app.text.CsvLine;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Comma-separated values (RFC 4180): days and moments by ISO 8601, a point before decimals, nothing where a value is missing. */
final class CsvRows implements TableWriter {
    private final Writer out;

    CsvRows(OutputStream out, List<ParquetColumn> columns) throws IOException {
        this.out = new OutputStreamWriter(out, UTF_8);
        write(columns.stream().map(ParquetColumn::name));
    }

    @Override
    public void add(@Nullable Object[] row) throws IOException {
        write(Stream.of(row).map(value -> value == null ? "" : value.toString()));
    }

    @Override
    public void finish() throws IOException {
        out.flush();
    }

    private void write(Stream<String> cells) throws IOException {
        out.write(CsvLine.of(cells.toList()));
    }
}
