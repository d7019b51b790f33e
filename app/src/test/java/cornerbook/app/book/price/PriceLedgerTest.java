package cornerbook.app.book.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.store.Arrival;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.price.Job;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.jdbi.v3.core.Jdbi;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prices of an invented shop. */
class PriceLedgerTest {
    private static final LocalDate SPRING = LocalDate.of(2027, 4, 1);
    private static final LocalDate AUTUMN = LocalDate.of(2027, 10, 1);
    private static final Instant NOW = Instant.parse("2027-03-01T14:00:00Z");

    @AutoClose
    private Book book;

    private Path folder;

    @BeforeEach
    void open(@TempDir Path folder) {
        this.folder = folder;
        book = EmptyBook.open(folder);
        book.prices().keep("place", place("CA-QC", CurrencyUnit.CAD, SPRING), "Ida", NOW);
    }

    private static TaxPlace place(String place, CurrencyUnit currency, LocalDate begins, TaxPlace.OfShop... taxes) {
        return new TaxPlace(place, currency, begins, List.of(taxes));
    }

    private static PriceRow row(PriceKey key, @Nullable Integer minutes, @Nullable String amount, LocalDate begins) {
        return new PriceRow(
                key,
                new PriceValue(minutes, amount == null ? null : Money.parse("CAD " + amount), null),
                begins,
                "Ida",
                NOW);
    }

    private void keep(String id, PriceRow... rows) {
        assertThat(book.prices().keep(id, List.of(rows))).isEqualTo(Arrival.STORED);
    }

    @Test
    void aPriceHoldsFromItsDayAndTheOneBeforeStaysToBeRead() {
        keep("1", row(PriceKey.HOUR, null, "110.00", SPRING));
        keep("2", row(PriceKey.HOUR, null, "120.00", AUTUMN));
        assertThat(book.prices().on(SPRING.minusDays(1)).hour()).isEmpty();
        assertThat(book.prices().on(AUTUMN.minusDays(1)).hour()).contains(Money.parse("CAD 110.00"));
        assertThat(book.prices().on(AUTUMN).hour()).contains(Money.parse("CAD 120.00"));
        keep("3", row(PriceKey.HOUR, null, "115.50", SPRING));
        assertThat(book.prices().on(SPRING).hour())
                .as("of two that begin on one day the later")
                .contains(Money.parse("CAD 115.50"));
        assertThat(book.prices().on(AUTUMN).hour()).contains(Money.parse("CAD 120.00"));
        assertThat(book.prices().listRows()).hasSize(3);
    }

    @Test
    void whatTheShopHasNoLongerHasNoPrice() {
        var tyre = PriceKey.tyre(SeasonKind.WINTER, "215/60R16", "Plain");
        keep("1", row(tyre, null, "149.00", SPRING), row(PriceKey.of(Job.PADS), 50, "89.00", SPRING));
        keep("2", row(tyre, null, null, AUTUMN));
        assertThat(book.prices().on(SPRING).tyres(SeasonKind.WINTER, "215/60R16"))
                .hasSize(1);
        assertThat(book.prices().on(AUTUMN).tyres(SeasonKind.WINTER, "215/60R16"))
                .isEmpty();
        assertThat(book.prices().on(AUTUMN).find(Job.PADS))
                .hasValueSatisfying(value -> assertThat(value.minutes()).isEqualTo(50));
    }

    @Test
    void whatIsSaidTwiceCountsOnce() {
        keep("1", row(PriceKey.HOUR, null, "110.00", SPRING));
        assertThat(book.prices().keep("1", List.of(row(PriceKey.HOUR, null, "110.00", SPRING))))
                .isEqualTo(Arrival.ALREADY);
        assertThat(book.prices().listRows()).hasSize(1);
    }

    @Test
    void allOfAFormOrNothing() {
        refused(
                "must be an amount from 0 to",
                row(PriceKey.HOUR, null, "110", SPRING),
                row(PriceKey.HOUR, null, "1000001", SPRING));
        refused(
                "prices here are in CAD",
                new PriceRow(PriceKey.HOUR, PriceValue.of(Money.parse("EUR 9")), SPRING, "", NOW));
        refused("say whose taxes", row(PriceKey.HOUR, null, "110", SPRING.minusDays(1)));
        refused("whole number of minutes", row(PriceKey.of(Job.PADS), 6001, null, SPRING));
        refused("it has no name", row(PriceKey.part(" "), null, "1", SPRING));
        refused("longer than 80", row(PriceKey.part("n".repeat(81)), null, "1", SPRING));
        refused(
                "from 4 to 25 mm",
                new PriceRow(
                        PriceKey.tyre(SeasonKind.WINTER, "215/60R16", ""),
                        new PriceValue(null, Money.parse("CAD 1"), Double.NaN),
                        SPRING,
                        "",
                        NOW));
        assertThat(book.prices().listRows()).isEmpty();
    }

    private void refused(String sentence, PriceRow... rows) {
        assertThatThrownBy(() -> book.prices().keep("x", List.of(rows)))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains(sentence);
    }

    /** A shop that moves: its papers bear other taxes from that day on, and prices in the old coin are none. */
    @Test
    void taxesAreThoseOfThePlaceOrTheShopsOwn() {
        assertThat(book.prices().on(SPRING).taxes()).hasSize(2);
        keep("1", row(PriceKey.HOUR, null, "110.00", SPRING));
        book.prices()
                .keep(
                        "moved",
                        place(
                                "AT",
                                CurrencyUnit.EUR,
                                AUTUMN,
                                new TaxPlace.OfShop("USt", new BigDecimal("20"), "ATU00000000")),
                        "",
                        NOW);
        var there = book.prices().on(AUTUMN);
        assertThat(there.hour()).isEmpty();
        assertThat(there.taxes())
                .singleElement()
                .satisfies(tax -> assertThat(tax.percent()).isEqualByComparingTo("20"));
        assertThat(there.place()).satisfies(place -> {
            assertThat(place).isNotNull();
            assertThat(place.on(AUTUMN)).singleElement().satisfies(each -> {
                assertThat(each.registration()).isEqualTo("ATU00000000");
                assertThat(each.citation()).isNull();
            });
        });
        assertThatThrownBy(() -> book.prices().keep("x", place("Quebec", CurrencyUnit.CAD, SPRING), "", NOW))
                .extracting(InEnglish::told, InstanceOfAssertFactories.STRING)
                .contains("as CA-QC");
    }

    @Test
    void noRowIsEverChanged() {
        keep("1", row(PriceKey.HOUR, null, "110.00", SPRING));
        book.close();
        var rows = Jdbi.create("jdbc:sqlite:" + folder.resolve("book.sqlite"));
        for (var change : List.of(
                "update price set amount = 'CAD 1.00'",
                "delete from price",
                "delete from tax_place",
                "update tax_place set place = 'CA-ON'")) {
            assertThatThrownBy(() -> rows.useHandle(handle -> handle.execute(change)))
                    .hasMessageContaining("never changed");
        }
    }
}
