package cornerbook.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.asked.Slot;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of a book while a process serves it, and after it was asked to stop. */
class ServedBookTest {
    private static final String FILE = "book.sqlite";

    private final CarHistory car = BayShop.untouched("demo-08");
    private final String visitId = car.visits().getLast().id();
    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    private Path parent;

    private Path folder;

    @BeforeEach
    void nameTheFolder() throws IOException {
        folder = Files.createDirectory(parent.resolve("book"));
    }

    @Test
    void afterAStopTheFileAloneHasEveryEntry() throws Exception {
        try (var shop = new ShopProcess(folder, List.of(car))) {
            for (var spot : Spot.values()) {
                assertThat(enter(shop, spot).statusCode()).isEqualTo(303);
            }
            shop.stop();
        }
        assertThat(folder.resolve(FILE + "-wal")).doesNotExist();
        assertThat(folder.resolve(FILE + "-shm")).doesNotExist();
        var alone = Files.createDirectory(parent.resolve("alone"));
        Files.copy(folder.resolve(FILE), alone.resolve(FILE));
        try (var book = Book.open(alone)) {
            assertThat(spots(book)).containsExactlyInAnyOrder(Spot.values());
        }
    }

    @Test
    void noEntryIsAcknowledgedIntoABookThatWasRemovedOrReplaced() throws Exception {
        try (var shop = new ShopProcess(folder, List.of(car))) {
            assertThat(enter(shop, Spot.INNER).statusCode()).isEqualTo(303);
            var away = parent.resolve("away");
            Files.move(folder.resolve(FILE), away);
            assertRefused(enter(shop, Spot.CENTRE));
            assertThat(folder.resolve(FILE)).doesNotExist();
            Files.copy(away, folder.resolve(FILE));
            assertRefused(enter(shop, Spot.CENTRE));
            assertRefused(client.send(request(shop).build(), BodyHandlers.ofString()));
            Files.delete(folder.resolve(FILE));
            Files.move(away, folder.resolve(FILE));
            assertThat(enter(shop, Spot.OUTER).statusCode()).isEqualTo(303);
            shop.stop();
        }
        try (var book = Book.open(folder)) {
            assertThat(spots(book)).containsExactlyInAnyOrder(Spot.INNER, Spot.OUTER);
            assertThat(book.check()).isEmpty();
        }
    }

    /** The log of the one before would be played into the book that is there now. */
    @Test
    void theLogOfAReplacedBookIsKeptAndNotPlayedIntoTheNewOne() throws Exception {
        var away = parent.resolve("away");
        Files.createDirectory(away);
        var backup = parent.resolve("backup");
        try (var shop = new ShopProcess(folder, List.of(car))) {
            try (var book = Book.open(folder)) {
                book.backup(backup);
            }
            assertThat(enter(shop, Spot.INNER).statusCode()).isEqualTo(303);
            Files.move(folder.resolve(FILE), away.resolve(FILE));
            Files.copy(backup, folder.resolve(FILE));
            assertRefused(enter(shop, Spot.OUTER));
            shop.stop();
        }
        assertThat(Files.readString(folder.resolve("server.log")))
                .contains("the last entries of the one before may be in");
        try (var book = Book.open(folder)) {
            assertThat(spots(book)).isEmpty();
            assertThat(book.check()).isEmpty();
        }
        Files.move(folder.resolve(FILE + "-of-the-book-before-wal"), away.resolve(FILE + "-wal"));
        try (var book = Book.open(away)) {
            assertThat(spots(book)).containsExactly(Spot.INNER);
            assertThat(book.check()).isEmpty();
        }
    }

    /** Commands go on beside the process that serves; when it is killed, the next one may serve. */
    @Test
    void oneProcessServesABookAndCommandsGoOnBesideIt() throws Exception {
        var backup = parent.resolve("backup");
        try (var shop = new ShopProcess(folder, List.of(car))) {
            assertThatThrownBy(() -> Book.openToServe(folder))
                    .isInstanceOf(BookException.class)
                    .extracting(InEnglish::told, STRING)
                    .contains("is served by another Cornerbook");
            assertThat(enter(shop, Spot.INNER).statusCode()).isEqualTo(303);
            try (var book = Book.open(folder)) {
                book.backup(backup);
                book.records().addCar(BayShop.untouched("demo-01"));
                assertThat(book.check()).isEmpty();
            }
            assertThat(enter(shop, Spot.OUTER).statusCode()).isEqualTo(303);
        }
        try (var book = Book.openToServe(folder)) {
            assertThat(spots(book)).containsExactlyInAnyOrder(Spot.INNER, Spot.OUTER);
            assertThatThrownBy(() -> Book.openToServe(folder))
                    .extracting(InEnglish::told, STRING)
                    .contains("is served by another Cornerbook");
        }
        Book.restore(backup, parent.resolve("restored"));
        try (var book = Book.openToServe(parent.resolve("restored"))) {
            assertThat(spots(book)).containsExactly(Spot.INNER);
        }
    }

    private HttpResponse<String> enter(ShopProcess shop, Spot spot) throws IOException, InterruptedException {
        var slot = new Slot(
                Measure.TREAD_DEPTH,
                Corner.LF,
                car.visits().getLast().arrivedOn().get(Corner.LF),
                spot);
        var body = "form=%s&%s=%s".formatted(spot, encode(slot.key()), encode("5.2"));
        var request = request(shop)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(body));
        return client.send(request.build(), BodyHandlers.ofString());
    }

    private HttpRequest.Builder request(ShopProcess shop) {
        return HttpRequest.newBuilder(URI.create(shop.address("/visits/" + visitId)));
    }

    private static void assertRefused(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(answer.body()).contains("was removed or replaced while Cornerbook had it open");
    }

    private List<Spot> spots(Book book) {
        return book.visits().find(visitId).orElseThrow().readings().stream()
                .map(Reading::spot)
                .filter(Objects::nonNull)
                .toList();
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
