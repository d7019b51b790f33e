package cornerbook.app.book.backup;

import static java.nio.charset.StandardCharsets.US_ASCII;

import cornerbook.app.book.store.BookException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * The last line of a backup: the SHA-256 of all that stands before it. SQLite reads as many pages as the head of its file
 * counts, and leaves what follows (its file format, section 1.3.7), so that a sealed backup is still a database for any program.
 */
final class BackupSeal {
    private static final String LEAD = "\nbackup of Cornerbook, SHA-256 of all before this line: ";
    private static final int LENGTH = LEAD.length() + 64 + 1;
    /** Every page of SQLite is a multiple of it; the seal is not. */
    private static final int SMALLEST_PAGE = 512;

    private BackupSeal() {}

    /** Seals a copy that is whole. */
    static void put(Path copy) throws IOException {
        byte[] line;
        try (var in = Files.newInputStream(copy);
                var nowhere = OutputStream.nullOutputStream()) {
            line = line(in, Files.size(copy), nowhere);
        }
        Files.write(copy, line, StandardOpenOption.APPEND);
    }

    /**
     * Copies a backup without its seal into a file that is there.
     *
     * @return whether it bears a seal, as all do but those of older programs
     * @throws BookException when it is not what was sealed
     */
    static boolean copyWithout(Path backup, Path copy) throws IOException {
        long size = Files.size(backup);
        boolean older = size % SMALLEST_PAGE == 0;
        if (!older && size < LENGTH) {
            throw damaged(backup);
        }
        try (var in = Files.newInputStream(backup);
                var out = Files.newOutputStream(copy)) {
            if (older) {
                in.transferTo(out);
            } else if (!Arrays.equals(line(in, size - LENGTH, out), in.readNBytes(LENGTH))) {
                throw damaged(backup);
            }
        }
        return !older;
    }

    /** The seal of the next so many bytes, which go out. */
    private static byte[] line(InputStream in, long length, OutputStream out) throws IOException {
        var digest = sha256();
        var counted = new DigestInputStream(in, digest);
        var buffer = new byte[1 << 16];
        for (long left = length; left > 0; ) {
            int read = counted.read(buffer, 0, (int) Math.min(left, buffer.length));
            if (read < 0) {
                throw new IOException("the file became shorter while it was read");
            }
            out.write(buffer, 0, read);
            left -= read;
        }
        return (LEAD + HexFormat.of().formatHex(digest.digest()) + "\n").getBytes(US_ASCII);
    }

    private static BookException damaged(Path backup) {
        return BookException.ofBackup(new BackupSaid.SealBroken(backup.toString()), null);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("the JDK lacks SHA-256", e);
        }
    }
}
