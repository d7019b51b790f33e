package cornerbook.app.desk.out;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The part of a file that a browser asks for when it goes on with what was cut.
 *
 * <p>Source: RFC 9110, section 14.1.2, byte ranges: one range; of several ranges, and of what is no range, the whole file is sent,
 * as section 14.2 allows.
 *
 * @param first counted from 0
 * @param last counted in, at most the file's last byte
 */
record ByteRange(long first, long last) {
    private static final Pattern ONE = Pattern.compile("bytes=(\\d{0,18})-(\\d{0,18})");

    /** What a header asks of a file; empty for the whole of it. Nothing of the file is in a range that begins behind its end. */
    static Optional<ByteRange> of(String header, long size) {
        var asked = ONE.matcher(header.strip());
        if (!asked.matches() || (asked.group(1).isEmpty() && asked.group(2).isEmpty())) {
            return Optional.empty();
        }
        if (asked.group(1).isEmpty()) {
            long bytes = Long.parseLong(asked.group(2));
            return Optional.of(new ByteRange(bytes == 0 ? size : Math.max(size - bytes, 0), size - 1));
        }
        long first = Long.parseLong(asked.group(1));
        long last = asked.group(2).isEmpty() ? size - 1 : Long.parseLong(asked.group(2));
        return last < first && !asked.group(2).isEmpty()
                ? Optional.empty()
                : Optional.of(new ByteRange(first, Math.min(last, size - 1)));
    }

    boolean isIn(long size) {
        return first < size;
    }

    long length() {
        return last - first + 1;
    }
}
