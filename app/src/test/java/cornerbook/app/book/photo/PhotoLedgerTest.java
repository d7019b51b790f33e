package cornerbook.app.book.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.door.ServedShop;
import cornerbook.app.photo.Photos;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Subject;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoLedgerTest {
    private static final KeptPhoto KEPT =
            new KeptPhoto(new Photo("p1", Corner.LF, null, "Ada", Instant.EPOCH, false), Photos.patches(1, 400, 300));

    @Test
    void photoIsKeptOnceWithItsDigestAndABackupHasIt(@TempDir Path folder) throws Exception {
        var car = ServedShop.car("demo-08");
        var visitId = car.visits().getLast().id();
        try (var book = EmptyBook.open(folder.resolve("book"))) {
            book.records().addCar(car);
            assertThat(book.photos().add(visitId, KEPT)).isEqualTo(Arrival.STORED);
            assertThat(book.photos().add(visitId, KEPT)).isEqualTo(Arrival.ALREADY);
            assertThat(book.check()).isEmpty();
            book.backup(folder.resolve("backup"));
        }
        Book.restore(folder.resolve("backup"), folder.resolve("restored"));
        try (var restored = Book.open(folder.resolve("restored"))) {
            assertThat(restored.records().notes(visitId).photos()).containsExactly(KEPT);
            damage(folder.resolve("restored"), "update photo set jpeg = x'00'");
            assertThat(restored.check()).containsExactly(new PhotoSaid.ContentDamaged("p1"));
            damage(folder.resolve("restored"), "update photo set jpeg = x''");
            assertThat(restored.check()).containsExactly(new PhotoSaid.ContentMissing("p1"));
        }
    }

    @Test
    void choiceIsChangedAndOnlyForAPhotoOfTheVisit(@TempDir Path folder) {
        var car = ServedShop.car("demo-08");
        var visitId = car.visits().getLast().id();
        try (var book = EmptyBook.open(folder)) {
            book.records().addCar(car);
            book.photos().add(visitId, KEPT);
            assertThat(book.records().notes(visitId).photosOnSheet()).isEmpty();
            book.photos().choose(visitId, "p1", Subject.Part.DISC, true);
            assertThat(book.records().notes(visitId).photosOnSheet())
                    .extracting(kept -> kept.photo().part())
                    .containsExactly(Subject.Part.DISC);
            book.photos().choose(visitId, "p1", null, false);
            assertThat(book.records().notes(visitId).photos()).containsExactly(KEPT);
            var other = car.visits().getFirst().id();
            assertThatThrownBy(() -> book.photos().choose(other, "p1", null, true))
                    .extracting(InEnglish::told, STRING)
                    .contains("has no photo p1");
        }
    }

    private static void damage(Path folder, String sql) throws Exception {
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.sqlite"));
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
