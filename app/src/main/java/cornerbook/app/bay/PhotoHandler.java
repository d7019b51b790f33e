package cornerbook.app.bay;

import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.photo.PhotoIntake;
import cornerbook.app.request.PageException;
import cornerbook.app.request.RequestBody;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Refused;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
        try {
            desk.getVisit(visitId);
            var photo = photo(request);
            var content = RequestBody.read(request, PhotoIntake.LARGEST_BYTES).orElseThrow(PhotoIntake::tooLarge);
            var arrival = desk.book().photos().add(visitId, new KeptPhoto(photo, PhotoIntake.take(content)));
            watch.tell(visitId);
            BayHandler.send(response, 200, EntryAnswer.of(photo.id(), arrival));
        } catch (PageException e) {
            BayHandler.send(response, e.status(), EntryAnswer.refused("", e.said(), ""));
        } catch (RefusedEntry e) {
            BayHandler.send(response, 422, EntryAnswer.refused("", e.said(), e.pointer()));
        } catch (IllegalArgumentException e) {
            BayHandler.send(response, 422, EntryAnswer.refused("", Refused.said(e), ""));
        }
    }

    private Photo photo(ServerRequest request) {
        var said = new Entry(BayJson.object(about(request)), "");
        var person = said.person();
        KnownPeople.onTabletThatAsks(desk).require(person, "/person");
        EntryIntake.refuseFuture(said.madeAt(), desk.now(), "/at");
        return new Photo(said.id(), said.optionalWord("corner", Corner.class), null, person, said.madeAt(), false);
    }

    /** What the address says of the photo; what is empty there is left out. */
    private static Map<String, String> about(ServerRequest request) {
        var about = new HashMap<>(Map.of("id", Pages.pathValue(request, "photo")));
        for (var name : List.of("corner", "person", "at")) {
            var value = Pages.queryValue(request, name);
            if (!value.isEmpty()) {
                about.put(name, value);
            }
        }
        return about;
    }

    void show(ServerRequest request, ServerResponse response) {
        var jpeg = desk.book()
                .photos()
                .findJpeg(Pages.pathValue(request, "photo"))
                .orElseThrow(() -> new PageException(404, new BaySaid.NoPhotoHere()));
        response.header(HeaderNames.CONTENT_TYPE, "image/jpeg");
        response.header(HeaderNames.CACHE_CONTROL, "private, max-age=31536000, immutable");
        response.send(jpeg);
    }
}
