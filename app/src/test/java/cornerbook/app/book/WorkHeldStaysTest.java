package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.customer.KeptOfCustomer.Mention;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.LineWords;
import cornerbook.app.book.estimate.WorkAnswer;
import cornerbook.app.book.visit.Because;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.price.Job;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Language;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What was said of work that nobody agreed to is the same in SQLite and in a real PostgreSQL, and neither lets it be changed. */
class WorkHeldStaysTest {
    private static final String CAR = "demo-08";
    private static final String VISIT = "demo-08-v7";
    private static final ChargedWork PADS = ChargedWork.find("PADS.FRONT").orElseThrow();
    private static final ChargedWork HOSE = ChargedWork.find("BRAKE_HOSE.RF").orElseThrow();

    @RegisterExtension
    private final PostgresqlOfTests postgresql = new PostgresqlOfTests();

    private static Reading done(String id, Measure measure, Corner corner) {
        return new Reading(id, measure, corner, null, null, 1, "done", null, null);
    }

    private static void fill(Book book) {
        AgreedWork.cars(book, CAR);
        book.estimates()
                .keep(new Estimate(
                        "e",
                        VISIT,
                        0,
                        Language.ENGLISH,
                        AgreedWork.TODAY,
                        AgreedWork.TODAY,
                        "CA-QC",
                        CurrencyUnit.CAD,
                        List.of(new EstimateLine(
                                "BRAKE_LINE.LF.REPLACE",
                                "",
                                "BRAKE_LINE.LF.REPLACE",
                                LineWords.of("Hoses"),
                                "",
                                "",
                                true,
                                Money.parse("CAD 60.00"),
                                ChargedWork.of(Job.BRAKE_HOSE, List.of(Corner.LF, Corner.RF)))),
                        List.of(),
                        "Ida",
                        AgreedWork.NOW));
        book.readings()
                .add(
                        VISIT,
                        List.of(
                                done("pads", Measure.PADS_REPLACED, Corner.LF),
                                done("hose", Measure.BRAKE_HOSE_REPLACED, Corner.RF)));
        book.estimates().answer(free("own", PADS, "Ottilie’s husband saw the rust"));
        book.estimates().answer(free("known", HOSE, "SAFETY"));
    }

    private static WorkAnswer free(String id, ChargedWork work, String reason) {
        return new WorkAnswer(id, VISIT, work, WorkAnswer.Kind.WITHOUT_CHARGE, null, reason, "Ida", AgreedWork.NOW);
    }

    private static Visit visit(Book book) {
        return book.visits().find(VISIT).orElseThrow();
    }

    @Test
    void bothKeepTheSame(@TempDir Path folder) throws Exception {
        try (var server = Book.onServer(postgresql.book());
                var file = EmptyBook.open(folder)) {
            fill(server);
            fill(file);
            assertThat(server.estimates().of(VISIT)).isEqualTo(file.estimates().of(VISIT));
            for (var book : List.of(server, file)) {
                var work = book.estimates().of(VISIT);
                assertThat(work.held(visit(book))).isEmpty();
                assertThat(work.free(visit(book))).extracting(WorkAnswer::work).containsExactlyInAnyOrder(PADS, HOSE);
                book.estimates()
                        .answer(new WorkAnswer(
                                "again", VISIT, HOSE, WorkAnswer.Kind.ASKED_AGAIN, null, "", "Ida", AgreedWork.NOW));
                assertThat(book.estimates().of(VISIT).held(visit(book))).containsExactly(HOSE);
                assertThat(book.check()).isEmpty();
            }
        }
    }

    /** A reason in a person's own words goes with the customer who is erased; the law's own reasons name nobody, and stay. */
    @Test
    void whatWasSaidStaysAndItsOwnWordsAreErased(@TempDir Path folder) throws Exception {
        var url = postgresql.book();
        try (var server = Book.onServer(url);
                var file = EmptyBook.open(folder)) {
            fill(server);
            fill(file);
            refused(url);
            refused("jdbc:sqlite:" + folder.resolve("book.sqlite"));
            for (var book : List.of(server, file)) {
                var customerId = book.cars().find(CAR).orElseThrow().customer().id();
                assertThat(book.customers().find(customerId).orElseThrow().mentions())
                        .extracting(Mention::kind)
                        .contains(Mention.Kind.WITHOUT_CHARGE);
                book.customers().erase(customerId, true, true, new Because(null, "asked", "Ida", AgreedWork.TODAY));
                assertThat(book.estimates().of(VISIT).answers())
                        .extracting(WorkAnswer::reason)
                        .containsExactly("–", "SAFETY");
            }
        }
    }

    private static void refused(String url) throws SQLException {
        try (var connection = DriverManager.getConnection(url);
                var statement = connection.createStatement()) {
            for (var sql : List.of(
                    "update estimate_line_work set work = 'PADS.FRONT'",
                    "delete from estimate_line_work",
                    "update work_answer set kind = 'ASKED_AGAIN'",
                    "update work_answer set reason = 'GOODWILL'",
                    "delete from work_answer")) {
                assertThatThrownBy(() -> statement.execute(sql)).as(sql).isInstanceOf(SQLException.class);
            }
        }
    }
}
