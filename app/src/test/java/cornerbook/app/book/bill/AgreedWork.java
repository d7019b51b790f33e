package cornerbook.app.book.bill;

import cornerbook.app.book.Book;
import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.law.TaxOfPlace;
import cornerbook.words.Language;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Work that invented customers have agreed to, for tests to bill. */
public final class AgreedWork {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    public static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");

    private AgreedWork() {}

    /** Puts these invented cars into the book. */
    public static void cars(Book book, String... ids) {
        book.records()
                .addCars(DemoShop.histories(TODAY).stream()
                        .filter(car -> List.of(ids).contains(car.vehicle().id()))
                        .toList());
    }

    /** Makes an estimate of these amounts in dollars by what they are for, in the order of their names, and agrees to all of it. */
    public static void agree(Book book, String visitId, String place, Map<String, String> amounts) {
        answer(book, visitId, place, amounts, Set.of(), Set.of());
    }

    /** The same, but declines some of it; safety depends on some of it. */
    public static void answer(
            Book book,
            String visitId,
            String place,
            Map<String, String> amounts,
            Set<String> declined,
            Set<String> safety) {
        answer(
                book,
                visitId,
                place,
                CurrencyUnit.CAD,
                TaxOfPlace.of(place, TODAY).stream()
                        .map(tax -> new Estimate.Named(tax.tax(), "invented"))
                        .toList(),
                amounts,
                declined,
                safety);
    }

    /** All of it, with taxes of another shop. */
    public static void agree(
            Book book,
            String visitId,
            String place,
            CurrencyUnit currency,
            List<Estimate.Named> taxes,
            Map<String, String> amounts) {
        answer(book, visitId, place, currency, taxes, amounts, Set.of(), Set.of());
    }

    private static void answer(
            Book book,
            String visitId,
            String place,
            CurrencyUnit currency,
            List<Estimate.Named> taxes,
            Map<String, String> amounts,
            Set<String> declined,
            Set<String> safety) {
        var lines = new TreeMap<>(amounts)
                .descendingMap().entrySet().stream()
                        .map(each -> new EstimateLine(
                                each.getKey(),
                                "",
                                null,
                                each.getKey(),
                                "",
                                "",
                                safety.contains(each.getKey()),
                                Money.parse(currency + " " + each.getValue())))
                        .toList();
        var estimate = new Estimate(
                UUID.randomUUID().toString(),
                visitId,
                0,
                Language.ENGLISH,
                TODAY,
                TODAY,
                place,
                currency,
                lines,
                taxes,
                "",
                NOW);
        book.estimates().keep(estimate);
        book.estimates()
                .agree(
                        new Agreement(
                                UUID.randomUUID().toString(),
                                estimate.id(),
                                Agreement.Way.SPOKEN,
                                "Ottilie",
                                "",
                                Language.ENGLISH,
                                "Yes",
                                null,
                                IntStream.range(0, lines.size())
                                        .boxed()
                                        .collect(Collectors.toMap(
                                                line -> line,
                                                line -> !declined.contains(
                                                        lines.get(line).key()))),
                                "Ida",
                                NOW),
                        TODAY);
    }

    /** The bill of all of it. */
    public static int bill(Book book, String visitId) {
        return book.bills()
                .make(new BillLedger.NewBill(
                        UUID.randomUUID().toString(),
                        visitId,
                        book.bills().toBill(visitId).stream()
                                .map(each -> each.line().key())
                                .toList(),
                        List.of(),
                        TODAY,
                        "Ida",
                        NOW));
    }
}
