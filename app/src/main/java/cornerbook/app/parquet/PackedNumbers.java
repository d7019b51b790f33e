package cornerbook.app.parquet;

import java.io.ByteArrayOutputStream;

/**
 * Small whole numbers side by side, each in the same count of bits, as one bit-packed run of the hybrid of run lengths and packed
 * bits.
 *
 * <p>Source: Apache Parquet, Encodings.md, "Run Length Encoding / Bit-Packing Hybrid (RLE = 3)".
 */
final class PackedNumbers {
    private static final int GROUP = 8;

    private final int bits;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private long waiting;
    private int waitingBits;

    private PackedNumbers(int bits) {
        this.bits = bits;
    }

    /** How the number at a place is found. */
    interface Numbers {
        int at(int place);
    }

    /** Bits that hold each number from 0 to the highest; 0 where that is 0. */
    static int bitsFor(int highest) {
        return Integer.SIZE - Integer.numberOfLeadingZeros(highest);
    }

    /** A run of that many numbers, filled up with 0 to whole groups of eight. */
    static byte[] run(int bits, int count, Numbers numbers) {
        var packed = new PackedNumbers(bits);
        int groups = (count + GROUP - 1) / GROUP;
        Varint.write(packed.out, ((long) groups << 1) | 1);
        for (int place = 0; place < groups * GROUP; place++) {
            packed.add(place < count ? numbers.at(place) : 0);
        }
        return packed.out.toByteArray();
    }

    private void add(int number) {
        waiting |= (long) number << waitingBits;
        waitingBits += bits;
        while (waitingBits >= Byte.SIZE) {
            out.write((int) (waiting & 0xFF));
            waiting >>>= Byte.SIZE;
            waitingBits -= Byte.SIZE;
        }
    }
}
