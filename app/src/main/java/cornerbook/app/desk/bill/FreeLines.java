package cornerbook.app.desk.bill;

import cornerbook.app.book.Book;
import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.FreeReason;
import cornerbook.app.book.estimate.WorkAnswer;
import cornerbook.app.request.Told;
import cornerbook.core.car.Visit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

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
                        .filter(each -> !billed.contains(key(each)))
                        .map(each -> line(each, estimate)))
                .toList();
    }

    private static String key(WorkAnswer free) {
        return FREE + free.work().key();
    }

    private static BillLine line(WorkAnswer free, Estimate estimate) {
        var reader = Told.reader().in(estimate.language());
        return new BillLine(
                key(free),
                reader.begin(free.work()),
                reader.labels("app/desk/bill").of("without-charge", "reason", FreeReason.said(free.reason())),
                estimate.nothing());
    }
}
