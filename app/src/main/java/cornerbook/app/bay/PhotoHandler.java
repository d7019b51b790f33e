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
            var corner = Pages.queryValue(request, "corner");
            var person = Pages.queryValue(request, "person");
            KnownPeople.onTabletThatAsks(desk).require(person, "/person");
            var photo = new Photo(
                    UUID.fromString(Pages.pathValue(request, "photo")).toString(),
                    corner.isEmpty() ? null : Corner.valueOf(corner),
                    null,
                    person,
                    Instant.parse(Pages.queryValue(request, "at")),
                    false);
            var content = RequestBody.read(request, PhotoIntake.LARGEST_BYTES).orElseThrow(PhotoIntake::tooLarge);
            var arrival = desk.book().photos().add(visitId, new KeptPhoto(photo, PhotoIntake.take(content)));
            watch.tell(visitId);
            BayHandler.send(response, 200, EntryAnswer.of(photo.id(), arrival));
        } catch (RefusedEntry e) {
            BayHandler.send(response, 422, EntryAnswer.refused("", String.valueOf(e.getMessage()), e.pointer()));
        } catch (IllegalArgumentException | DateTimeException e) {
            BayHandler.send(response, 422, EntryAnswer.refused("", String.valueOf(e.getMessage()), ""));
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
