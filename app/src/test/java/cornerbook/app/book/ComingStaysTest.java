package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.coming.ComingCar;
import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.book.customer.CardLedger.Taken;
import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.book.mail.Letter;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Learning;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.mail.Delivery;
import cornerbook.app.mail.MailServer;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What customers were asked, said and were sent is the same in SQLite and in a real PostgreSQL, and neither lets it be changed. */
class ComingStaysTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final Days YEAR = Days.until(TODAY.plusYears(1), TODAY);

    @RegisterExtension
    private final PostgresqlOfTests postgresql = new PostgresqlOfTests();

    private static void fill(Book book) {
        book.records().addCars(DemoShop.histories(TODAY));
        var clock = Clock.fixed(NOW, ZoneOffset.UTC);
        new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock).judgeOld();
        var first = book.coming().list(YEAR, 0, 1).list().getFirst();
        var about = first.cars().getFirst().matters().stream()
                .map(ComingCar.Due::asked)
                .toList();
        var customerId = first.customer().id();
        book.coming().answer("a", about, new CallAnswer(CallAnswer.Kind.NOT_REACHED, "Ida", NOW));
        book.contacts()
                .add(
                        "c",
                        customerId,
                        List.of(new ContactAnswer(Purpose.SEASON, Channel.E_MAIL, true, "May we?", "Ida", NOW)));
        book.mails()
                .putServer(
                        new MailServer("mail.example.com", 587, MailServer.Security.STARTTLS, "shop@example.com", ""));
        var letter = new Letter("m", customerId, "a@example.org", "en", "Your car", "Hello.", about);
        assertThat(book.mails().begin(letter, "Ida", NOW)).isTrue();
        assertThat(book.mails().begin(letter, "Ida", NOW)).isFalse();
        book.mails().end("m", new Delivery(Delivery.Outcome.REFUSED, "550 no"), NOW);
        book.mails().beginAgain("m", 2, NOW);
        book.mails().end("m", new Delivery(Delivery.Outcome.TAKEN, "250 ok"), NOW);
        book.cards()
                .take(List.of(
                        new Taken(new Customer("card", "Ida Tern", "555-0100", null, "fr"), true),
                        new Taken(new Customer(customerId, "any", "555-0199", null, "fr"), false)));
        var next = book.coming().list(YEAR, 1, 1).list().getFirst();
        book.coming()
                .comes(
                        "d",
                        next.cars().getFirst().matters().stream()
                                .map(ComingCar.Due::asked)
                                .toList(),
                        new CallAnswer(CallAnswer.Kind.WILL_COME, "", NOW),
                        TODAY.plusDays(3),
                        TODAY);
    }

    @Test
    void bothKeepTheSame(@TempDir Path folder) throws Exception {
        try (var server = Book.onServer(postgresql.book());
                var file = EmptyBook.open(folder)) {
            fill(server);
            fill(file);
            assertThat(file.coming().list(YEAR, 0, 100).list()).isNotEmpty();
            assertThat(server.coming().list(YEAR, 0, 100))
                    .isEqualTo(file.coming().list(YEAR, 0, 100));
            assertThat(server.coming().list(YEAR, 2, 3)).isEqualTo(file.coming().list(YEAR, 2, 3));
            var customerId = file.mails().list(0, 1).getFirst().letter().customerId();
            assertThat(server.customers().find(customerId))
                    .isEqualTo(file.customers().find(customerId));
            assertThat(server.mails().list(0, 9)).isEqualTo(file.mails().list(0, 9));
            assertThat(server.mails().findServer()).isEqualTo(file.mails().findServer());
            assertThat(server.cards().list())
                    .containsExactlyInAnyOrderElementsOf(file.cards().list());
            assertThat(file.mails().list(0, 9).getFirst().last())
                    .isEqualTo(new Delivery(Delivery.Outcome.TAKEN, "250 ok"));
            assertThat(file.check()).isEmpty();
            assertThat(server.check()).isEmpty();
        }
    }

    @Test
    void whatWasSaidAndSentCannotBeChangedButForWhatIsErased(@TempDir Path folder) throws Exception {
        var url = postgresql.book();
        try (var server = Book.onServer(url);
                var file = EmptyBook.open(folder)) {
            fill(server);
            fill(file);
            refused(url);
            refused("jdbc:sqlite:" + folder.resolve("book.sqlite"));
            for (var book : List.of(server, file)) {
                var customerId = book.mails().list(0, 1).getFirst().letter().customerId();
                book.customers().erase(customerId, false, false, new Because(null, "asked for it", "Ida", TODAY));
                var kept = book.mails().list(0, 1).getFirst();
                assertThat(kept.letter().text()).isEqualTo("–");
                assertThat(kept.letter().address()).isEqualTo("–");
                assertThat(kept.last()).isEqualTo(new Delivery(Delivery.Outcome.TAKEN, "–"));
                assertThat(book.contacts().listOf(customerId).list())
                        .extracting(ContactAnswer::words)
                        .containsOnly("–");
            }
        }
    }

    private static void refused(String url) throws SQLException {
        try (var connection = DriverManager.getConnection(url);
                var statement = connection.createStatement()) {
            for (var sql : List.of(
                    "update contact_answer set agreed = 1 - agreed",
                    "delete from contact_answer",
                    "update mail_message set made_at = '2020-01-01T00:00:00Z'",
                    "delete from mail_message",
                    "update mail_event set event = 'TAKEN'",
                    "delete from mail_event")) {
                assertThatThrownBy(() -> statement.execute(sql)).as(sql).isInstanceOf(SQLException.class);
            }
        }
    }
}
