package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.Room;
import cornerbook.app.door.ServedShop;
import cornerbook.app.photo.Photos;
import cornerbook.core.car.CarHistory;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A paired tablet enters in the name of those who typed their PIN on it, and of nobody else. */
class PairedTabletTest {
    private final CarHistory car = BayShop.untouched("demo-08");
    private final String visitId = car.visits().getLast().id();
    private ServedShop shop;
    private String device;

    @BeforeEach
    void pair(@TempDir Path folder) throws Exception {
        shop = new ServedShop(folder, List.of(car), () -> new Room[] {new BayRoom()}, "127.0.0.1");
        shop.post("/devices/people", Map.of("person", "Ada", "pin", "4711"));
        shop.post("/devices/people", Map.of("person", "Bo", "pin", "0815"));
        var code = shop.get("/devices").body().replaceAll("(?s).*class=\"code\">([0-9 ]+)<.*", "$1");
        var paired = shop.post("/pair", Map.of("code", code, "device", "Trolley", "person", "Ada", "pin", "4711"));
        device = paired.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void photoOfSomebodyWhoTypedNoPinHereIsRefusedWithItsReason() throws Exception {
        var refused = photoBy("Bo");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(BayShop.JSON.readTree(refused.body()).path("sentence").stringValue())
                .isEqualTo("Bo has not typed the PIN on this tablet.");
        assertThat(shop.book().photos().list(visitId)).isEmpty();
        assertThat(photoBy("Ada").statusCode()).isEqualTo(200);
        assertThat(shop.book().photos().list(visitId)).hasSize(1);
    }

    @Test
    void photoThatCannotStandIsRefusedInASentence() throws Exception {
        var nowhere = photo(visitId, "corner=MIDDLE&at=2026-11-25T10:00:00Z&person=Ada");
        assertThat(nowhere.statusCode()).isEqualTo(422);
        assertThat(BayShop.JSON.readTree(nowhere.body()).path("sentence").stringValue())
                .isEqualTo("The corner is missing or not understood, expected one of LF, RF, LR, RR.");
        assertThat(photo(visitId, "at=2026-11-25T12:30:00Z&person=Ada").body()).contains("\"/at\"");
        var gone = photo("no-visit", "at=2026-11-25T10:00:00Z&person=Ada");
        assertThat(gone.statusCode()).isEqualTo(404);
        assertThat(gone.body()).contains("The book has no visit with this address.");
    }

    /** Of the desk, which asked for no pairing on this machine. */
    @Test
    void choiceForAPhotoThatIsNotThereIsAnsweredAsNotFound() throws Exception {
        var answer = shop.post("/visits/%s/photos/%s".formatted(visitId, UUID.randomUUID()), Map.of("part", ""));
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("The visit has no photo with this address.");
    }

    @Test
    void entryWithACharacterThatNoBookKeepsIsRefusedAloneAndNamed() throws Exception {
        var entry =
                "{\"id\":\"%s\",\"kind\":\"reading\",\"measure\":\"BATTERY_VOLTAGE\",\"written\":\"%s\",\"person\":\"Ada\",\"at\":\"2026-11-25T10:00:00Z\"}";
        for (var character : List.of("\\u0000", "\\ud800", "\\u0007")) {
            var sent = "{\"entries\":[%s]}".formatted(entry.formatted(UUID.randomUUID(), "1" + character + "2"));
            var answer = shop.send(shop.request("/bay/visits/%s/entries".formatted(visitId))
                    .header("Cookie", device)
                    .POST(BodyPublishers.ofString(sent)));
            assertThat(answer.statusCode()).as(character).isEqualTo(200);
            assertThat(BayShop.JSON
                            .readTree(answer.body())
                            .at("/answers/0/sentence")
                            .stringValue())
                    .as(character)
                    .startsWith("In the written stands the character U+")
                    .endsWith(", expected text of one line.");
        }
    }

    private HttpResponse<String> photoBy(String person) throws Exception {
        return photo(visitId, "corner=LF&at=2026-11-25T10:00:00Z&person=" + person);
    }

    private HttpResponse<String> photo(String visit, String about) throws Exception {
        return shop.send(shop.request("/bay/visits/%s/photos/%s?%s".formatted(visit, UUID.randomUUID(), about))
                .header("Cookie", device)
                .PUT(BodyPublishers.ofByteArray(Photos.patches(3, 60, 40).content())));
    }
}
