package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.customer.KeptOfCustomer.Mention;
import cornerbook.app.book.shop.Absence;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.days.Skill;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What customers would like and what people have learned is the same in SQLite and in a real PostgreSQL, and neither lets it be changed. */
class WishesStayTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final String CAR = "demo-03";

    @RegisterExtension
    private final PostgresqlOfTests postgresql = new PostgresqlOfTests();

    private static void fill(Book book) {
        book.records().addCars(DemoShop.histories(TODAY));
        book.devices().putPerson("Ida", "no hash");
        book.skills().put("Ida", Set.of(Skill.BRAKES, Skill.HIGH_VOLTAGE), "Ida", NOW);
        book.skills().put("Ida", Set.of(Skill.BRAKES), null, NOW);
        book.hours().away(new Absence("week", "Ida", TODAY, TODAY.plusDays(4)), "Ida", NOW);
        book.hours().away(new Absence("ill", "Ida", TODAY.plusDays(9), TODAY.plusDays(9)), null, NOW);
        book.hours().back("ill", "Ida", NOW);
        book.hours().back("ill", "Ida", NOW);
        var wishes = book.dayWishes();
        for (var secret : List.of("one", "two")) {
            wishes.ask(secret, CAR, "hash " + secret, PlannedWork.BRAKES, 90, TODAY.plusWeeks(4), "fr", "Ida", NOW);
            wishes.wish("first " + secret, wishes.findBySecret("hash " + secret).orElseThrow(), null, null, NOW);
        }
        wishes.wish(
                "then",
                wishes.findBySecret("hash one").orElseThrow(),
                TODAY.plusDays(2),
                LocalTime.of(9, 0),
                NOW.plusSeconds(60));
        wishes.book("then", "H-1", "Ida", new Because(null, "Ida", NOW), TODAY);
    }

    @Test
    void bothKeepTheSame(@TempDir Path folder) throws Exception {
        try (var server = Book.onServer(postgresql.book());
                var file = EmptyBook.open(folder)) {
            fill(server);
            fill(file);
            for (var book : List.of(server, file)) {
                assertThat(book.skills().list().of()).isEqualTo(Map.of("Ida", Set.of(Skill.BRAKES)));
                assertThat(book.skills().list().lacking("Ida", Set.of(Skill.HIGH_VOLTAGE)))
                        .containsExactly(Skill.HIGH_VOLTAGE);
                assertThat(book.hours().listAway(TODAY.plusDays(4)))
                        .containsExactly(new Absence("week", "Ida", TODAY, TODAY.plusDays(4)));
                assertThat(book.hours().listAway(TODAY.plusDays(5))).isEmpty();
                assertThat(book.dayWishes().listWaiting())
                        .singleElement()
                        .satisfies(wish -> assertThat(wish.id()).isEqualTo("first two"));
                assertThat(book.appointments().find("then").orElseThrow().state())
                        .isEqualTo(AppointmentState.BOOKED);
                assertThat(book.check()).isEmpty();
            }
            assertThat(server.dayWishes().findWish("one"))
                    .isEqualTo(file.dayWishes().findWish("one"));
            var customerId = file.cars().find(CAR).orElseThrow().customer().id();
            assertThat(file.customers().find(customerId).orElseThrow().mentions())
                    .extracting(Mention::kind)
                    .contains(Mention.Kind.WISHED);
            assertThat(server.customers().find(customerId))
                    .isEqualTo(file.customers().find(customerId));
        }
    }

    @Test
    void whoWasErasedIsAskedNothingAndWhatWasSaidStays(@TempDir Path folder) throws Exception {
        var url = postgresql.book();
        try (var server = Book.onServer(url);
                var file = EmptyBook.open(folder)) {
            fill(server);
            fill(file);
            refused(url);
            refused("jdbc:sqlite:" + folder.resolve("book.sqlite"));
            for (var book : List.of(server, file)) {
                book.customers()
                        .erase(
                                book.cars().find(CAR).orElseThrow().customer().id(),
                                true,
                                true,
                                new cornerbook.app.book.visit.Because(null, "asked for it", "Ida", TODAY));
                assertThat(book.dayWishes().findBySecret("hash two")).isEmpty();
                assertThat(book.dayWishes().listWaiting()).isEmpty();
            }
        }
    }

    private static void refused(String url) throws SQLException {
        try (var connection = DriverManager.getConnection(url);
                var statement = connection.createStatement()) {
            for (var sql : List.of(
                    "update person_skill set has = 1 - has",
                    "delete from person_skill",
                    "update person_away set last_day = '2030-01-01'",
                    "delete from person_back",
                    "update day_asking set minutes = 5",
                    "delete from day_asking",
                    "update day_wish set day = '2020-01-01', starts = '09:00'",
                    "delete from day_wish",
                    "update day_wish_answer set answer = 'SET_ASIDE'",
                    "delete from day_wish_answer")) {
                assertThatThrownBy(() -> statement.execute(sql)).as(sql).isInstanceOf(SQLException.class);
            }
        }
    }
}
