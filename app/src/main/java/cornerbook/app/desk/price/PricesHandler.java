package cornerbook.app.desk.price;

import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.PriceValue;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.TypedMoney;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.law.TaxOfPlace;
import cornerbook.app.request.PageException;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.price.Job;
import cornerbook.core.price.Tax;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSize;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** Shows the price list, and keeps what is said of it. */
public final class PricesHandler {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private final Desk desk;
    private final Pages pages;

    public PricesHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, Form.EMPTY, "");
    }

    /** Whose taxes papers bear, and in which coin. */
    public void savePlace(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(
                typed,
                response,
                () -> desk.book().prices().keep(typed.identity("id"), place(typed), person(typed), desk.now()));
    }

    /** The hourly rate, and the time and parts of each work; what is as it was adds nothing. */
    public void saveWork(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(typed, response, () -> {
            var rows = new ArrayList<PriceRow>();
            add(rows, typed, PriceKey.HOUR, new PriceValue(null, amount(typed, "hour"), null));
            for (var job : Job.values()) {
                add(
                        rows,
                        typed,
                        PriceKey.of(job),
                        new PriceValue(
                                minutes(typed.get(job.name() + ".minutes")),
                                amount(typed, job.name() + ".amount"),
                                null));
            }
            desk.book().prices().keep(typed.identity("id"), rows);
        });
    }

    /** One tyre of a size; without a price the shop has it no longer. */
    public void saveTyre(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(typed, response, () -> {
            var season = typed.choice("season", List.of(SeasonKind.values()))
                    .orElseThrow(() -> unfit(new PricesSaid.NoSeason()));
            var amount = amount(typed, "tyre.amount");
            var size = typed.get("size");
            // What no tyre is called is offered to nobody; what stands in the list can always be taken off it.
            if (amount != null && TyreSize.find(size).isEmpty()) {
                throw unfit(new PricesSaid.NoTyreSize(size));
            }
            keepOne(
                    typed,
                    PriceKey.tyre(season, size, typed.get("offer")),
                    amount == null ? PriceValue.GONE : new PriceValue(null, amount, tread(typed.get("tread"))));
        });
    }

    /** One part by its name; without a price the shop has it no longer. */
    public void savePart(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        change(
                typed,
                response,
                () -> keepOne(
                        typed,
                        PriceKey.part(typed.get("name")),
                        new PriceValue(null, amount(typed, "part.amount"), null)));
    }

    private void keepOne(Form typed, PriceKey key, PriceValue value) {
        desk.book().prices().keep(typed.identity("id"), List.of(row(typed, key, value)));
    }

    private void add(List<PriceRow> rows, Form typed, PriceKey key, PriceValue value) {
        var before = desk.book().prices().on(begins(typed)).find(key).orElse(PriceValue.GONE);
        if (!before.equals(value)) {
            rows.add(row(typed, key, value));
        }
    }

    private PriceRow row(Form typed, PriceKey key, PriceValue value) {
        return new PriceRow(key, value, begins(typed), person(typed), desk.now());
    }

    private void change(Form typed, ServerResponse response, Runnable work) {
        try {
            work.run();
        } catch (BookException | Refused e) {
            send(response, UNFIT, typed, Typed.sentence(e));
            return;
        } catch (PageException e) {
            if (e.status() != UNFIT) {
                throw e;
            }
            send(response, UNFIT, typed, Typed.sentence(e));
            return;
        }
        Pages.redirect(response, MoneyLinks.prices());
    }

    private TaxPlace place(Form typed) {
        var place = typed.get("place").isEmpty() ? typed.get("elsewhere") : typed.get("place");
        var begins = begins(typed);
        var onFile = TaxOfPlace.of(place, begins);
        var taxes = new ArrayList<TaxPlace.OfShop>();
        for (int at = 0; typed.has("registration." + at); at++) {
            var registration = typed.get("registration." + at);
            if (at < onFile.size()) {
                taxes.add(new TaxPlace.OfShop(onFile.get(at).code().name(), null, registration));
            } else if (onFile.isEmpty()) {
                add(taxes, typed.get("tax." + at), typed.get("percent." + at), registration);
            }
        }
        return new TaxPlace(place, currency(typed.get("currency")), begins, taxes);
    }

    private static void add(List<TaxPlace.OfShop> taxes, String name, String percent, String registration) {
        if (name.isEmpty() != percent.isEmpty()) {
            throw unfit(new PricesSaid.HalfATax());
        }
        if (!name.isEmpty()) {
            if (!percent.matches("\\d{1,3}([.,]\\d{1,6})?")) {
                throw unfit(new PricesSaid.NoPercent(percent));
            }
            var tax = new Tax(Said.verbatim(name), new BigDecimal(percent.replace(',', '.')));
            taxes.add(new TaxPlace.OfShop(name, tax.percent(), registration));
        }
    }

    private static CurrencyUnit currency(String text) {
        try {
            return CurrencyUnit.of(text);
        } catch (IllegalCurrencyException e) {
            throw unfit(new PricesSaid.NoCurrency(text));
        }
    }

    private @Nullable Money amount(Form typed, String field) {
        var currency = desk.book()
                .prices()
                .findPlace(begins(typed))
                .map(TaxPlace::currency)
                .orElse(CurrencyUnit.CAD);
        return typed.get(field).isEmpty() ? null : TypedMoney.of(typed.get(field), currency);
    }

    private static @Nullable Integer minutes(String text) {
        if (text.isEmpty()) {
            return null;
        }
        if (!text.matches("\\d{1,5}")) {
            throw unfit(new PricesSaid.NoMinutes(text));
        }
        return Integer.valueOf(text);
    }

    private static @Nullable Double tread(String text) {
        if (text.isEmpty()) {
            return null;
        }
        if (!text.matches("\\d{1,2}([.,]\\d{1,2})?")) {
            throw unfit(new PricesSaid.NoTread(text));
        }
        return Double.valueOf(text.replace(',', '.'));
    }

    private LocalDate begins(Form typed) {
        try {
            return typed.get("begins").isEmpty() ? desk.today() : LocalDate.parse(typed.get("begins"));
        } catch (DateTimeParseException e) {
            throw unfit(new PricesSaid.NoDay());
        }
    }

    private static String person(Form typed) {
        return Objects.requireNonNullElse(typed.person(), "");
    }

    private static PageException unfit(Said why) {
        return new PageException(UNFIT, why);
    }

    private void send(ServerResponse response, int status, Form typed, String error) {
        var book = desk.book();
        pages.send(
                response,
                status,
                "desk/price/prices",
                new PricesPage(
                        desk.today(),
                        book.prices().on(desk.today()),
                        book.prices().listRows(),
                        book.cars().findUsualPlace().orElse(""),
                        book.clockedTimes().expected(),
                        typed,
                        error));
    }
}
