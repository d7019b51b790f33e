package cornerbook.app.parquet;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.parquet.ParquetColumn.Kind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * The values of one column in one row group, and the pages that they become: texts that come again are written once, in a
 * dictionary page before the data page.
 *
 * <p>Source: Apache Parquet, Encodings.md and parquet.thrift ({@code PageHeader}).
 */
final class ColumnPages {
    static final int PLAIN = 0;
    static final int RLE = 3;
    static final int RLE_DICTIONARY = 8;

    private static final int DATA_PAGE = 0;
    private static final int DICTIONARY_PAGE = 2;

    private final ParquetColumn column;
    private final long[] values;
    private final boolean[] present;
    private final Map<String, Integer> placeOf = new HashMap<>();
    private final List<String> texts = new ArrayList<>();
    private int rows;
    private int valueCount;

    ColumnPages(ParquetColumn column, int mostRows) {
        this.column = column;
        this.values = new long[mostRows];
        this.present = new boolean[mostRows];
    }

    /** What is written of a column. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Pages(byte[] bytes, Extent extent) {}

    /**
     * How much there is of a column.
     *
     * @param size bytes of all pages with their headers
     * @param dictionaryBytes of the dictionary page with its header; 0 where there is none
     * @param unpackedBytes of all pages with their headers before they were packed
     * @param rows with a value and without
     */
    record Extent(int size, int dictionaryBytes, long unpackedBytes, int rows) {}

    /** The value of the next row; null where it is missing. */
    void add(@Nullable Object value) {
        if (value != null) {
            values[valueCount++] = kept(value);
            present[rows] = true;
        } else {
            present[rows] = false;
        }
        rows++;
    }

    private long kept(Object value) {
        return switch (column.kind()) {
            case TEXT -> placeOf((String) value);
            case NUMBER -> Double.doubleToRawLongBits((Double) value);
            case WHOLE -> (Integer) value;
            case FLAG -> (Boolean) value ? 1 : 0;
            case DAY -> ((LocalDate) value).toEpochDay();
            case MOMENT -> ChronoUnit.MICROS.between(Instant.EPOCH, (Instant) value);
        };
    }

    private int placeOf(String text) {
        return placeOf.computeIfAbsent(text, added -> {
            texts.add(added);
            return texts.size() - 1;
        });
    }

    /** The pages of what was added; the next row group begins. */
    Pages take() throws IOException {
        var bytes = new ByteArrayOutputStream();
        // Where nearly every text is another one, places in a dictionary would come on top of the texts.
        boolean named = column.kind() == Kind.TEXT && 2 * texts.size() <= valueCount;
        long unpacked = 0;
        int dictionaryBytes = 0;
        if (named) {
            var plain = new ByteArrayOutputStream();
            texts.forEach(text -> writeText(plain, text));
            unpacked += writePage(
                    bytes,
                    DICTIONARY_PAGE,
                    plain.toByteArray(),
                    header -> header.struct(7, of -> of.int32(1, texts.size()).int32(2, PLAIN)));
            dictionaryBytes = bytes.size();
        }
        var content = new ByteArrayOutputStream();
        writePresence(content);
        content.writeBytes(named ? places() : plain());
        int all = rows;
        unpacked += writePage(
                bytes,
                DATA_PAGE,
                content.toByteArray(),
                header -> header.struct(
                        5,
                        of -> of.int32(1, all)
                                .int32(2, named ? RLE_DICTIONARY : PLAIN)
                                .int32(3, RLE)
                                .int32(4, RLE)));
        placeOf.clear();
        texts.clear();
        rows = 0;
        valueCount = 0;
        return new Pages(bytes.toByteArray(), new Extent(bytes.size(), dictionaryBytes, unpacked, all));
    }

    /** Which rows have a value: a length, then a bit for each row. */
    private void writePresence(ByteArrayOutputStream content) {
        var run = PackedNumbers.run(1, rows, place -> present[place] ? 1 : 0);
        content.writeBytes(
                littleEndian(new byte[Integer.BYTES]).putInt(run.length).array());
        content.writeBytes(run);
    }

    private byte[] places() {
        int bits = PackedNumbers.bitsFor(Math.max(texts.size() - 1, 0));
        var run = PackedNumbers.run(bits, valueCount, place -> (int) values[place]);
        return littleEndian(new byte[1 + run.length]).put((byte) bits).put(run).array();
    }

    private byte[] plain() {
        return switch (column.kind()) {
            case TEXT -> {
                var out = new ByteArrayOutputStream();
                for (int i = 0; i < valueCount; i++) {
                    writeText(out, texts.get((int) values[i]));
                }
                yield out.toByteArray();
            }
            case NUMBER, MOMENT -> {
                var out = new byte[valueCount * Long.BYTES];
                var numbers = littleEndian(out);
                for (int i = 0; i < valueCount; i++) {
                    numbers.putLong(values[i]);
                }
                yield out;
            }
            case WHOLE, DAY -> {
                var out = new byte[valueCount * Integer.BYTES];
                var numbers = littleEndian(out);
                for (int i = 0; i < valueCount; i++) {
                    numbers.putInt((int) values[i]);
                }
                yield out;
            }
            case FLAG -> {
                var out = new byte[(valueCount + Byte.SIZE - 1) / Byte.SIZE];
                for (int i = 0; i < valueCount; i++) {
                    out[i / Byte.SIZE] |= (byte) (values[i] << (i % Byte.SIZE));
                }
                yield out;
            }
        };
    }

    private static void writeText(ByteArrayOutputStream out, String text) {
        var bytes = text.getBytes(UTF_8);
        out.writeBytes(
                littleEndian(new byte[Integer.BYTES]).putInt(bytes.length).array());
        out.writeBytes(bytes);
    }

    private static ByteBuffer littleEndian(byte[] into) {
        return ByteBuffer.wrap(into).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** What a kind of page says of itself beside its size. */
    private interface OwnHeader {
        void put(CompactStruct header);
    }

    /** Gives its bytes before they were packed, with its header. */
    private static long writePage(ByteArrayOutputStream out, int kind, byte[] content, OwnHeader own)
            throws IOException {
        var packed = new ByteArrayOutputStream();
        try (var gzip = new GZIPOutputStream(packed)) {
            gzip.write(content);
        }
        var header = CompactStruct.of(
                struct -> own.put(struct.int32(1, kind).int32(2, content.length).int32(3, packed.size())));
        out.writeBytes(header);
        packed.writeTo(out);
        return (long) header.length + content.length;
    }
}
