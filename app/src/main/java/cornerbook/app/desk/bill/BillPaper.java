package cornerbook.app.desk.bill;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.law.RepairLaw;
import cornerbook.app.sheet.PricedSheet;
import cornerbook.app.sheet.SheetPage.Fact;
import cornerbook.core.car.CarHistory;
import cornerbook.core.price.Tax;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Price;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;

/** A bill or a credit note on paper, in the language in which its lines were agreed. */
final class BillPaper {
    private BillPaper() {}

    static PricedSheet.Content of(Bill bill, CarHistory history, Reader asks) {
        var reader = asks.in(bill.language());
        var w = reader.labels("app/desk/bill");
        var vehicle = history.vehicle();
        var visit = history.getVisit(bill.visitId());
        return new PricedSheet.Content(
                title(bill, history, w),
                List.of(
                        new Fact(w.of("plate"), vehicle.plate()),
                        new Fact(w.of("vin"), Optional.ofNullable(vehicle.vin()).orElse("–")),
                        new Fact(w.of("odometer"), reader.say(Amount.of(visit.odometerKm(), "km"))),
                        new Fact(w.of("customer"), history.customer().name())),
                bill.lines().stream().map(line -> row(line, reader)).toList(),
                totals(bill, reader, w),
                notes(bill, visit.odometerKm(), w),
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

    /** A tax with its rate and the shop's number. */
    static String tax(Tax tax, String registration, Reader reader, Labels w) {
        return w.of(
                "tax",
                "tax",
                tax.name(),
                "percent",
                reader.typed(tax.percent().toPlainString()),
                "registration",
                registration.isEmpty() ? null : registration);
    }

    private static PricedSheet.Row row(BillLine line, Reader reader) {
        return new PricedSheet.Row(line.words(), line.detail(), price(reader, line.amount()));
    }

    private static List<Fact> totals(Bill bill, Reader reader, Labels w) {
        var total = bill.total();
        var totals = new ArrayList<Fact>();
        totals.add(new Fact(w.of("subtotal"), price(reader, total.subtotal())));
        for (int i = 0; i < total.taxes().size(); i++) {
            var share = total.taxes().get(i);
            totals.add(new Fact(
                    tax(share.tax(), bill.taxes().get(i).registration(), reader, w), price(reader, share.amount())));
        }
        totals.add(new Fact(w.of("total"), price(reader, total.total())));
        return totals;
    }

    private static List<String> notes(Bill bill, double odometerKm, Labels w) {
        var notes = new ArrayList<String>();
        if (bill.isCredit()) {
            notes.add(w.of(
                    "gives-back",
                    "n",
                    String.valueOf(Objects.requireNonNull(bill.credits())),
                    "reason",
                    bill.reason()));
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
        notes.add(
                bill.open().isZero()
                        ? w.of("all-paid")
                        : w.of(
                                "to-pay",
                                "amount",
                                new Price(bill.open()),
                                "cash",
                                new Price(bill.total().inCash())));
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
