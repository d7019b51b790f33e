package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.knowledge.Extent;
import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.app.knowledge.KnowledgeSaid;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.say.Refused;
import cornerbook.core.season.DistancePrior;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What was taken in of other shops' knowledge is the same in SQLite and in a real PostgreSQL, and neither lets it be changed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OthersStayTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final LocalDate BEFORE = LocalDate.of(2026, 11, 12);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final List<CarHistory> SHOP = DemoShop.histories(TODAY);
    private static final List<CarHistory> OTHERS =
            DemoShop.histories(BEFORE, 100, 160).toList();
    private static final Extent EXTENT = new Extent(60, 12, 500, BEFORE.minusYears(4), BEFORE.minusDays(2));

    @RegisterExtension
    private final PostgresqlOfTests postgresql = new PostgresqlOfTests();

    @TempDir
    private Path folder;

    private SigningKey key;

    @BeforeAll
    void makeKey() throws Exception {
        key = SigningKey.make(Files.createTempDirectory("keys").resolve("key"));
    }

    private String file(LocalDate learnedOn) {
        return KnowledgeFile.of(EXTENT, Learner.learn(OTHERS, learnedOn)).write(key);
    }

    /** Gives what the book had learned without. */
    private Knowledge takesIn(Book book) {
        book.records().addCars(SHOP.subList(0, 3));
        var alone = book.knowledge().learn(TODAY);
        long number = book.knowledge().judgedWith().number();
        var others = book.others();
        var text = file(BEFORE);
        assertThatThrownBy(() -> others.take("a", text, "Ida", NOW, TODAY))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said())
                                .isEqualTo(new KnowledgeSaid.NotTrusted(
                                        key.publicKey().fingerprint())));
        assertThat(others.trust("k", key.publicKey(), "Réseau inventé", "Ida", NOW))
                .isEqualTo(Arrival.STORED);
        assertThat(others.trust("k", key.publicKey(), "Réseau inventé", "Ida", NOW))
                .isEqualTo(Arrival.ALREADY);
        assertThat(others.look(text, TODAY).key().name()).isEqualTo("Réseau inventé");
        assertThat(others.find()).isEmpty();
        assertThat(others.take("a", text, "Ida", NOW, TODAY)).isEqualTo(Arrival.STORED);
        assertThat(others.take("a", text, "Ida", NOW, TODAY)).isEqualTo(Arrival.ALREADY);
        assertThatThrownBy(() -> others.take("b", text, "Ida", NOW, TODAY)).isInstanceOf(BookException.class);
        assertThatThrownBy(() -> others.take("b", file(BEFORE.minusDays(1)), "Ida", NOW, TODAY))
                .isInstanceOf(BookException.class);

        var learned = book.knowledge().learn(TODAY);
        assertThat(learned).isNotEqualTo(alone);
        assertThat(book.knowledge().judgedWith().number()).isGreaterThan(number);
        var read = book.knowledge().read();
        var origin = Objects.requireNonNull(read.others()).origin();
        assertThat(origin).isEqualTo(new KnowledgeOrigin(60, 12, "Réseau inventé", BEFORE));
        assertThat(read.others().knowledge())
                .isEqualTo(Objects.requireNonNull(learned.others()).knowledge());
        assertThat(read.distances()).isEqualTo(learned.distances());
        assertThat(read.seizing()).isEqualTo(learned.seizing());
        assertThat(read.wear().rows())
                .containsExactlyInAnyOrderElementsOf(learned.wear().rows());
        assertThat(book.check()).isEmpty();
        return alone;
    }

    private void takesBack(Book book, Knowledge alone) {
        var others = book.others();
        assertThat(others.takeBack("back", "Ida", NOW)).isEqualTo(Arrival.STORED);
        assertThat(others.takeBack("back", "Ida", NOW)).isEqualTo(Arrival.ALREADY);
        assertThatThrownBy(() -> others.takeBack("again", "Ida", NOW)).isInstanceOf(BookException.class);
        assertThat(others.find()).isEmpty();
        assertThat(book.knowledge().learn(TODAY)).isEqualTo(alone);
        assertThat(book.knowledge().read().others()).isNull();
        // What was taken back may come again, and goes when its key is trusted no longer.
        others.take("c", file(BEFORE), "", NOW, TODAY);
        assertThat(others.find()).isPresent();
        others.distrust("d", key.publicKey(), "Ida", NOW);
        assertThat(others.find()).isEmpty();
        assertThat(others.listKeys()).singleElement().matches(each -> !each.trusted());
        assertThatThrownBy(() -> others.distrust("e", key.publicKey(), "Ida", NOW))
                .isInstanceOf(BookException.class);
        assertThatThrownBy(() -> others.trust("f", key.publicKey(), " ", "Ida", NOW))
                .isInstanceOf(BookException.class);
    }

    @Test
    void bothKeepTheSameAndItGoesFromOneToTheOther() throws Exception {
        var url = postgresql.book();
        try (var server = Book.onServer(url);
                var file = EmptyBook.open(folder.resolve("file"))) {
            var ofServer = takesIn(server);
            var ofFile = takesIn(file);
            assertThat(server.knowledge()
                            .read()
                            .distance(SHOP.getFirst().sets().getFirst().season()))
                    .isNotEqualTo(DistancePrior.DEFAULT);
            var elsewhere = postgresql.database();
            file.move(elsewhere);
            try (var moved = Book.onServer(elsewhere)) {
                assertThat(moved.others().find()).isEqualTo(file.others().find());
                assertThat(moved.knowledge().read()).isEqualTo(file.knowledge().read());
            }
            file.backup(folder.resolve("backup"));
            Book.restore(folder.resolve("backup"), folder.resolve("restored"));
            try (var restored = Book.open(folder.resolve("restored"))) {
                assertThat(restored.others().find()).isEqualTo(file.others().find());
            }
            takesBack(server, ofServer);
            takesBack(file, ofFile);
        }
        try (var server = DriverManager.getConnection(url);
                var file = DriverManager.getConnection(
                        "jdbc:sqlite:" + folder.resolve("file").resolve(BookFile.NAME))) {
            for (var connection : List.of(server, file)) {
                for (var change : List.of(
                        "update taken_knowledge set person = ''",
                        "delete from taken_knowledge",
                        "update trusted_key set trusted = 1",
                        "delete from trusted_key")) {
                    try (var statement = connection.createStatement()) {
                        assertThatThrownBy(() -> statement.executeUpdate(change))
                                .isInstanceOf(SQLException.class);
                    }
                }
            }
        }
    }

    /** A damaged file counts for nothing, and the check of the book tells of it. */
    @Test
    void aDamagedFileIsToldAndDoesNotCount() throws Exception {
        var place = folder.resolve("damaged");
        try (var book = EmptyBook.open(place)) {
            takesIn(book);
        }
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + place.resolve(BookFile.NAME));
                var statement = connection.createStatement()) {
            statement.executeUpdate("drop trigger taken_knowledge_is_never_updated");
            statement.executeUpdate("update taken_knowledge set file = replace(file, '7', '8')");
        }
        try (var book = EmptyBook.open(place)) {
            assertThat(book.others().find()).isEmpty();
            assertThat(book.knowledge().read().others()).isNull();
            assertThat(book.check()).isNotEmpty();
        }
    }
}
