package cornerbook.app.photo;

import java.nio.ByteBuffer;
import java.util.Set;

/** The segments of a JPEG file, by ITU-T T.81, annex B. */
final class JpegSegments {
    private static final int START_OF_IMAGE = 0xffd8;
    private static final int END_OF_IMAGE = 0xffd9;
    private static final int START_OF_SCAN = 0xffda;
    private static final int FIRST_RESTART = 0xffd0;
    private static final int LAST_RESTART = 0xffd7;
    /** Of JFIF, which is only the picture's form: its name, version and density, and no small picture (ITU-T T.871, 10.1). */
    private static final int JFIF = 0xffe0;

    private static final int JFIF_LENGTH = 16;

    /** What a decoder needs: frames with Huffman coding, tables and the interval of restarts (ITU-T T.81, table B.1). */
    private static final Set<Integer> OF_THE_PICTURE =
            Set.of(0xffc0, 0xffc1, 0xffc2, 0xffc4, 0xffdb, 0xffdd, START_OF_SCAN);

    private JpegSegments() {}

    /** Whether the file is a JPEG by its first marker. */
    static boolean isJpeg(byte[] content) {
        return content.length > 2 && ByteBuffer.wrap(content).getChar() == START_OF_IMAGE;
    }

    /** Whether its end is there: between a scan's data a marker of the end cannot stand by chance (B.1.1.5). */
    static boolean isWhole(byte[] content) {
        int scan = findScan(content);
        for (int at = scan; scan >= 0 && at < content.length - 1; at++) {
            if (ByteBuffer.wrap(content).getChar(at) == END_OF_IMAGE) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether a camera or a program left something beside the picture: between its segments, in one that no decoder needs,
     * in one that reaches over the file's end, or behind the picture's end.
     */
    static boolean hasMore(byte[] content) {
        var bytes = ByteBuffer.wrap(content);
        int at = 2;
        while (at + 4 <= content.length) {
            int marker = bytes.getChar(at);
            int length = bytes.getChar(at + 2);
            if (marker == END_OF_IMAGE || !(OF_THE_PICTURE.contains(marker) || isJfif(marker, length))) {
                return true;
            }
            at += 2 + length;
            if (marker == START_OF_SCAN) {
                at = endOfScan(bytes, at);
            }
        }
        return at > content.length || (at + 2 < content.length && bytes.getChar(at) == END_OF_IMAGE);
    }

    private static boolean isJfif(int marker, int length) {
        return marker == JFIF && length == JFIF_LENGTH;
    }

    /** Where the next marker stands that is none of a restart (B.1.1.3, B.1.1.5). */
    private static int endOfScan(ByteBuffer bytes, int from) {
        int at = from;
        while (at + 2 <= bytes.capacity()) {
            int marker = bytes.getChar(at);
            if (marker > 0xff00 && !(marker >= FIRST_RESTART && marker <= LAST_RESTART)) {
                return at;
            }
            at++;
        }
        return at;
    }

    /** Where the first scan begins, -1 when there is none. */
    private static int findScan(byte[] content) {
        var bytes = ByteBuffer.wrap(content);
        int at = 2;
        while (at + 4 <= content.length) {
            int marker = bytes.getChar(at);
            if (marker == START_OF_SCAN || marker < 0xff00) {
                return marker == START_OF_SCAN ? at : -1;
            }
            at += 2 + bytes.getChar(at + 2);
        }
        return -1;
    }
}
