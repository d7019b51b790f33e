package cornerbook.app.desk.out;

import cornerbook.app.book.Book;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.request.PageException;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.HttpRouting;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.time.Clock;
import java.util.List;

/** The page that takes the book out, and its file. */
public final class OutRoom implements Room {
    private static final int PIECE = 1 << 16;

    private final OutWork work;

    public OutRoom(Book book, Clock clock) {
        work = new OutWork(book, clock);
    }

    @Override
    public void open(HttpRouting.Builder routing, Desk desk, Pages pages) {
        routing.get(
                        ShopLinks.out(),
                        (request, response) -> pages.send(response, 200, "desk/out/out", new OutPage(work.state())))
                .post(ShopLinks.out(), this::begin)
                .post(ShopLinks.out() + "/remove", this::remove)
                .get(ShopLinks.outFile(), (request, response) -> sendFile(desk, request, response));
    }

    private void begin(ServerRequest request, ServerResponse response) {
        var form = Form.read(request);
        var kind = form.choice("kind", List.of(OutKind.values()))
                .orElseThrow(() -> new PageException(400, new OutSaid.NotUnderstood()));
        work.begin(kind, form.has("names"));
        Pages.redirect(response, ShopLinks.out());
    }

    private void remove(ServerRequest request, ServerResponse response) {
        work.remove();
        Pages.redirect(response, ShopLinks.out());
    }

    /** The file, or the rest of it to a browser that has its beginning (RFC 9110, section 14). */
    private void sendFile(Desk desk, ServerRequest request, ServerResponse response) {
        if (!(work.state() instanceof OutState.Made made)) {
            throw new PageException(404, new OutSaid.NothingMade());
        }
        var tag = "\"%s-%s\"".formatted(made.at().toEpochMilli(), made.bytes());
        response.header(HeaderNames.CONTENT_TYPE, "application/zip");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.header(HeaderNames.ACCEPT_RANGES, "bytes");
        response.header(HeaderNames.ETAG, tag);
        response.header(
                HeaderNames.CONTENT_DISPOSITION,
                "attachment; filename=\"cornerbook-%s-%s.zip\""
                        .formatted(desk.dayOf(made.at()), made.kind().fileName()));
        var whole = new ByteRange(0, made.bytes() - 1);
        var part = request.headers()
                        .first(HeaderNames.IF_RANGE)
                        .filter(each -> !each.equals(tag))
                        .isPresent()
                ? whole
                : request.headers()
                        .first(HeaderNames.RANGE)
                        .flatMap(range -> ByteRange.of(range, made.bytes()))
                        .orElse(whole);
        if (!part.isIn(made.bytes())) {
            response.status(416);
            response.header(HeaderNames.CONTENT_RANGE, "bytes */%s".formatted(made.bytes()));
            response.send();
            return;
        }
        if (!part.equals(whole)) {
            response.status(206);
            response.header(
                    HeaderNames.CONTENT_RANGE, "bytes %s-%s/%s".formatted(part.first(), part.last(), made.bytes()));
        }
        response.header(HeaderNames.CONTENT_LENGTH, String.valueOf(part.length()));
        send(made, part, response);
    }

    private static void send(OutState.Made made, ByteRange part, ServerResponse response) {
        try (var file = FileChannel.open(made.file());
                var from = Channels.newInputStream(file.position(part.first()));
                var out = response.outputStream()) {
            var piece = new byte[PIECE];
            for (long left = part.length(); left > 0; ) {
                int read = from.read(piece, 0, (int) Math.min(left, PIECE));
                if (read < 0) {
                    break;
                }
                out.write(piece, 0, read);
                left -= read;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void unpaired(String deviceId) {
        // Tablets have no such page.
    }

    @Override
    public void close() {
        work.close();
    }
}
