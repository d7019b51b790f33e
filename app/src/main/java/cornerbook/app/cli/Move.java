package cornerbook.app.cli;

import cornerbook.app.book.store.ServerAddress;
import cornerbook.app.cli.print.Terminal;
import java.util.logging.Logger;
import picocli.CommandLine;

/** Takes the whole book to another place. */
@CommandLine.Command(name = "move", description = "verb-move")
final class Move implements Runnable {
    private static final Logger LOG = Logger.getLogger(Move.class.getName());

    private final Terminal terminal;

    @CommandLine.Option(
            names = "--to",
            required = true,
            paramLabel = "${bundle:label-folder}",
            descriptionKey = "option-move-to")
    private String to = "";

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    Move(Terminal terminal) {
        this.terminal = terminal;
    }

    /** As the one process that serves it: what somebody enters meanwhile would stay behind. */
    @Override
    public void run() {
        if (!folder.isThere()) {
            throw new CommandFailure(CommandFailure.BOOK, new CliSaid.NoBook(folder.shown()));
        }
        try (var book = folder.openToServe()) {
            var moved = book.move(to);
            LOG.info("The book was moved");
            var counts = moved.counts();
            terminal.say(new CliSaid.Moved(
                    ServerAddress.hideIn(to),
                    folder.shown(),
                    counts.cars(),
                    counts.visits(),
                    counts.readings(),
                    counts.photos(),
                    moved.rows()));
        }
    }
}
