package cornerbook.app.cli;

import cornerbook.app.book.Book;
import cornerbook.app.door.CornerbookServer;
import cornerbook.app.door.Door;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import picocli.CommandLine;

/** The options of the verbs that serve pages: where the book is, and the port. */
final class ServeOptions {
    static final int HIGHEST_PORT = 65_535;

    @CommandLine.Mixin
    private BookFolder folder;

    @CommandLine.Option(names = "--port", paramLabel = "${bundle:label-port}", descriptionKey = "option-port")
    private int port = 7411;

    @CommandLine.Mixin
    private DoorOptions door = new DoorOptions();

    /** With the folder that is meant when none is named. */
    ServeOptions(Path folder) {
        this.folder = new BookFolder(folder);
    }

    /** Where the book is, as it may be shown. */
    String place() {
        return folder.shown();
    }

    /** Whether the book is there, or is on a server, which may have it. */
    boolean isThere() {
        return folder.isThere();
    }

    /** Where the pages are served. */
    Door door() {
        return door.open(port, folder.certificates());
    }

    /**
     * Opens the book for this process alone to serve; makes it when it is not there.
     *
     * @throws CommandFailure when the port cannot be used; asked first, so that no new book is left behind in vain
     */
    Book open() {
        if (port < 0 || port > HIGHEST_PORT) {
            throw new CommandFailure(
                    CommandFailure.FILE_OR_PORT,
                    new CliSaid.NoSuchPort(String.valueOf(port), String.valueOf(HIGHEST_PORT)));
        }
        try {
            new ServerSocket(port, 1, InetAddress.getLoopbackAddress()).close();
        } catch (IOException e) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, new CliSaid.PortTaken(String.valueOf(port)));
        }
        CornerbookServer.prepareMeanwhile();
        return folder.openToServe();
    }
}
