package cornerbook.app.book.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.bill.BillLedger.NewBill;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jdbi.v3.core.Jdbi;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bills of an invented visit. */
class BillLedgerTest {
    private static final LocalDate TODAY = AgreedWork.TODAY;
    private static final Instant NOW = AgreedWork.NOW;
    private static final String VISIT = "demo-08-v7";

    @AutoClose
    private Book book;

    private Path folder;

    @BeforeEach
    void open(@TempDir Path folder) {
        this.folder = folder;
        book = EmptyBook.open(folder);
        AgreedWork.cars(book, "demo-08");
        AgreedWork.agree(book, VISIT, "CA-QC", Map.of("Pads", "100.00", "Fluid", "50.00"));
    }

    private static Money cad(String amount) {
        return Money.parse("CAD " + amount);
    }

    private static BillLine more(String amount) {
        return new BillLine(null, "Seized bolt", "", cad(amount));
    }

    private int bill(String id, List<String> matters, BillLine... more) {
        return book.bills().make(new NewBill(id, VISIT, matters, List.of(more), TODAY, "Ida", NOW));
    }

    private static Payment payment(String id, Payment.Way way, String amount) {
        return new Payment(id, way, cad(amount), TODAY, "Ida", NOW);
    }

    /** Revenu Québec's example: $100.00 and taxes are $114.98. */
    @Test
    void whatWasAgreedIsBilledOnceAndPaid() {
        assertThat(bill("a", List.of("Pads"))).isEqualTo(1);
        assertThat(bill("a", List.of("Pads"))).as("the same form sent twice").isEqualTo(1);
        var bill = book.bills().find(1).orElseThrow();
        assertThat(bill.total().total()).isEqualTo(cad("114.98"));
        assertThat(bill.open()).isEqualTo(cad("114.98"));
        assertThat(book.bills().toBill(VISIT))
                .extracting(each -> each.line().key())
                .containsExactly("Fluid");
        refused("not agreed, or stands on a bill already", () -> bill("b", List.of("Pads")));

        book.bills().pay(1, payment("p", Payment.Way.CARD, "100.00"));
        book.bills().pay(1, payment("p", Payment.Way.CARD, "100.00"));
        assertThat(book.bills().find(1).orElseThrow().open()).isEqualTo(cad("14.98"));
        refused(
                "not more than what is open, $14.98",
                () -> book.bills().pay(1, payment("q", Payment.Way.CARD, "14.99")));
        refused("above zero", () -> book.bills().pay(1, payment("q", Payment.Way.CARD, "0.00")));
        book.bills().pay(1, payment("q", Payment.Way.TRANSFER, "14.98"));
        assertThat(book.bills().find(1).orElseThrow().open()).isEqualTo(cad("0.00"));
    }

    /** $114.98 are $115.00 in cash: 8 and 9 cents go up (Government of Canada, Budget 2012, Rounding). */
    @Test
    void cashHasNoCent() {
        bill("a", List.of("Pads"));
        book.bills().pay(1, payment("p", Payment.Way.CASH, "115.00"));
        assertThat(book.bills().find(1).orElseThrow().open()).isEqualTo(cad("0.00"));
    }

    @Test
    void aCreditNoteGivesABillBackAndItIsBilledAnew() {
        bill("a", List.of("Pads", "Fluid"));
        assertThat(book.bills().credit("c", 1, CreditReason.WRONG_CAR, "Wrong car", TODAY, "Ida", NOW))
                .isEqualTo(2);
        assertThat(book.bills().credit("c", 1, CreditReason.WRONG_CAR, "Wrong car", TODAY, "Ida", NOW))
                .isEqualTo(2);
        var bills = book.bills().of(VISIT);
        assertThat(bills.getFirst().creditedBy()).isEqualTo(2);
        assertThat(bills.getLast().credits()).isEqualTo(1);
        assertThat(bills.getFirst().total().total().plus(bills.getLast().total().total()))
                .isEqualTo(cad("0.00"));
        refused(
                "has given bill 1 back already",
                () -> book.bills().credit("d", 1, CreditReason.OTHER, "Again", TODAY, "", NOW));
        refused("2 is a credit note", () -> book.bills().credit("d", 2, CreditReason.OTHER, "Again", TODAY, "", NOW));
        refused("no bill 9", () -> book.bills().credit("d", 9, CreditReason.OTHER, "Why", TODAY, "", NOW));
        assertThat(bill("b", List.of("Pads"))).isEqualTo(3);

        book.bills().pay(2, payment("back", Payment.Way.CARD, "172.46"));
        assertThat(book.bills().find(2).orElseThrow().open()).isEqualTo(cad("0.00"));
    }

    /** Québec, Consumer Protection Act, sections 171 and 172: nothing beyond. */
    @Test
    void inQuebecNothingGoesBeyondWhatWasAgreed() {
        refused("at most $172.46 without another agreement", () -> bill("a", List.of("Pads", "Fluid"), more("0.01")));
        assertThat(bill("a", List.of("Pads"), more("20.00")))
                .as("within what was agreed for all")
                .isEqualTo(1);
        refused("at most $172.46", () -> bill("b", List.of("Fluid"), more("0.01")));
    }

    /** Ontario, Consumer Protection Act, 2002, section 58(2): 10 % beyond the estimate. By hand: 150.00 × 1.13 × 1.1 = 186.45. */
    @Test
    void inOntarioTenPerCentMayComeOnTop() {
        AgreedWork.agree(book, VISIT, "CA-ON", Map.of("Pads", "100.00", "Fluid", "50.00"));
        refused("at most $186.45", () -> bill("a", List.of("Pads", "Fluid"), more("15.01")));
        assertThat(bill("a", List.of("Pads", "Fluid"), more("15.00"))).isEqualTo(1);
        assertThat(book.bills().find(1).orElseThrow().total().total()).isEqualTo(cad("186.45"));
    }

    @Test
    void whatCannotBeTakesNoNumber() {
        refused("has no line", () -> bill("a", List.of()));
        refused("not agreed", () -> bill("a", List.of("Nothing")));
        refused("empty or longer", () -> bill("a", List.of("Pads"), new BillLine(null, " ", "", cad("1.00"))));
        refused(
                "nothing was agreed",
                () -> book.bills().make(new NewBill("a", "demo-08-v6", List.of("Pads"), List.of(), TODAY, "", NOW)));
        assertThat(bill("a", List.of("Pads"))).isEqualTo(1);
    }

    @Test
    void noRowIsEverChanged() {
        bill("a", List.of("Pads"));
        book.bills().pay(1, payment("p", Payment.Way.CARD, "1.00"));
        book.close();
        var rows = Jdbi.create("jdbc:sqlite:" + folder.resolve("book.sqlite"));
        for (var change : List.of(
                "update bill set day = '2020-01-01'",
                "delete from bill",
                "update bill_line set amount = 'CAD 1.00'",
                "delete from bill_tax",
                "delete from bill_payment")) {
            assertThatThrownBy(() -> rows.useHandle(handle -> handle.execute(change)))
                    .as(change)
                    .hasMessageContaining("never changed");
        }
    }

    private static void refused(String sentence, ThrowingCallable work) {
        assertThatThrownBy(work)
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains(sentence);
    }
}
