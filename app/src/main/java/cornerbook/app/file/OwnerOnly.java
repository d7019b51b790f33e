package cornerbook.app.file;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;

/** Files and folders that only their owner may read. */
public final class OwnerOnly {
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");

    private OwnerOnly() {}

    /** Makes an empty file. */
    public static void createFile(Path file) throws IOException {
        Files.createFile(file, rights(file, FILE));
    }

    /** Opens a file to write behind its end; makes it when it is not there. */
    public static SeekableByteChannel openToAppend(Path file) throws IOException {
        return Files.newByteChannel(
                file, Set.of(StandardOpenOption.CREATE, StandardOpenOption.APPEND), rights(file, FILE));
    }

    /** Makes a folder, with those that lead to it, unless it is there; one that is there stays as its owner has set it. */
    public static void createFolders(Path folder) throws IOException {
        Files.createDirectories(folder, rights(folder, FOLDER));
    }

    /**
     * Takes from others what they may do with a file that is there. A file of somebody else, and one on a file system without
     * such rights, stays as it is.
     */
    public static void tighten(Path file) {
        try {
            var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
            if (view == null) {
                return;
            }
            var rights = view.readAttributes().permissions();
            var own = EnumSet.copyOf(FOLDER);
            own.retainAll(rights);
            if (!own.equals(rights)) {
                view.setPermissions(own);
            }
        } catch (IOException e) {
            // Not ours to change; whoever could read it reads it still, and nothing is worse than before.
        }
    }

    private static FileAttribute<?>[] rights(Path path, Set<PosixFilePermission> rights) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(rights)}
                : new FileAttribute<?>[0];
    }
}
