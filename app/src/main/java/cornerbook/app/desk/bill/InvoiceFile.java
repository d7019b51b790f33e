package cornerbook.app.desk.bill;

import cornerbook.app.book.Book;
import cornerbook.app.book.bill.Bill;
import cornerbook.app.book.bill.BillLine;
import cornerbook.app.book.customer.CustomerLedger;
import cornerbook.app.book.estimate.EstimateLedger;
import cornerbook.app.book.store.BookException;
import cornerbook.app.sheet.Letterhead;
import cornerbook.app.sheet.PricedFacts;
import cornerbook.core.car.CarHistory;
import cornerbook.core.price.Tax;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.joda.money.Money;

/**
 * A bill or a credit note as a structured invoice for other programs: EN 16931-1:2017 in UBL 2.1. The numbers BT and BG are those of
 * the standard's model. Its one tax is VAT, once on each line: several taxes of a place stand as one rate, and each by itself in a note
 * ({@code docs/methods/tax.md}).
 */
public final class InvoiceFile {
    private static final String STANDARD = "urn:cen.eu:en16931:2017";

    /** UNTDID 1001. */
    private static final String INVOICE = "380";

    private static final String CREDIT_NOTE = "381";

    /** UNTDID 5305: taxed, and taxed at nothing. */
    private static final String STANDARD_RATE = "S";

    private static final String ZERO_RATE = "Z";

    /** UN/ECE Recommendation 20: one. */
    private static final String ONE = "C62";

    /** By rule BR-DEC. */
    private static final int MOST_DECIMALS = 2;

    private static final Set<String> COUNTRIES = Set.of(Locale.getISOCountries());

    /** Writes tax numbers with EL for GR: rule BR-CO-09. */
    private static final Map<String, String> OTHER_PREFIX = Map.of("GR", "EL");

    private final Bill bill;
    private final CarHistory history;
    private final Letterhead shop;
    private final List<Registered> taxes;
    private final Reader reader;
    private final Labels w;
    private final UblWriter xml;

    private InvoiceFile(Bill bill, CarHistory history, Letterhead shop, List<Registered> taxes, Reader asks) {
        this.bill = bill;
        this.history = history;
        this.shop = shop;
        this.taxes = taxes;
        reader = asks.in(bill.language());
        w = reader.labels("app/desk/bill");
        xml = new UblWriter(bill.isCredit() ? "CreditNote" : "Invoice");
    }

    /** A tax of the bill with the number under which the shop collects it; may be empty. */
    private record Registered(Tax tax, Money amount, String registration) {}

    /** By what it is kept as, without its ending. */
    static String name(Bill bill) {
        return (bill.isCredit() ? "credit-" : "bill-") + bill.number();
    }

    /**
     * The file of a bill as it stands.
     *
     * @param today on which the shop's registrations are looked up where the bill has none
     * @throws BookException with what the standard asks for and nobody has said
     */
    public static byte[] of(Book book, Bill bill, CarHistory history, Letterhead shop, LocalDate today, Reader asks) {
        if (bill.currency().getDecimalPlaces() > MOST_DECIMALS) {
            throw missing(new BillSaid.TooManyDecimals(bill.currency().getCode()));
        }
        var taxes = taxes(book, bill, today);
        check(!shop.shopName().isBlank(), new BillSaid.ShopNameMissing());
        check(COUNTRIES.contains(country(bill.place())), new BillSaid.CountryMissing(bill.place()));
        check(taxes.stream().anyMatch(each -> !each.registration().isBlank()), new BillSaid.RegistrationMissing());
        check(
                !history.customer().name().isBlank()
                        && !history.customer().name().equals(CustomerLedger.ERASED),
                new BillSaid.CustomerMissing());
        check(
                COUNTRIES.contains(country(history.vehicle().jurisdiction())),
                new BillSaid.CustomerCountryMissing(history.vehicle().name()));
        return new InvoiceFile(bill, history, shop, taxes, asks).write();
    }

    private static void check(boolean isSaid, Said otherwise) {
        if (!isSaid) {
            throw missing(otherwise);
        }
    }

    private static BookException missing(Said what) {
        return new BookException(what);
    }

    private static String country(String place) {
        return place.replaceFirst("-.*", "");
    }

    /** A registration that came later than the bill counts for it, too. */
    private static List<Registered> taxes(Book book, Bill bill, LocalDate today) {
        var now = book.prices().findPlace(today).filter(place -> place.place().equals(bill.place()));
        var taxes = new ArrayList<Registered>();
        for (int at = 0; at < bill.taxes().size(); at++) {
            var named = bill.taxes().get(at);
            taxes.add(new Registered(
                    named.tax(),
                    bill.total().taxes().get(at).amount(),
                    named.registration().isBlank()
                            ? now.map(place -> place.registration(
                                            EstimateLedger.written(named.tax().name())))
                                    .orElse("")
                            : named.registration()));
        }
        return taxes;
    }

    private byte[] write() {
        xml.value("CustomizationID", STANDARD);
        xml.value("ID", String.valueOf(bill.number()));
        xml.value("IssueDate", bill.day());
        xml.value(bill.isCredit() ? "CreditNoteTypeCode" : "InvoiceTypeCode", bill.isCredit() ? CREDIT_NOTE : INVOICE);
        notes().forEach(note -> xml.value("Note", note));
        xml.value("DocumentCurrencyCode", bill.currency().getCode());
        if (bill.isCredit()) {
            xml.within(
                    "BillingReference",
                    () -> xml.within(
                            "InvoiceDocumentReference",
                            () -> xml.value("ID", String.valueOf(Objects.requireNonNull(bill.credits())))));
        }
        xml.within("AccountingSupplierParty", () -> xml.within("Party", this::writeSeller));
        xml.within("AccountingCustomerParty", () -> xml.within("Party", this::writeBuyer));
        xml.within(
                "Delivery",
                () -> xml.value(
                        "ActualDeliveryDate", history.getVisit(bill.visitId()).date()));
        xml.within("PaymentTerms", () -> xml.value("Note", w.of("payment-terms")));
        writeTax();
        xml.within("LegalMonetaryTotal", this::writeTotals);
        for (int at = 0; at < bill.lines().size(); at++) {
            writeLine(at + 1, bill.lines().get(at));
        }
        return xml.bytes();
    }

