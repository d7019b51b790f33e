package cornerbook.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
final class TargetFile {
    private TargetFile() {}

    /** Refuses a file that is there already, unless it is forced, and one whose folder is not there. */
    static void refuse(Path target, boolean force) {
        if (Files.isDirectory(target)) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.IsFolder(target.toString()));
        }
        if (!force && Files.exists(target)) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.IsThere(target.toString()));
        }
        if (!Files.isDirectory(folder(target))) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    new CliSaid.NoFolder(folder(target).toString()));
        }
    }

    /** Refuses a folder that holds something already, and one whose own folder is not there. */
    static void refuseFolder(Path target) {
        if (Files.exists(target) && !isEmptyFolder(target)) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.FolderIsThere(target.toString()));
        }
        if (!Files.isDirectory(folder(target))) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    new CliSaid.NoFolder(folder(target).toString()));
        }
    }

    private static boolean isEmptyFolder(Path target) {
        if (!Files.isDirectory(target)) {
            return false;
        }
        try (var files = Files.list(target)) {
            return files.findAny().isEmpty();
        } catch (IOException e) {
            return false;
        }
    }

    /** Writes beside the target first, then moves it into place in one step. */
    static void write(Path target, byte[] content, boolean force) {
        refuse(target, force);
        try {
            var beside = Files.createTempFile(folder(target), ".cornerbook", ".part");
            try {
                Files.write(beside, content);
                Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.CannotBeWritten(target.toString()));
        }
    }

    private static Path folder(Path target) {
        var parent = target.toAbsolutePath().getParent();
        return parent == null ? target.toAbsolutePath() : parent;
    }
}
