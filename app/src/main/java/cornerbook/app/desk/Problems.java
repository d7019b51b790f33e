package cornerbook.app.desk;

import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.log.Faults;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.app.request.RequestSaid;
import cornerbook.app.request.Told;
import cornerbook.core.say.Said;
import io.helidon.common.socket.SocketWriterException;
import io.helidon.http.HttpException;
import io.helidon.http.RequestException;
import io.helidon.webserver.CloseConnectionException;
import io.helidon.webserver.http.HttpRouting;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What a person is told when a request comes to nothing. */
public final class Problems {
    private static final Logger LOG = Logger.getLogger(Problems.class.getName());
    private static final int LONGEST_PATH = 200;

    private final Pages pages;

    private Problems(Pages pages) {
        this.pages = pages;
    }

    /** For all addresses of a server. */
    public static void route(HttpRouting.Builder routing, Pages pages) {
        var problems = new Problems(pages);
        routing.error(
                        PageException.class,
                        (request, response, problem) ->
                                problems.tell(request, response, problem.status(), problem.said()))
                .error(BookException.class, problems::sendBook)
                .error(
                        HttpException.class,
                        (request, response, problem) -> problems.tell(
                                request, response, problem.status().code(), new RequestSaid.NotUnderstood()))
                .error(
                        RequestException.class,
                        (request, response, problem) -> problems.tell(
                                request, response, problem.status().code(), new RequestSaid.NotUnderstood()))
                .error(SocketWriterException.class, (request, response, problem) -> leave(problem))
                .error(UncheckedIOException.class, problems::sendIo)
                .error(Throwable.class, problems::sendFault);
    }

    private void sendBook(ServerRequest request, ServerResponse response, BookException problem) {
        if (problem.isFailure()) {
            LOG.log(Level.WARNING, "The book could not be used", problem);
        }
        tell(request, response, 503, problem.said());
    }

    /** Unless a file failed, the browser went away while it was answered. */
    private void sendIo(ServerRequest request, ServerResponse response, UncheckedIOException problem) {
        if (problem.getCause() instanceof FileSystemException) {
            sendFault(request, response, problem);
        } else {
            leave(problem);
        }
    }

    /** Nobody is there to be told. */
    private static void leave(RuntimeException problem) {
        throw new CloseConnectionException("The other side is gone", problem);
    }

    private void sendFault(ServerRequest request, ServerResponse response, Throwable problem) {
        var asked = request.path().rawPath();
        // What stands behind it is a secret.
        var path = asked.startsWith(DayLinks.CALENDAR) ? DayLinks.CALENDAR : asked;
        var id = Faults.note(
                "answering %s %s"
                        .formatted(
                                request.prologue().method().text(),
                                path.substring(0, Math.min(path.length(), LONGEST_PATH))),
                problem);
        tell(request, response, 500, new RequestSaid.ProgramFault(id));
    }

    /** In the words of whoever asked; one who was turned away at the door is known by the browser alone. */
    private void tell(ServerRequest request, ServerResponse response, int status, Said said) {
        request.context()
                .get(Caller.class)
                .orElseGet(() -> Caller.of(Optional.empty(), request.headers()))
                .run(() -> pages.sendProblem(response, status, Typed.sentence(Told.say(said))));
    }
}
