package cornerbook.app.desk.order;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.order.OrderLedger;
import cornerbook.app.book.order.OrderList;
import cornerbook.app.book.order.OrderRow;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Calls;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.order.Article;
import cornerbook.core.order.Demand;
import cornerbook.core.order.OrderPart;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.List;
import java.util.Objects;

/** What to order, who is called about it, and what came in. */
public final class OrderListHandler {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public OrderListHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    public void show(ServerRequest request, ServerResponse response) {
        var asked = asked(Form.ofQuery(request));
        pages.send(
                response,
                200,
                "desk/order/list",
                new OrderListPage(
                        desk.today(),
                        asked,
                        list(asked),
                        desk.book().orders().level(),
                        desk.clock().getZone(),
                        letterhead));
    }

    /** The shop keeps the chance, or the costs from which it follows. */
    public void keepLevel(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var asked = asked(typed);
        desk.book().orders().keep(typed.identity("id"), asked.toKeep(), person(typed), desk.now());
        Pages.redirect(response, ShopLinks.order() + "?" + asked.query());
    }

    /** The same list as a file for a spreadsheet or a supplier. */
    public void sendCsv(ServerRequest request, ServerResponse response) {
        var csv = OrderCsv.of(list(asked(Form.ofQuery(request))), Told.reader());
        response.header(HeaderNames.CONTENT_DISPOSITION, "attachment; filename=\"order.csv\"");
        Pages.sendPacked(response, "text/csv; charset=utf-8; header=present", csv.getBytes(UTF_8));
    }

    public void showArticle(ServerRequest request, ServerResponse response) {
        var typed = Form.ofQuery(request);
        sendArticle(response, 200, typed, ArticlePage.Again.NONE);
    }

    private void sendArticle(ServerResponse response, int status, Form typed, ArticlePage.Again again) {
        var asked = asked(typed);
        var article = article(typed);
        var row = list(asked)
                .find(article)
                .orElseGet(() -> new OrderRow(article, List.of(), List.of(), Demand.of(List.of()), 0));
        pages.send(
                response,
                status,
                "desk/order/article",
                new ArticlePage(desk.today(), asked, row, desk.clock().getZone(), desk.reach(), again));
    }

    /** So many were ordered. */
    public void order(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(
                typed,
                response,
                () -> desk.book()
                        .orders()
                        .order(
                                typed.identity("id"),
                                article(typed),
                                pieces(typed),
                                typed.get("supplier"),
                                person(typed),
                                desk.now()));
    }

    /** Pieces of a line came in, or will not come. */
    public void record(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var event = typed.choice("event", List.of(OrderLedger.Event.CAME_IN, OrderLedger.Event.CALLED_OFF))
                .orElseThrow(() -> new PageException(400, new DeskSaid.FormNotUnderstood()));
        change(
                typed,
                response,
                () -> desk.book()
                        .orders()
                        .record(
                                typed.identity("id"),
                                typed.get("line"),
                                event,
                                pieces(typed),
                                person(typed),
                                desk.now()));
    }

    /** Pieces that came in went to a car. */
    public void give(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(
                typed,
                response,
                () -> desk.book()
                        .orders()
                        .give(
                                typed.identity("id"),
                                article(typed),
                                typed.get("visit"),
                                pieces(typed),
                                person(typed),
                                desk.now()));
    }

    /** Somebody says what came of calling a customer. */
    public void answer(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var answer = Calls.answer(typed, desk);
        change(
                typed,
                response,
                () -> desk.book()
                        .orders()
                        .answer(
                                typed.identity("id"),
                                typed.get("visit"),
                                article(typed).part(),
                                answer));
    }

    /** Does what a form asks, and shows the article again; what is refused, with what was typed. */
    private void change(Form typed, ServerResponse response, Runnable work) {
        var query = asked(typed).query();
        var address =
                typed.has("list") ? ShopLinks.order() + "?" + query : ShopLinks.article(article(typed)) + "&" + query;
        try {
            work.run();
        } catch (BookException e) {
            sendArticle(response, 409, typed, again(typed, e));
            return;
        } catch (PageException e) {
            if (e.status() != UNFIT) {
                throw e;
            }
            sendArticle(response, UNFIT, typed, again(typed, e));
            return;
        }
        Pages.redirect(response, address);
    }

    private static ArticlePage.Again again(Form typed, RuntimeException refused) {
        return new ArticlePage.Again(
                Typed.sentence(refused), typed.get("line"), typed.get("pieces"), typed.get("supplier"));
    }

    private Asked asked(Form typed) {
        return Asked.of(
                typed,
                desk.today(),
                desk.book().climate().find(),
                desk.book().orders().level());
    }

    private OrderList list(Asked asked) {
        return OrderList.of(desk.book().orders(), desk.today(), asked.until(), asked.level());
    }

    private static Article article(Form typed) {
        var part = typed.choice("part", List.of(OrderPart.values()))
                .orElseThrow(() -> new PageException(400, new OrderSaid.NoArticle()));
        var kind = typed.get("kind");
        try {
            return new Article(part, kind.isEmpty() ? null : kind, typed.get("text"));
        } catch (IllegalArgumentException e) {
            throw new PageException(400, new OrderSaid.NoArticle());
        }
    }

    private static int pieces(Form typed) {
        if (!typed.get("pieces").matches("\\d{1,7}")) {
            throw new PageException(UNFIT, new OrderSaid.NoQuantity());
        }
        return Integer.parseInt(typed.get("pieces"));
    }

    private static String person(Form typed) {
        return Objects.requireNonNullElse(typed.person(), "");
    }
}
