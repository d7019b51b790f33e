package cornerbook.app.cli;

import cornerbook.app.door.DoorException;
import cornerbook.words.Reader;
import cornerbook.app.sheet.Letterhead;
import cornerbook.app.bay.BayRoom;
import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.door.CornerbookServer;
import cornerbook.app.door.Door;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.log.Log;
import cornerbook.core.assess.Assessor;
import java.io.PrintWriter;
import java.time.Clock;
import java.time.ZoneId;
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
     * @param note printed after the address, may be empty
     */
    static void serve(Book book, Door door, Letterhead letterhead, String note, PrintWriter out) {
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
            throw new CommandFailure(CommandFailure.FILE_OR_PORT, Reader.DEFAULT.say(e.said()));
        }
        var stopping = new Thread(() -> stop(server, book, out), "stop");
        Runtime.getRuntime().addShutdownHook(stopping);
        LOG.info("%s opened the book and serves its pages on port %d".formatted(Main.VERSION, server.port()));
        out.println("Cornerbook is at %s%s".formatted(door.deskAddress(server.port()), note));
        if (door.origin() != null) {
            out.println("The proxy has to pass %s on to port %d.".formatted(door.origin(), server.port()));
        }
        if (door.isOpen()) {
            out.println("Tablets open %s; pair them under Tablets.".formatted(door.publicAddress(server.port())));
        }
        out.flush();
        server.learnIfNew();
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Runtime.getRuntime().removeShutdownHook(stopping);
            stop(server, book, out);
            Thread.currentThread().interrupt();
        }
    }

    /** Answers the last pages, then makes the file of the book whole. */
    private static void stop(CornerbookServer server, Book book, PrintWriter out) {
        try {
            server.stop();
            book.close();
            Log.end("The pages are stopped and the book is closed");
        } catch (BookException e) {
            out.println(Printed.sentence(Reader.DEFAULT.say(e.said())));
        }
    }
}
