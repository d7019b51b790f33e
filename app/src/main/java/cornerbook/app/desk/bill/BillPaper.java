package cornerbook.app.desk.bill;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.law.RepairLaw;
import cornerbook.app.sheet.PricedFacts;
import cornerbook.app.sheet.PricedSheet;
import cornerbook.core.car.CarHistory;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.joda.money.Money;

/** A bill or a credit note on paper, in the language in which its lines were agreed. */
final class BillPaper {
    private BillPaper() {}

    /** @param agreed who agreed to what, when and by which way, and what was done without charge */
    static PricedSheet.Content of(Balance balance, CarHistory history, List<Said> agreed, Reader asks) {
        var bill = balance.bill();
        var reader = asks.in(bill.language());
        var w = reader.labels("app/desk/bill");
        return new PricedSheet.Content(
                title(bill, history, w),
                PricedFacts.of(history, bill.visitId(), reader),
                bill.lines().stream().map(line -> row(line, reader)).toList(),
                PricedFacts.totals(
                        bill.total(),
                        w.of("subtotal"),
                        bill.taxes().stream().map(Estimate.Named::registration).toList(),
                        reader),
                Stream.concat(
                                notes(balance, history.getVisit(bill.visitId()).odometerKm(), reader, w).stream(),
                                agreed.stream().map(reader::say))
                        .toList(),
                "");
    }

    static String title(Bill bill, CarHistory history, Labels w) {
        return w.of(
                "paper-title",
                "credit",
                bill.isCredit(),
                "n",
                String.valueOf(bill.number()),
                "day",
                bill.day(),
                "car",
                history.vehicle().name());
    }

    private static PricedSheet.Row row(BillLine line, Reader reader) {
        return new PricedSheet.Row(line.words(), line.detail(), price(reader, line.amount()));
    }

    private static List<String> notes(Balance balance, double odometerKm, Reader reader, Labels w) {
        var bill = balance.bill();
        var notes = new ArrayList<String>();
        if (bill.isCredit()) {
            notes.add(w.of(
                    "gives-back",
                    "n",
                    String.valueOf(Objects.requireNonNull(bill.credits())),
                    "reason",
                    bill.why(reader)));
        }
        bill.payments()
                .forEach(payment -> notes.add(w.of(
                        "paid",
                        "amount",
                        new Price(payment.amount()),
                        "way",
                        payment.way(),
                        "day",
                        payment.paidOn(),
                        "back",
                        bill.isCredit())));
        notes.add(balance.told(w));
        var warranty = RepairLaw.of(bill.place()).warranty();
        if (warranty != null && !bill.isCredit()) {
            notes.add(w.of(
                    "warranty",
                    "day",
                    warranty.until(bill.day()),
                    "km",
                    Amount.of(odometerKm + warranty.km(), "km"),
                    "citation",
                    warranty.citation()));
        }
        return notes;
    }

    private static String price(Reader reader, Money money) {
        return reader.say(new Price(money));
    }
}
