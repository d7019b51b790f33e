package cornerbook.app.book.bill;

import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLedger;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.law.RepairLaw;
import cornerbook.core.price.Beyond;
import cornerbook.core.price.Tax;
import cornerbook.core.price.Total;
import cornerbook.core.say.Price;
import cornerbook.words.Language;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** Keeps bills, credit notes and what was paid. */
public final class BillLedger {
    private static final int LONGEST_WORDS = 1200;
    private static final String BILLS =
            "select bill.*, coalesce((select words from credit_words where credit_words.bill_number = bill.number), '') as words, (select other.number from bill other where other.credits = bill.number) as credited_by from bill";

    private final Transactions store;

    public BillLedger(Transactions store) {
        this.store = store;
    }

    /**
     * What a new bill is made of.
     *
     * @param matters lines that were agreed, by their key
     * @param more what is charged beside them, within what the place allows
     */
    public record NewBill(
            String id,
            String visitId,
            List<String> matters,
            List<BillLine> more,
            LocalDate day,
            String person,
            Instant madeAt) {}

    /** The bills and credit notes of a visit, by number. */
    public List<Bill> of(String visitId) {
        return store.read(handle -> of(handle, visitId));
    }

    private static List<Bill> of(Handle handle, String visitId) {
        return handle.select(BILLS + " where bill.visit_id = ? order by bill.number", visitId)
                .map((row, context) -> bill(handle, row))
                .list();
    }

    /** The latest bills and credit notes of the shop, the last one first. */
    public List<Bill> listLatest(int most) {
        return store.read(handle -> handle.select(BILLS + " order by bill.number desc limit ?", most)
                .map((row, context) -> bill(handle, row))
                .list());
    }

    public Optional<Bill> find(int number) {
        return store.read(handle -> find(handle, number));
    }

    private static Optional<Bill> find(Handle handle, int number) {
        return handle.select(BILLS + " where bill.number = ?", number)
                .map((row, context) -> bill(handle, row))
                .findFirst();
    }

    /** By what made it: whoever sends a form twice finds what was kept. */
    private static Optional<Integer> findNumber(Handle handle, String id) {
        return handle.select("select number from bill where id = ?", id)
                .mapTo(Integer.class)
                .findFirst();
    }

