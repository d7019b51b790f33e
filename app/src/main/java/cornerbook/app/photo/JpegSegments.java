package cornerbook.app.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The segments of a JPEG file up to its first scan, by ITU-T T.81, annex B. */
final class JpegSegments {
    private static final int START_OF_IMAGE = 0xffd8;
    private static final int END_OF_IMAGE = 0xffd9;
    private static final int START_OF_SCAN = 0xffda;
    private static final int COMMENT = 0xfffe;
    /** Application segments 1 to 15: Exif has its block in 1 (CIPA DC-008, 4.7.2). That of JFIF is 0. */
    private static final int FIRST_APPLICATION = 0xffe1;

    private static final int LAST_APPLICATION = 0xffef;

    private JpegSegments() {}

    /** Whether the file is a JPEG by its first marker. */
    static boolean isJpeg(byte[] content) {
        return content.length > 2 && ByteBuffer.wrap(content).getChar() == START_OF_IMAGE;
    }

    /** Whether its end is there: between a scan's data a marker of the end cannot stand by chance (B.1.1.5). */
    static boolean isWhole(byte[] content) {
        int scan = walk(content, START_OF_SCAN, START_OF_SCAN);
        for (int at = scan; scan >= 0 && at < content.length - 1; at++) {
            if (ByteBuffer.wrap(content).getChar(at) == END_OF_IMAGE) {
                return true;
            }
        }
        return false;
    }

    /** Whether a camera or a program left something beside the picture. */
    static boolean hasMore(byte[] content) {
        return walk(content, FIRST_APPLICATION, LAST_APPLICATION) >= 0 || walk(content, COMMENT, COMMENT) >= 0;
    }

    /** Where the first segment of such a marker begins, -1 when there is none before the first scan ends it. */
    private static int walk(byte[] content, int first, int last) {
        var bytes = ByteBuffer.wrap(content).order(ByteOrder.BIG_ENDIAN);
        int at = 2;
        while (at + 4 <= content.length) {
            int marker = bytes.getChar(at);
            if (marker >= first && marker <= last) {
                return at;
            }
            if (marker == START_OF_SCAN || marker < 0xff00) {
                return -1;
            }
            at += 2 + bytes.getChar(at + 2);
        }
        return -1;
    }
}
