package cornerbook.app.parquet;

import java.io.ByteArrayOutputStream;

/** Whole numbers without a sign in as few bytes as they need, seven bits in each, the lowest first (ULEB128). */
final class Varint {
    private Varint() {}

    static void write(ByteArrayOutputStream out, long value) {
        long left = value;
        while ((left & ~0x7FL) != 0) {
            out.write((int) (left & 0x7F) | 0x80);
            left >>>= 7;
        }
        out.write((int) left);
    }
}
