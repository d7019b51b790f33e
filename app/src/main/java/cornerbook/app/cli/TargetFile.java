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
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT, "%s is a folder, expected a file to write.".formatted(target));
        }
        if (!force && Files.exists(target)) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    "%s is there already, expected another name or --force.".formatted(target));
        }
        if (!Files.isDirectory(folder(target))) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    "There is no folder %s, expected one to write into.".formatted(folder(target)));
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
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, "%s cannot be written.".formatted(target));
        }
    }

    private static Path folder(Path target) {
        var parent = target.toAbsolutePath().getParent();
        return parent == null ? target.toAbsolutePath() : parent;
    }
}
