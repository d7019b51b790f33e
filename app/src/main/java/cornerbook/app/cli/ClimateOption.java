package cornerbook.app.cli;

import cornerbook.app.exchange.ClimateFile;
import cornerbook.core.say.Refused;
import cornerbook.core.season.Climate;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** The option that names a climate file. */
final class ClimateOption {
    @CommandLine.Option(names = "--climate", paramLabel = "${bundle:label-file}", descriptionKey = "option-climate")
    private @Nullable Path file;

    /** The climate; null when no file was named. */
    @Nullable
    Climate find() {
        var named = file;
        return named == null ? null : read(named);
    }

    static Climate read(Path file) {
        try {
            return ClimateFile.parse(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            throw new CommandFailure(
                    CommandFailure.INPUT_REFUSED, new CliSaid.OfFile(file.toString(), null, Refused.said(e)));
        } catch (IOException e) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.NoFile(file.toString()));
        }
    }
}
