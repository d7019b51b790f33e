package cornerbook.app.book.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * The place of a file that is open. A file that was removed goes on to take what is written to it, and loses it when it is
 * closed: only its place tells.
 */
final class FilePlace {
    private final Path file;
    private final Object identity;

    FilePlace(Path file) throws IOException {
        this.file = file;
        this.identity = identity(file);
    }

    /** Whether the same file stands there still. While it is open, no other one can bear its identity. */
    boolean isKept() {
        try {
            return identity.equals(identity(file));
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether another file stands there. */
    boolean isTaken() {
        return Files.exists(file) && !isKept();
    }

    /** Device and number of the file; where a file system has none, when it was made. */
    private static Object identity(Path file) throws IOException {
        var attributes = Files.readAttributes(file, BasicFileAttributes.class);
        var key = attributes.fileKey();
        return key != null ? key : attributes.creationTime();
    }
}
