package cornerbook.app.book.price;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.core.say.Said;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** Keeps what things cost, and whose taxes the shop's papers bear. */
public final class PriceLedger {
    private static final int LONGEST_NAME = 80;
    private static final int MOST = 1_000_000;
    private static final int LEAST_TREAD_MM = 4;
    private static final int MOST_TREAD_MM = 25;

    private final Transactions store;

    public PriceLedger(Transactions store) {
        this.store = store;
    }

    /** All that was ever said, thing by thing, earliest first. */
    public List<PriceRow> listRows() {
        return store.read(PriceLedger::rows);
    }

    private static List<PriceRow> rows(Handle handle) {
        return handle.select("select * from price order by item, kind, name, offer, place_in_list")
                .map((row, context) -> row(row))
                .list();
    }

    private static PriceRow row(ResultSet row) throws SQLException {
        var minutes = row.getObject("minutes");
        var amount = row.getString("amount");
        var tread = row.getObject("new_tread");
        return new PriceRow(
                new PriceKey(
                        PriceKey.Item.valueOf(row.getString("item")),
                        row.getString("kind"),
                        row.getString("name"),
                        row.getString("offer")),
                new PriceValue(
                        minutes == null ? null : ((Number) minutes).intValue(),
                        amount == null ? null : Money.parse(amount),
                        tread == null ? null : ((Number) tread).doubleValue()),
                LocalDate.parse(row.getString("begins")),
                row.getString("person"),
                Instant.parse(row.getString("made_at")));
    }

    /** What things cost on a day. */
    public PriceList on(LocalDate day) {
        return store.read(handle -> {
            var place = findPlace(handle, day).orElse(null);
            return new PriceList(day, place, standing(rows(handle), place, day));
        });
    }

    /** Of each thing the row that began last; of two that began on one day, the later one. */
    private static List<PriceRow> standing(List<PriceRow> rows, @Nullable TaxPlace place, LocalDate day) {
        if (place == null) {
            return List.of();
        }
        var standing = new LinkedHashMap<PriceKey, PriceRow>();
        for (var row : rows) {
            var amount = row.value().amount();
            if (!row.begins().isAfter(day)
                    && (amount == null || amount.getCurrencyUnit().equals(place.currency()))) {
                standing.merge(row.key(), row, (one, other) -> other.begins().isBefore(one.begins()) ? one : other);
            }
        }
        return standing.values().stream().filter(row -> !row.value().isGone()).toList();
    }

    /** Whose taxes count on a day; empty before the shop has said. */
    public Optional<TaxPlace> findPlace(LocalDate day) {
        return store.read(handle -> findPlace(handle, day));
    }

    private static Optional<TaxPlace> findPlace(Handle handle, LocalDate day) {
        return handle.select(
                        "select * from tax_place where begins <= ? order by begins desc, place_in_list desc limit 1",
                        day.toString())
                .map((row, context) -> new TaxPlace(
                        row.getString("place"),
                        CurrencyUnit.of(row.getString("currency")),
                        LocalDate.parse(row.getString("begins")),
                        taxes(handle, row.getString("id"))))
                .findFirst();
    }

    private static List<TaxPlace.OfShop> taxes(Handle handle, String placeId) {
        return handle.select("select * from shop_tax where tax_place_id = ? order by place_in_list", placeId)
                .map((row, context) -> new TaxPlace.OfShop(
                        row.getString("name"), percent(row.getString("percent")), row.getString("registration")))
                .list();
    }

    private static @Nullable BigDecimal percent(@Nullable String text) {
        return text == null ? null : new BigDecimal(text);
    }

    /**
     * Things cost this from a day on, all of it or nothing; what was said already, by its id, counts once.
     *
     * @throws BookException when one of it cannot be a price, or the shop has not said in which coin
     */
    public Arrival keep(String id, List<PriceRow> rows) {
        rows.forEach(PriceLedger::check);
        return store.write(handle -> {
            boolean stored = false;
            for (int i = 0; i < rows.size(); i++) {
                stored |= keep(handle, id + "/" + i, rows.get(i));
            }
            return Arrival.of(stored);
        });
    }

