package cornerbook.app.desk.bill;

import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLedger;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.bill.Payment;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.WorkTold;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.TypedMoney;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.app.sheet.PricedSheet;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/** Makes bills of what was agreed, notes what was paid, and gives back what was wrong. */
public final class BillHandler {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private static final int LISTED = 200;

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public BillHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    /** The latest of the shop. */
    public void list(ServerRequest request, ServerResponse response) {
        pages.send(
                response,
                200,
                "desk/bill/bills",
                new BillListPage(desk.book().bills().listLatest(LISTED)));
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, open(request), Form.EMPTY, "");
    }

    public void sendPdf(ServerRequest request, ServerResponse response) {
        var bill = bill(request);
        var history = desk.getHistoryOfVisit(bill.visitId());
        Pages.sendPdf(
                response,
                InvoiceFile.name(bill),
                PricedSheet.render(
                        letterhead,
                        BillPaper.of(
                                Balance.of(bill, desk.book().bills()::find),
                                history,
                                WorkTold.agreedAndFree(
                                        desk.book().estimates().of(bill.visitId()), history.getVisit(bill.visitId())),
                                Told.reader().at(desk.clock().getZone())),
                        Told.reader().in(bill.language())));
    }

    /** For other programs. */
    public void sendXml(ServerRequest request, ServerResponse response) {
        var bill = bill(request);
        byte[] file;
        try {
            file = InvoiceFile.of(
                    desk.book(),
                    bill,
                    desk.getHistoryOfVisit(bill.visitId()),
                    letterhead,
                    desk.today(),
                    Told.reader().at(desk.clock().getZone()));
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            throw new PageException(UNFIT, e.said());
        }
        response.header(HeaderNames.CONTENT_TYPE, "application/xml");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.header(
                HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"%s.xml\"".formatted(InvoiceFile.name(bill)));
        response.send(file);
    }

    private Bill bill(ServerRequest request) {
        return Optional.of(Pages.pathValue(request, "number"))
                .filter(each -> each.matches("\\d{1,9}"))
                .flatMap(each -> desk.book().bills().find(Integer.parseInt(each)))
                .orElseThrow(() -> new PageException(404, new BillSaid.NoBill()));
    }

    /** The bill of what was agreed. */
    public void make(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        change(open, typed, response, () -> {
            var matters = new ArrayList<String>();
            for (int at = 0; typed.has("key." + at); at++) {
                if (typed.has("take." + at)) {
                    matters.add(typed.get("key." + at));
                }
            }
            desk.book()
                    .bills()
                    .make(new BillLedger.NewBill(
                            typed.identity("id"),
                            open.visit().id(),
                            matters,
                            Stream.concat(FreeLines.of(desk.book(), open.visit()).stream(), more(open, typed).stream())
                                    .toList(),
                            desk.today(),
                            person(typed),
                            desk.now()));
        });
    }

    private List<BillLine> more(OpenVisit open, Form typed) {
        var currency = desk.book()
                .estimates()
                .of(open.visit().id())
                .last()
                .map(Estimate::currency)
                .orElse(CurrencyUnit.CAD);
        var lines = new ArrayList<BillLine>();
        for (int at = 0; typed.has("more." + at); at++) {
            var words = typed.get("more." + at);
            if (!words.isEmpty()) {
                lines.add(new BillLine(null, words, "", TypedMoney.of(typed.get("more-amount." + at), currency)));
            }
        }
        return lines;
    }

    /** All of a bill, or a part of it, was paid; or money of a credit note went back. */
    public void pay(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        change(open, typed, response, () -> {
            var bill = bill(open, typed);
            var way = typed.choice("way", List.of(Payment.Way.values()))
                    .orElseThrow(() -> new PageException(UNFIT, new BillSaid.NoWay()));
            desk.book()
                    .bills()
                    .pay(
                            bill.number(),
                            new Payment(
                                    typed.identity("id"),
                                    way,
                                    TypedMoney.of(typed.get("amount"), bill.currency()),
                                    paidOn(typed),
                                    person(typed),
                                    desk.now()));
        });
    }

    private LocalDate paidOn(Form typed) {
        try {
            return typed.get("on").isEmpty() ? desk.today() : LocalDate.parse(typed.get("on"));
        } catch (DateTimeParseException e) {
            throw new PageException(UNFIT, new BillSaid.NoDay());
        }
    }

    /** A credit note in the place of a change. */
    public void credit(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        change(
                open,
                typed,
                response,
                () -> desk.book()
                        .bills()
                        .credit(
                                typed.identity("id"),
                                bill(open, typed).number(),
                                reason(typed),
                                typed.get("words"),
                                desk.today(),
                                person(typed),
                                desk.now()));
    }

    private static CreditReason reason(Form typed) {
        return typed.choice("reason", List.of(CreditReason.values()))
                .orElseThrow(() -> new PageException(UNFIT, new BillSaid.NoReason()));
    }

    /** One of the visit's own. */
    private Bill bill(OpenVisit open, Form typed) {
        return desk.book().bills().of(open.visit().id()).stream()
                .filter(each -> String.valueOf(each.number()).equals(typed.get("number")))
                .findFirst()
                .orElseThrow(() -> new PageException(404, new BillSaid.NoBill()));
    }

    private void change(OpenVisit open, Form typed, ServerResponse response, Runnable work) {
        try {
            work.run();
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            send(response, UNFIT, open, typed, Typed.sentence(e));
            return;
        } catch (PageException e) {
            if (e.status() != UNFIT) {
                throw e;
            }
            send(response, UNFIT, open, typed, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, MoneyLinks.bill(open.visit().id()));
    }

    private OpenVisit open(ServerRequest request) {
        return desk.getOpenVisit(Pages.pathValue(request, "id"));
    }

    private static String person(Form typed) {
        return Objects.requireNonNullElse(typed.person(), "");
    }

    private void send(ServerResponse response, int status, OpenVisit open, Form typed, String error) {
        var book = desk.book();
        var visitId = open.visit().id();
        pages.send(
                response,
                status,
                "desk/bill/bill",
                new BillPage(
                        desk.today(),
                        open,
                        book.estimates().of(visitId),
                        book.bills().of(visitId),
                        book.bills().toBill(visitId),
                        FreeLines.of(book, open.visit()),
                        typed,
                        error));
    }
}
