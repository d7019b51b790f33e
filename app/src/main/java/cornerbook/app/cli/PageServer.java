package cornerbook.app.cli;

import cornerbook.app.bay.BayRoom;
import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.door.CornerbookServer;
import cornerbook.app.door.Door;
import cornerbook.app.door.DoorException;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.log.Log;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import cornerbook.core.say.Said;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Logger;

/** Serves a book until the process is stopped. */
final class PageServer {
    private static final Logger LOG = Logger.getLogger(PageServer.class.getName());

    private PageServer() {}

    /**
     * Serves, prints the address and waits; returns when the thread is interrupted. When the process is asked to end, the book is
     * closed as well.
     *
     * @param letterhead of each handover sheet
     * @param notes printed after the address
     */
    static void serve(Book book, Door door, Letterhead letterhead, Terminal terminal, Said... notes) {
        Log.showOn(System.err);
        CornerbookServer server;
        try {
            server = CornerbookServer.start(
                    book,
                    new Assessor(LimitsFile.load()),
                    door,
                    Clock.system(ZoneId.systemDefault()),
                    letterhead,
                    new BayRoom());
        } catch (DoorException e) {
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, e.said());
        }
        var stopping = new Thread(() -> stop(server, book, terminal), "stop");
        Runtime.getRuntime().addShutdownHook(stopping);
        LOG.info("%s opened the book and serves its pages on port %s".formatted(Main.VERSION, server.port()));
        terminal.say(new CliSaid.PagesAt(door.deskAddress(server.port()).toString()));
        Arrays.stream(notes).forEach(terminal::say);
        var origin = door.origin();
        if (origin != null) {
            terminal.say(new CliSaid.ProxyPasses(origin.toString(), String.valueOf(server.port())));
        }
        if (door.isOpen()) {
            terminal.say(new CliSaid.TabletsOpen(String.valueOf(door.publicAddress(server.port()))));
        }
        terminal.out().flush();
        server.learnIfNew();
        server.drawAhead();
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Runtime.getRuntime().removeShutdownHook(stopping);
            stop(server, book, terminal);
            Thread.currentThread().interrupt();
        }
    }

    /** Answers the last pages, then makes the file of the book whole. */
    private static void stop(CornerbookServer server, Book book, Terminal terminal) {
        try {
            server.stop();
            book.close();
            Log.end("The pages are stopped and the book is closed");
        } catch (BookException e) {
            terminal.say(e.said());
        }
    }
}
