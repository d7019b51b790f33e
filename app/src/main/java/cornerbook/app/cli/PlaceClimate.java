package cornerbook.app.cli;

import cornerbook.app.cli.print.Terminal;
import cornerbook.app.exchange.ClimateFile;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Keeps the climate of the shop's place in the book, or prints it. */
@CommandLine.Command(name = "climate", description = "verb-climate")
final class PlaceClimate implements Runnable {
    private final Terminal terminal;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", arity = "0..1", descriptionKey = "param-climate")
    private @Nullable Path file;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    PlaceClimate(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        var named = file;
        if (named == null) {
            try (var book = folder.openExisting()) {
                var climate = book.climate()
                        .find()
                        .orElseThrow(() -> new CommandFailure(CommandFailure.BOOK, CliSaid.Plainly.NO_CLIMATE));
                terminal.out().print(ClimateFile.write(climate));
            }
            return;
        }
        var climate = ClimateOption.read(named);
        try (var book = folder.open()) {
            book.climate().put(climate);
        }
        terminal.say(new CliSaid.KeptClimate(climate.place()));
    }
}