    /** BT-22: of which car it is, what a credit note gives back and why, and each tax by itself. */
    private List<String> notes() {
        var notes = new ArrayList<String>();
        notes.add(BillPaper.title(bill, history, w));
        if (bill.isCredit()) {
            notes.add(w.of(
                    "gives-back",
                    "n",
                    String.valueOf(Objects.requireNonNull(bill.credits())),
                    "reason",
                    bill.why(reader)));
        }
        for (var each : taxes) {
            notes.add(w.of(
                    "tax-note",
                    "tax",
                    PricedFacts.tax(each.tax(), each.registration(), reader),
                    "amount",
                    new Price(each.amount())));
        }
        return notes;
    }

    /** BG-4. */
    private void writeSeller() {
        taxes.stream()
                .map(Registered::registration)
                .filter(number -> !number.isBlank())
                .distinct()
                .forEach(number -> xml.within("PartyIdentification", () -> xml.value("ID", number)));
        xml.within("PostalAddress", () -> {
            if (!shop.address().isBlank()) {
                xml.value("StreetName", shop.address());
            }
            writeCountry(bill.place());
        });
        var registration = taxes.stream()
                .map(Registered::registration)
                .filter(number -> !number.isBlank())
                .findFirst()
                .orElseThrow();
        xml.within("PartyTaxScheme", () -> {
            xml.value("CompanyID", isVatNumber(registration) ? compact(registration) : registration);
            writeScheme(isVatNumber(registration) ? "VAT" : "TAX");
        });
        xml.within("PartyLegalEntity", () -> xml.value("RegistrationName", shop.shopName()));
    }

    /** Whether it begins as BT-31 has to; any other is BT-32. */
    private boolean isVatNumber(String registration) {
        var country = country(bill.place());
        return taxes.size() == 1 && compact(registration).startsWith(OTHER_PREFIX.getOrDefault(country, country));
    }

    private static String compact(String registration) {
        return registration.replaceAll("[\\s.-]", "").toUpperCase(Locale.ROOT);
    }

    /** BG-7. No more of the customer than the paper has. */
    private void writeBuyer() {
        xml.within("PostalAddress", () -> writeCountry(history.vehicle().jurisdiction()));
        xml.within(
                "PartyLegalEntity",
                () -> xml.value("RegistrationName", history.customer().name()));
    }

    private void writeCountry(String place) {
        if (!place.equals(country(place))) {
            xml.value("CountrySubentity", place);
        }
        xml.within("Country", () -> xml.value("IdentificationCode", country(place)));
    }

    private void writeScheme(String id) {
        xml.within("TaxScheme", () -> xml.value("ID", id));
    }

    /** BG-23. */
    private void writeTax() {
        var all = above(bill.total().total().minus(bill.total().subtotal()));
        xml.within("TaxTotal", () -> {
            xml.value("TaxAmount", all);
            xml.within("TaxSubtotal", () -> {
                xml.value("TaxableAmount", above(bill.total().subtotal()));
                xml.value("TaxAmount", all);
                xml.within("TaxCategory", this::writeCategory);
            });
        });
    }

    private void writeCategory() {
        var percent = taxes.stream().map(each -> each.tax().percent()).reduce(BigDecimal.ZERO, BigDecimal::add);
        xml.value("ID", percent.signum() == 0 ? ZERO_RATE : STANDARD_RATE);
        xml.value("Percent", percent.stripTrailingZeros().toPlainString());
        writeScheme("VAT");
    }

    /** BG-22: what was paid, and BT-114, what cash cannot pay. */
    private void writeTotals() {
        var total = bill.total();
        var paid = Money.total(
                bill.currency(),
                bill.payments().stream().map(payment -> payment.amount()).toList());
        xml.value("LineExtensionAmount", above(total.subtotal()));
        xml.value("TaxExclusiveAmount", above(total.subtotal()));
        xml.value("TaxInclusiveAmount", above(total.total()));
        xml.value("PrepaidAmount", above(paid));
        xml.value(
                "PayableRoundingAmount", above(bill.open().minus(total.total()).plus(paid)));
        xml.value("PayableAmount", above(bill.open()));
    }

    /** BG-25; no price is below nothing (rule BR-27), and what a line takes away is a piece less. */
    private void writeLine(int number, BillLine line) {
        var amount = above(line.amount());
        xml.within(bill.isCredit() ? "CreditNoteLine" : "InvoiceLine", () -> {
            xml.value("ID", String.valueOf(number));
            xml.value(
                    bill.isCredit() ? "CreditedQuantity" : "InvoicedQuantity",
                    Map.of("unitCode", ONE),
                    amount.isNegative() ? "-1" : "1");
            xml.value("LineExtensionAmount", amount);
            xml.within("Item", () -> {
                if (!line.detail().isBlank()) {
                    xml.value("Description", line.detail());
                }
                xml.value("Name", line.words());
                xml.within("ClassifiedTaxCategory", this::writeCategory);
            });
            xml.within("Price", () -> xml.value("PriceAmount", amount.abs()));
        });
    }

    /** A credit note says what it gives back above nothing. */
    private Money above(Money amount) {
        return bill.isCredit() ? amount.negated() : amount;
    }
}