    private static boolean keep(Handle handle, String id, PriceRow row) {
        var place =
                findPlace(handle, row.begins()).orElseThrow(() -> new BookException(new PriceBookSaid.NoPlaceYet()));
        var amount = row.value().amount();
        if (amount != null && !amount.getCurrencyUnit().equals(place.currency())) {
            throw new BookException(
                    new PriceBookSaid.OtherCurrency(place.currency().getCode()));
        }
        var key = row.key();
        int before = TableRow.count(
                handle,
                "price where item = ? and kind = ? and name = ? and offer = ?",
                key.item().name(),
                key.kind(),
                key.name(),
                key.offer());
        return new TableRow("price")
                .set("id", id)
                .set("item", key.item())
                .set("kind", key.kind())
                .set("name", key.name())
                .set("offer", key.offer())
                .set("place_in_list", before)
                .set("minutes", row.value().minutes())
                .set("amount", amount)
                .set("new_tread", row.value().newTreadMm())
                .set("begins", row.begins())
                .set("person", row.person())
                .set("made_at", row.madeAt())
                .insertOnce(handle);
    }

    private static void check(PriceRow row) {
        var key = row.key();
        if (Stream.of(key.name(), key.offer()).anyMatch(each -> each.length() > LONGEST_NAME)) {
            throw refused(new PriceBookSaid.NameTooLong(LONGEST_NAME));
        }
        if ((key.item() == PriceKey.Item.TYRE || key.item() == PriceKey.Item.PART)
                && key.name().isBlank()) {
            throw refused(new PriceBookSaid.NameMissing());
        }
        var amount = row.value().amount();
        if (amount != null && (amount.isNegative() || amount.getAmount().compareTo(BigDecimal.valueOf(MOST)) > 0)) {
            throw refused(new PriceBookSaid.PriceOutOfRange(MOST));
        }
        var minutes = row.value().minutes();
        if (minutes != null && (minutes < 0 || minutes > PriceValue.MOST_MINUTES)) {
            throw refused(new PriceBookSaid.MinutesOutOfRange(PriceValue.MOST_MINUTES));
        }
        var tread = row.value().newTreadMm();
        if (tread != null && !(tread >= LEAST_TREAD_MM && tread <= MOST_TREAD_MM)) {
            throw refused(new PriceBookSaid.TreadOutOfRange(LEAST_TREAD_MM, MOST_TREAD_MM));
        }
    }

    private static @Nullable String written(@Nullable BigDecimal percent) {
        return percent == null ? null : percent.toPlainString();
    }

    /**
     * The shop's papers bear the taxes of this place from its day on.
     *
     * @throws BookException when a place or a name cannot be one
     */
    public Arrival keep(String id, TaxPlace place, String person, Instant madeAt) {
        if (!place.place().matches("[A-Z]{2}(-[A-Z0-9]{1,3})?")) {
            throw refused(new PriceBookSaid.NoPlace());
        }
        for (var tax : place.taxes()) {
            if (tax.name().isBlank()) {
                throw refused(new PriceBookSaid.NameMissing());
            }
            if (tax.name().length() > LONGEST_NAME || tax.registration().length() > LONGEST_NAME) {
                throw refused(new PriceBookSaid.NameTooLong(LONGEST_NAME));
            }
        }
        return store.write(handle -> {
            var arrival = Arrival.of(new TableRow("tax_place")
                    .set("id", id)
                    .set("place_in_list", TableRow.count(handle, "tax_place"))
                    .set("place", place.place())
                    .set("currency", place.currency().getCode())
                    .set("begins", place.begins())
                    .set("person", person)
                    .set("made_at", madeAt)
                    .insertOnce(handle));
            if (arrival == Arrival.STORED) {
                int at = 0;
                for (var tax : place.taxes()) {
                    new TableRow("shop_tax")
                            .set("tax_place_id", id)
                            .set("place_in_list", at++)
                            .set("name", tax.name())
                            .set("percent", written(tax.percent()))
                            .set("registration", tax.registration())
                            .insert(handle);
                }
            }
            return arrival;
        });
    }

    private static BookException refused(Said why) {
        return new BookException(why);
    }
}
