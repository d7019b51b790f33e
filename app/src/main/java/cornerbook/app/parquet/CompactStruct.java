package cornerbook.app.parquet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * One struct in the compact protocol of Apache Thrift, in which a Parquet file says what it holds. Fields are put in the order of
 * their numbers.
 *
 * <p>Source: Apache Thrift, "Thrift Compact protocol encoding" (doc/specs/thrift-compact-protocol.md).
 */
final class CompactStruct {
    private static final int TRUE = 1;
    private static final int FALSE = 2;
    private static final int INT32 = 5;
    private static final int INT64 = 6;
    private static final int BINARY = 8;
    private static final int LIST = 9;
    private static final int STRUCT = 12;

    /** Lists up to here have their size beside the kind of what they hold. */
    private static final int SHORT_LIST = 14;

    private final ByteArrayOutputStream out;
    private int last;

    private CompactStruct(ByteArrayOutputStream out) {
        this.out = out;
    }

    /** A struct of these fields. */
    static byte[] of(Consumer<CompactStruct> fields) {
        var out = new ByteArrayOutputStream();
        write(out, fields);
        return out.toByteArray();
    }

    private static void write(ByteArrayOutputStream out, Consumer<CompactStruct> fields) {
        fields.accept(new CompactStruct(out));
        out.write(0);
    }

    CompactStruct flag(int field, boolean value) {
        begin(field, value ? TRUE : FALSE);
        return this;
    }

    CompactStruct int32(int field, int value) {
        begin(field, INT32);
        zigzag(value);
        return this;
    }

    CompactStruct int64(int field, long value) {
        begin(field, INT64);
        zigzag(value);
        return this;
    }

    CompactStruct text(int field, String value) {
        begin(field, BINARY);
        text(value);
        return this;
    }

    CompactStruct struct(int field, Consumer<CompactStruct> fields) {
        begin(field, STRUCT);
        write(out, fields);
        return this;
    }

    CompactStruct int32s(int field, List<Integer> values) {
        beginList(field, INT32, values.size());
        values.forEach(this::zigzag);
        return this;
    }

    CompactStruct texts(int field, List<String> values) {
        beginList(field, BINARY, values.size());
        values.forEach(this::text);
        return this;
    }

    <T> CompactStruct structs(int field, List<T> values, BiConsumer<CompactStruct, T> fields) {
        beginList(field, STRUCT, values.size());
        values.forEach(value -> write(out, struct -> fields.accept(struct, value)));
        return this;
    }

    /** The number of a field is told by its distance from the one before. */
    private void begin(int field, int kind) {
        out.write(((field - last) << 4) | kind);
        last = field;
    }

    private void beginList(int field, int kind, int size) {
        begin(field, LIST);
        if (size <= SHORT_LIST) {
            out.write((size << 4) | kind);
        } else {
            out.write(0xF0 | kind);
            Varint.write(out, size);
        }
    }

    /** Small numbers of either sign become small ones without. */
    private void zigzag(long value) {
        Varint.write(out, (value << 1) ^ (value >> (Long.SIZE - 1)));
    }

    private void text(String value) {
        var bytes = value.getBytes(UTF_8);
        Varint.write(out, bytes.length);
        out.writeBytes(bytes);
    }
}
