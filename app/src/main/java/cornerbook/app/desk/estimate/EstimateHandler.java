package cornerbook.app.desk.estimate;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
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
import cornerbook.core.days.PlannedWork;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Reader;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.IntFunction;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What the work of a visit would cost: drafted, kept as it is given to the customer, printed, and put before the customer. */
public final class EstimateHandler {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;
    private final IntFunction<String> publicAddress;
    private final Agreeing agreeing;

    /** @param publicAddress of the server, by the port that it was asked at */
    public EstimateHandler(Desk desk, Pages pages, Letterhead letterhead, IntFunction<String> publicAddress) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
        this.publicAddress = publicAddress;
        this.agreeing = new Agreeing(desk, pages, letterhead.shopName());
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, open(request), Form.EMPTY, "", null);
    }

    /** The estimate as it is given to the customer. */
    public void keep(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        try {
            desk.book().estimates().keepInTurn(estimate(open, typed));
        } catch (BookException e) {
            if (e.isFailure()) {
                throw e;
            }
            send(response, UNFIT, open, typed, Typed.sentence(e), null);
            return;
        } catch (PageException e) {
            if (e.status() != UNFIT) {
                throw e;
            }
            send(response, UNFIT, open, typed, Typed.sentence(e), null);
            return;
        }
        Pages.redirect(response, MoneyLinks.estimate(open.visit().id()) + "#kept");
    }

    private Estimate estimate(OpenVisit open, Form typed) {
        var prices = desk.book().prices().on(desk.today());
        var place = prices.place();
        if (place == null) {
            throw new PageException(UNFIT, new EstimateSaid.NoPlaceYet());
        }
        var reader = desk.customerReader(open.history());
        return new Estimate(
                typed.identity("id"),
                open.visit().id(),
                turn(typed),
                reader.language(),
                desk.today(),
                validUntil(typed),
                place.place(),
                place.currency(),
                lines(open, typed, prices, place, reader),
                place.on(desk.today()).stream()
                        .map(each -> new Estimate.Named(each.tax(), each.registration()))
                        .toList(),
                person(typed),
                desk.now());
    }

    /** How many were given when the page was shown. */
    private static int turn(Form typed) {
        return typed.get("turn").matches("\\d{1,4}") ? Integer.parseInt(typed.get("turn")) : 0;
    }

    private LocalDate validUntil(Form typed) {
        var day = day(typed.get("valid"));
        if (day == null || day.isBefore(desk.today())) {
            throw new PageException(UNFIT, new EstimateSaid.NoDay());
        }
        return day;
    }

    private static @Nullable LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            return null;
        }
    }

    private List<EstimateLine> lines(OpenVisit open, Form typed, PriceList prices, TaxPlace place, Reader reader) {
        var draft = draft(open, prices, reader);
        var lines = new ArrayList<EstimateLine>();
        for (int at = 0; typed.has("key." + at); at++) {
            if (typed.has("take." + at)) {
                var key = typed.get("key." + at);
                var line = draft.stream()
                        .map(DraftLine::line)
                        .filter(each -> each.key().equals(key))
                        .findFirst()
                        .orElseThrow(() -> new PageException(UNFIT, new EstimateSaid.FindingsChanged()));
                lines.add(line.priced(amount(typed.get("amount." + at), place)));
            }
        }
        for (int at = 0; typed.has("own." + at); at++) {
            var words = typed.get("own." + at);
            if (!words.isEmpty()) {
                var amount = amount(typed.get("own-amount." + at), place);
                lines.add(new EstimateLine(
                        "OWN." + words,
                        "",
                        null,
                        words,
                        "",
                        "",
                        false,
                        amount == null
                                ? prices.find(PriceKey.part(words))
                                        .map(PriceValue::amount)
                                        .orElse(null)
                                : amount));
            }
        }
        return lines;
    }

    private static @Nullable Money amount(String text, TaxPlace place) {
        return text.isEmpty() ? null : TypedMoney.of(text, place.currency());
    }

    public void sendPdf(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var work = desk.book().estimates().of(open.visit().id());
        var turn = Pages.queryValue(request, "turn");
        var estimate = work.estimates().stream()
                .filter(each -> String.valueOf(each.turn()).equals(turn))
                .findFirst()
                .orElseThrow(() -> new PageException(404, new EstimateSaid.NoEstimate()));
        Pages.sendPdf(
                response,
                "estimate-" + estimate.day(),
                PricedSheet.render(
                        letterhead,
                        EstimatePaper.of(
                                estimate,
                                work,
                                open.history(),
                                Told.reader().at(desk.clock().getZone())),
                        Told.reader().in(estimate.language())));
    }

    /** The customer answers here; or says it, and somebody writes it down. */
    public void showAgree(ServerRequest request, ServerResponse response) {
        var open = open(request);
        agreeing.show(response, last(open), where(open, Form.ofQuery(request)));
    }

    public void agree(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        agreeing.take(response, last(open), where(open, typed), typed);
    }

    private static Agreeing.Where where(OpenVisit open, Form typed) {
        var way = typed.get("way").isEmpty()
                ? Agreement.Way.SIGNED
                : typed.choice("way", List.of(Agreement.Way.SIGNED, Agreement.Way.TELEPHONE, Agreement.Way.SPOKEN))
                        .orElseThrow(() -> new PageException(400, new EstimateSaid.NoWay()));
        var visitId = open.visit().id();
        return new Agreeing.Where(MoneyLinks.agree(visitId), MoneyLinks.estimate(visitId), way, person(typed));
    }

    private Estimate last(OpenVisit open) {
        return desk.book()
                .estimates()
                .of(open.visit().id())
                .last()
                .orElseThrow(() -> new PageException(404, new EstimateSaid.NoEstimate()));
    }

    /** Work that was held on the bay sheet is put before the customer here; without a price, the shop gives it one first. */
    public void offer(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var typed = Form.read(request);
        var visitId = open.visit().id();
        var offers = new WorkOffers(desk, open, desk.advice(open));
        var offer = ChargedWork.find(typed.get("work"))
                .map(offers::of)
                .orElseThrow(() -> new PageException(400, new EstimateSaid.NoSuchWork()));
        var amount = offer.line().amount();
        if (amount == null) {
            Pages.redirect(response, MoneyLinks.estimate(visitId));
            return;
        }
        offers.give(offer, amount, UUID.randomUUID().toString(), person(typed), desk.now());
        Pages.redirect(response, MoneyLinks.agree(visitId));
    }

    /** An address by which the customer answers without pairing. It is shown in this answer and never again. */
    public void makeLink(ServerRequest request, ServerResponse response) {
        var open = open(request);
        var secret = Secret.make();
        desk.book()
                .estimates()
                .link(
                        UUID.randomUUID().toString(),
                        last(open).id(),
                        Secret.hash(secret),
                        person(Form.read(request)),
                        desk.now());
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        send(
                response,
                200,
                open,
                Form.EMPTY,
                "",
                publicAddress.apply(request.localPeer().port()) + MoneyLinks.AGREE + secret);
    }

    private OpenVisit open(ServerRequest request) {
        return desk.getOpenVisit(Pages.pathValue(request, "id"));
    }

    private List<DraftLine> draft(OpenVisit open, PriceList prices, Reader reader) {
        return Draft.of(desk.assess(open), prices, planned(open), reader);
    }

    /** What the car came for on the day of the visit; null where nobody has agreed it. */
    private @Nullable PlannedWork planned(OpenVisit open) {
        return desk.book().appointments().listOf(open.history().vehicle().id()).stream()
                .filter(each -> open.visit().id().equals(each.visitId())
                        || each.plan().day().equals(open.visit().date()))
                .map(Appointment::plan)
                .map(plan -> plan.work())
                .findFirst()
                .orElse(null);
    }

    private static String person(Form typed) {
        return Objects.requireNonNullElse(typed.person(), "");
    }

    private void send(
            ServerResponse response, int status, OpenVisit open, Form typed, String error, @Nullable String address) {
        pages.sendJudged(response, open.unjudged(), () -> {
            var prices = desk.book().prices().on(desk.today());
            return new Pages.View(
                    status,
                    "desk/estimate/estimate",
                    new EstimatePage(
                            desk.today(),
                            open,
                            prices,
                            draft(open, prices, Told.reader()),
                            desk.book().estimates().of(open.visit().id()),
                            address,
                            typed,
                            error));
        });
    }
}
