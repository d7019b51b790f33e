package cornerbook.app.desk.bill;

import cornerbook.app.book.Book;
import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.FreeReason;
import cornerbook.app.request.Told;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.joda.money.Money;

/** What was done without charge, as it stands on a bill: at nothing, and with the reason. */
final class FreeLines {
    private static final String FREE = "FREE.";

    private FreeLines() {}

    /** What stands on no bill that counts, in the language of the last estimate; nothing before there is one. */
    static List<BillLine> of(Book book, Visit visit) {
        var work = book.estimates().of(visit.id());
        var billed = book.bills().of(visit.id()).stream()
                .filter(Bill::counts)
                .flatMap(bill -> bill.lines().stream())
                .map(BillLine::key)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
        return work.last().stream()
                .flatMap(estimate -> work.free(visit).stream()
                        .map(each -> line(each.work().key(), estimate, each.reason(), each.work())))
                .filter(line -> !billed.contains(line.key()))
                .toList();
    }

    private static BillLine line(String key, Estimate estimate, String reason, Said work) {
        var reader = Told.reader().in(estimate.language());
        return new BillLine(
                FREE + key,
                reader.begin(work),
                reader.labels("app/desk/bill").of("without-charge", "reason", FreeReason.said(reason)),
                Money.zero(estimate.currency()));
    }
}
