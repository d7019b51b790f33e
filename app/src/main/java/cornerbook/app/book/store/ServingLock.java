package cornerbook.app.book.store;

import cornerbook.app.file.OwnerOnly;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * One process at a time serves the book of a folder: what it has learned, and whom it tells of changes, are its own. The
 * lock is the system's and ends with the process, however that ends; commands go on beside it.
 */
public final class ServingLock implements AutoCloseable {
    static final String NAME = "book.lock";

    private final FileChannel channel;

    private ServingLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock of a folder.
     *
     * @throws BookException when another process has it
     */
    public static ServingLock take(Path folder) {
        var file = folder.resolve(NAME);
        try {
            if (Files.notExists(file)) {
                OwnerOnly.createFile(file);
            }
            var channel = FileChannel.open(file, StandardOpenOption.WRITE);
            if (isTaken(channel)) {
                return new ServingLock(channel);
            }
            channel.close();
        } catch (IOException e) {
            throw BookFailure.ofFolder(folder, e);
        }
        throw new BookException(new StoreSaid.ServedAlready(folder.toString()));
    }

    private static boolean isTaken(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            // It is this very process that serves it.
            return false;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            // The lock ends with the process at the latest.
        }
    }
}