    private static Bill bill(Handle handle, ResultSet row) throws SQLException {
        int number = row.getInt("number");
        var currency = CurrencyUnit.of(row.getString("currency"));
        var lines = handle.select("select * from bill_line where bill_number = ? order by place_in_list", number)
                .map((line, context) -> new BillLine(
                        line.getString("line_key"),
                        line.getString("words"),
                        line.getString("detail"),
                        Money.parse(line.getString("amount"))))
                .list();
        var taxes = handle.select("select * from bill_tax where bill_number = ? order by place_in_list", number)
                .map((tax, context) -> new KeptTax(
                        new Estimate.Named(
                                new Tax(
                                        EstimateLedger.named(tax.getString("name")),
                                        new BigDecimal(tax.getString("percent"))),
                                tax.getString("registration")),
                        Money.parse(tax.getString("amount"))))
                .list();
        return new Bill(
                number,
                row.getString("id"),
                number(row, "credits"),
                number(row, "credited_by"),
                row.getString("visit_id"),
                Language.valueOf(row.getString("language")),
                LocalDate.parse(row.getString("day")),
                row.getString("place"),
                currency,
                lines,
                taxes.stream().map(KeptTax::named).toList(),
                total(currency, lines, taxes),
                payments(handle, number),
                row.getString("reason"),
                row.getString("words"),
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }

    private record KeptTax(Estimate.Named named, Money amount) {}

    /** As it was kept, and not computed again. */
    private static Total total(CurrencyUnit currency, List<BillLine> lines, List<KeptTax> taxes) {
        var subtotal =
                Money.total(currency, lines.stream().map(BillLine::amount).toList());
        return new Total(
                subtotal,
                taxes.stream()
                        .map(each -> new Total.Share(each.named().tax(), each.amount()))
                        .toList(),
                subtotal.plus(taxes.stream().map(KeptTax::amount).toList()));
    }

    private static @Nullable Integer number(ResultSet row, String column) throws SQLException {
        int number = row.getInt(column);
        return row.wasNull() ? null : number;
    }

    private static List<Payment> payments(Handle handle, int number) {
        return handle.select("select * from bill_payment where bill_number = ? order by place_in_list", number)
                .map((row, context) -> new Payment(
                        row.getString("id"),
                        Payment.Way.valueOf(row.getString("way")),
                        Money.parse(row.getString("amount")),
                        LocalDate.parse(row.getString("paid_on")),
                        row.getString("person"),
                        Instant.parse(row.getString("made_at"))))
                .list();
    }

    /** What was agreed at a visit and stands on no bill that counts. */
    public List<WorkOfVisit.Standing> toBill(String visitId) {
        return store.read(handle -> toBill(handle, visitId));
    }

    private static List<WorkOfVisit.Standing> toBill(Handle handle, String visitId) {
        var billed = new HashSet<String>();
        of(handle, visitId).stream()
                .filter(Bill::counts)
                .flatMap(bill -> bill.lines().stream())
                .map(BillLine::key)
                .filter(Objects::nonNull)
                .forEach(billed::add);
        return new EstimateLedger(Transactions.within(handle))
                .of(visitId).agreed().stream()
                        .filter(each -> !billed.contains(each.line().key()))
                        .toList();
    }

    /**
     * Makes a bill of what was agreed, and takes the next number for it.
     *
     * @return its number; the one that it has where it was made already, by its id
     * @throws BookException when a line was not agreed, or all of it goes beyond what the place allows
     */
    public int make(NewBill made) {
        return store.write(handle -> findNumber(handle, made.id()).orElseGet(() -> make(handle, made)));
    }

    private static int make(Handle handle, NewBill made) {
        var work = new EstimateLedger(Transactions.within(handle)).of(made.visitId());
        var estimate = work.last().orElseThrow(() -> refused(new BillBookSaid.NothingAgreed()));
        var lines = lines(handle, made);
        var total = Total.of(
                estimate.currency(),
                lines.stream().map(BillLine::amount).toList(),
                estimate.taxes().stream().map(Estimate.Named::tax).toList());
        if (!made.more().isEmpty()) {
            checkNotBeyond(handle, made.visitId(), work, estimate, total);
        }
        return insert(
                handle,
                made.id(),
                null,
                made.visitId(),
                estimate,
                lines,
                total,
                "",
                made.day(),
                made.person(),
                made.madeAt());
    }

    private static List<BillLine> lines(Handle handle, NewBill made) {
        var open = toBill(handle, made.visitId());
        var lines = new ArrayList<BillLine>();
        for (var key : new HashSet<>(made.matters())) {
            if (open.stream().noneMatch(each -> each.line().key().equals(key))) {
                throw refused(new BillBookSaid.NotAgreed(key));
            }
        }
        open.stream()
                .map(WorkOfVisit.Standing::line)
                .filter(line -> made.matters().contains(line.key()))
                .forEach(line -> lines.add(
                        new BillLine(line.key(), line.words(), line.detail(), Objects.requireNonNull(line.amount()))));
        for (var line : made.more()) {
            if (line.words().isBlank() || line.words().length() > LONGEST_WORDS) {
                throw refused(new BillBookSaid.WordsTooLong(LONGEST_WORDS));
            }
            lines.add(line);
        }
        if (lines.isEmpty()) {
            throw refused(new BillBookSaid.NoLines());
        }
        return lines;
    }

    /** Together with the bills of the visit that count already. */
    private static void checkNotBeyond(
            Handle handle, String visitId, WorkOfVisit work, Estimate estimate, Total total) {
        var law = RepairLaw.of(estimate.place());
        var agreed = work.totalAgreed().orElseThrow().total();
        var most = Beyond.most(agreed, law.mostOverPercent());
        var together = total.total()
                .plus(of(handle, visitId).stream()
                        .filter(Bill::counts)
                        .map(bill -> bill.total().total())
                        .toList());
        if (together.isGreaterThan(most)) {
            throw refused(new BillBookSaid.BeyondAgreed(
                    new Price(together), new Price(agreed), new Price(most), law.estimate()));
        }
    }

    /**
     * Gives a bill back by a credit note, and takes the next number for it.
     *
     * @param words beside the reason, may be empty; they stand on no paper
     * @return its number; the one that it has where it was made already, by its id
     * @throws BookException when there is no such bill, or it was given back already
     */
    public int credit(
            String id, int number, CreditReason reason, String words, LocalDate day, String person, Instant madeAt) {
        if (words.length() > LONGEST_WORDS) {
            throw refused(new BillBookSaid.WordsTooLong(LONGEST_WORDS));
        }
        return store.write(handle -> findNumber(handle, id).orElseGet(() -> {
            int note = credit(handle, id, number, reason, day, person, madeAt);
            if (!words.isBlank()) {
                new TableRow("credit_words")
                        .set("bill_number", note)
                        .set("words", words.strip())
                        .insert(handle);
            }
            return note;
        }));
    }

    private static int credit(
            Handle handle, String id, int number, CreditReason reason, LocalDate day, String person, Instant madeAt) {
        var bill = get(handle, number);
        if (bill.isCredit()) {
            throw refused(new BillBookSaid.CreditOfCredit(number));
        }
        if (bill.creditedBy() != null) {
            throw refused(new BillBookSaid.GivenBackAlready(number));
        }
        var back = bill.lines().stream()
                .map(line -> new BillLine(
                        line.key(), line.words(), line.detail(), line.amount().negated()))
                .toList();
        var total = new Total(
                bill.total().subtotal().negated(),
                bill.total().taxes().stream()
                        .map(share ->
                                new Total.Share(share.tax(), share.amount().negated()))
                        .toList(),
                bill.total().total().negated());
        var estimate = new Estimate(
                "",
                bill.visitId(),
                0,
                bill.language(),
                day,
                day,
                bill.place(),
                bill.currency(),
                List.of(),
                bill.taxes(),
                "",
                madeAt);
        return insert(handle, id, number, bill.visitId(), estimate, back, total, reason.name(), day, person, madeAt);
    }

    private static int insert(
            Handle handle,
            String id,
            @Nullable Integer credits,
            String visitId,
            Estimate under,
            List<BillLine> lines,
            Total total,
            String reason,
            LocalDate day,
            String person,
            Instant madeAt) {
        // Writers take turns: nobody takes a number between the two.
        int number = handle.select("select coalesce(max(number), 0) + 1 from bill")
                .mapTo(Integer.class)
                .one();
        new TableRow("bill")
                .set("number", number)
                .set("id", id)
                .set("credits", credits)
                .set("visit_id", visitId)
                .set("language", under.language())
                .set("day", day)
                .set("place", under.place())
                .set("currency", under.currency().getCode())
                .set("reason", reason)
                .set("person", person)
                .set("made_at", madeAt)
                .insert(handle);
        for (int place = 0; place < lines.size(); place++) {
            var line = lines.get(place);
            new TableRow("bill_line")
                    .set("bill_number", number)
                    .set("place_in_list", place)
                    .set("line_key", line.key())
                    .set("words", line.words())
                    .set("detail", line.detail())
                    .set("amount", line.amount())
                    .insert(handle);
        }
        for (int place = 0; place < total.taxes().size(); place++) {
            var share = total.taxes().get(place);
            new TableRow("bill_tax")
                    .set("bill_number", number)
                    .set("place_in_list", place)
                    .set("name", EstimateLedger.written(share.tax().name()))
                    .set("percent", share.tax().percent().toPlainString())
                    .set("registration", under.taxes().get(place).registration())
                    .set("amount", share.amount())
                    .insert(handle);
        }
        return number;
    }

    /**
     * Notes that a bill was paid, all of it or a part; or that money of a credit note went back.
     *
     * @throws BookException when there is no such bill, or not so much is open
     */
    public void pay(int number, Payment payment) {
        store.write(handle -> {
            var bill = get(handle, number);
            if (bill.payments().stream().noneMatch(each -> each.id().equals(payment.id()))) {
                var open = bill.open();
                var most = payment.way() == Payment.Way.CASH ? larger(open, Total.inCash(open)) : open;
                var amount = bill.isCredit() ? payment.amount().negated() : payment.amount();
                if (amount.isZero()
                        || amount.isNegative() != open.isNegative()
                        || amount.abs().isGreaterThan(most.abs())) {
                    throw refused(new BillBookSaid.PaymentOutOfRange(new Price(open)));
                }
                new TableRow("bill_payment")
                        .set("id", payment.id())
                        .set("bill_number", number)
                        .set("place_in_list", bill.payments().size())
                        .set("way", payment.way())
                        .set("amount", amount)
                        .set("paid_on", payment.paidOn())
                        .set("person", payment.person())
                        .set("made_at", payment.madeAt())
                        .insert(handle);
            }
            return number;
        });
    }

    private static Money larger(Money one, Money other) {
        return one.abs().isLessThan(other.abs()) ? other : one;
    }

    private static Bill get(Handle handle, int number) {
        return find(handle, number).orElseThrow(() -> refused(new BillBookSaid.NoSuchBill(number)));
    }

    private static BookException refused(BillBookSaid why) {
        return new BookException(why);
    }
}
