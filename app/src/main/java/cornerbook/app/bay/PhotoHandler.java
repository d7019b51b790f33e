package cornerbook.app.bay;

import cornerbook.app.book.KeptPhoto;
import cornerbook.app.book.Photo;
import cornerbook.app.photo.PhotoIntake;
import cornerbook.app.web.Desk;
import cornerbook.app.web.PageException;
import cornerbook.app.web.Pages;
import cornerbook.app.web.RequestBody;
import cornerbook.core.corner.Corner;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Takes photos from tablets and shows them. */
final class PhotoHandler {
    private final Desk desk;
    private final Watch watch;

    PhotoHandler(Desk desk, Watch watch) {
        this.desk = desk;
        this.watch = watch;
    }

    void take(ServerRequest request, ServerResponse response) {
        var visitId = Pages.pathValue(request, "id");
        desk.getHistoryOfVisit(visitId);
        try {
            var person = Pages.queryValue(request, "person");
            KnownPeople.onTabletThatAsks(desk).require(person, "/person");
            var photo = new Photo(
                    read("photo", Pages.pathValue(request, "photo"), "an identity as a UUID", UUID::fromString)
                            .toString(),
                    corner(Pages.queryValue(request, "corner")),
                    null,
                    person,
                    read("at", Pages.queryValue(request, "at"), "a time as 2026-11-25T10:00:00Z", Instant::parse),
                    false);
            var content = RequestBody.read(request, PhotoIntake.LARGEST_BYTES).orElseThrow(PhotoIntake::tooLarge);
            var arrival = desk.book().photos().add(visitId, new KeptPhoto(photo, PhotoIntake.take(content)));
            watch.tell(visitId);
            BayHandler.send(response, 200, EntryAnswer.of(photo.id(), arrival));
        } catch (RefusedEntry e) {
            BayHandler.send(response, 422, EntryAnswer.refused("", String.valueOf(e.getMessage()), e.pointer()));
        } catch (IllegalArgumentException e) {
            BayHandler.send(response, 422, EntryAnswer.refused("", String.valueOf(e.getMessage()), ""));
        }
    }

    private static @Nullable Corner corner(String text) {
        return text.isEmpty() ? null : read("corner", text, "LF, RF, LR or RR", Corner::valueOf);
    }

    /** What the JDK says of a text that it does not understand is for programmers. */
    private static <T> T read(String name, String text, String expected, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new RefusedEntry(
                    "/" + name, "The %s of the photo is not understood, expected %s.".formatted(name, expected));
        }
    }

    void show(ServerRequest request, ServerResponse response) {
        var jpeg = desk.book()
                .photos()
                .findJpeg(Pages.pathValue(request, "photo"))
                .orElseThrow(() -> new PageException(404, "The book has no photo with this address."));
        response.header(HeaderNames.CONTENT_TYPE, "image/jpeg");
        response.header(HeaderNames.CACHE_CONTROL, "private, max-age=31536000, immutable");
        response.send(jpeg);
    }
}
