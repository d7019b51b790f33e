package cornerbook.app.parquet;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes a flat table as an Apache Parquet file, row group after row group, so that a table of any length passes through the memory
 * of one group. What the file holds stands at its end: without {@link #finish} it is no Parquet file, and no reader takes it for one.
 *
 * <p>Source: Apache Parquet format 2.11, README.md (layout of a file) and parquet.thrift (its structs; their field numbers stand in
 * the code). Pages are data pages of version 1, packed by gzip, which every reader knows.
 */
public final class ParquetWriter {
    static final int ROWS_OF_GROUP = 1 << 16;

    private static final byte[] MARK = "PAR1".getBytes(US_ASCII);
    private static final String WRITTEN_BY = "cornerbook version 0.1.0";
    private static final int OPTIONAL = 1;
    private static final int GZIP = 2;

    private final OutputStream out;
    private final List<ParquetColumn> columns;
    private final List<ColumnPages> open;
    private final List<Group> groups = new ArrayList<>();
    private long written;
    private long rows;
    private int rowsOfGroup;

    /** Begins the file; whoever opened the stream closes it. */
    public ParquetWriter(OutputStream out, List<ParquetColumn> columns) throws IOException {
        this.out = out;
        this.columns = List.copyOf(columns);
        this.open = columns.stream()
                .map(column -> new ColumnPages(column, ROWS_OF_GROUP))
                .toList();
        write(MARK);
    }

    /** Where the pages of a column stand. */
    private record Chunk(ParquetColumn column, long begin, ColumnPages.Extent extent) {}

    private record Group(List<Chunk> chunks, int rows) {
        long unpackedBytes() {
            return chunks.stream()
                    .mapToLong(chunk -> chunk.extent().unpackedBytes())
                    .sum();
        }
    }

    /**
     * Adds a row.
     *
     * @param row a value for each column, of its kind; null where it is missing
     */
    public void add(@Nullable Object[] row) throws IOException {
        if (row.length != columns.size()) {
            throw new IllegalArgumentException(
                    "row of %s values, expected %s, one for each column".formatted(row.length, columns.size()));
        }
        for (int i = 0; i < row.length; i++) {
            open.get(i).add(row[i]);
        }
        rows++;
        rowsOfGroup++;
        if (rowsOfGroup == ROWS_OF_GROUP) {
            endGroup();
        }
    }

    /** Writes what is left, and what the file holds. */
    public void finish() throws IOException {
        if (rowsOfGroup > 0) {
            endGroup();
        }
        var footer = CompactStruct.of(this::describe);
        write(footer);
        write(ByteBuffer.allocate(Integer.BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(footer.length)
                .array());
        write(MARK);
        out.flush();
    }

    private void endGroup() throws IOException {
        var chunks = new ArrayList<Chunk>();
        for (int i = 0; i < columns.size(); i++) {
            var pages = open.get(i).take();
            chunks.add(new Chunk(columns.get(i), written, pages.extent()));
            write(pages.bytes());
        }
        groups.add(new Group(List.copyOf(chunks), rowsOfGroup));
        rowsOfGroup = 0;
    }

    private void write(byte[] bytes) throws IOException {
        out.write(bytes);
        written += bytes.length;
    }

    /** FileMetaData. */
    private void describe(CompactStruct file) {
        var schema = new ArrayList<@Nullable ParquetColumn>();
        schema.add(null);
        schema.addAll(columns);
        file.int32(1, 1)
                .structs(2, schema, (element, column) -> {
                    if (column == null) {
                        element.text(4, "schema").int32(5, columns.size());
                    } else {
                        describe(element, column);
                    }
                })
                .int64(3, rows)
                .structs(4, groups, ParquetWriter::describe)
                .text(6, WRITTEN_BY);
    }

    /** SchemaElement, with the converted type beside the logical one for older readers. */
    private static void describe(CompactStruct element, ParquetColumn column) {
        element.int32(1, column.kind().physical()).int32(3, OPTIONAL).text(4, column.name());
        switch (column.kind()) {
            case TEXT -> element.int32(6, 0).struct(10, logical -> logical.struct(1, text -> {}));
            case DAY -> element.int32(6, 6).struct(10, logical -> logical.struct(6, day -> {}));
            case MOMENT ->
                element.int32(6, 10)
                        .struct(
                                10,
                                logical -> logical.struct(
                                        8,
                                        moment -> moment.flag(1, true)
                                                .struct(2, unit -> unit.struct(2, microseconds -> {}))));
            case NUMBER, WHOLE, FLAG -> {}
        }
    }

    /** RowGroup. */
    private static void describe(CompactStruct struct, Group group) {
        struct.structs(
                        1,
                        group.chunks(),
                        (column, chunk) -> column.int64(2, chunk.begin()).struct(3, of -> describe(of, chunk)))
                .int64(2, group.unpackedBytes())
                .int64(3, group.rows());
    }

    /** ColumnMetaData. */
    private static void describe(CompactStruct struct, Chunk chunk) {
        var extent = chunk.extent();
        boolean named = extent.dictionaryBytes() > 0;
        struct.int32(1, chunk.column().kind().physical())
                .int32s(
                        2,
                        named
                                ? List.of(ColumnPages.PLAIN, ColumnPages.RLE, ColumnPages.RLE_DICTIONARY)
                                : List.of(ColumnPages.PLAIN, ColumnPages.RLE))
                .texts(3, List.of(chunk.column().name()))
                .int32(4, GZIP)
                .int64(5, extent.rows())
                .int64(6, extent.unpackedBytes())
                .int64(7, extent.size())
                .int64(9, chunk.begin() + extent.dictionaryBytes());
        if (named) {
            struct.int64(11, chunk.begin());
        }
    }
}
