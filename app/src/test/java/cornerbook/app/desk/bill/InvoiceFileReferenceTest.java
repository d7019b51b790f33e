package cornerbook.app.desk.bill;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.bill.Payment;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.core.price.Tax;
import cornerbook.core.price.TaxCode;
import cornerbook.core.say.Said;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

/** Bills as files, against the schema of UBL 2.1 and the rules of EN 16931 by {@link InvoiceRules}. Prices and numbers are invented. */
class InvoiceFileReferenceTest {
    private static final String VISIT = "demo-08-v7";
    private static InvoiceRules rules;

    @AutoClose
    private ServedShop shop;

    @BeforeAll
    static void load() throws Exception {
        rules = new InvoiceRules();
    }

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car("demo-08")));
    }

    private byte[] billed(Map<String, String> amounts, String place) throws Exception {
        AgreedWork.agree(shop.book(), VISIT, place, amounts);
        return file(AgreedWork.bill(shop.book(), VISIT));
    }

    private byte[] file(int number) throws Exception {
        return shop.getBytes(MoneyLinks.billXml(number));
    }

    private static Document read(byte[] file) throws Exception {
        return DocumentBuilderFactory.newDefaultNSInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(file));
    }

    private static String text(Document document, String element) {
        return document.getElementsByTagNameNS("*", element).item(0).getTextContent();
    }

    private static byte[] spoilt(byte[] file, String what, String by) {
        var text = new String(file, StandardCharsets.UTF_8);
        assertThat(text).containsPattern(what);
        return text.replaceFirst(what, by).getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aBillOfOneTaxIsValid() throws Exception {
        var file = billed(Map.of("Pads", "100.00", "Brakes <freed> & \"measured\"", "0.33"), "CA-ON");
        assertThat(rules.violatedBy(file)).isEmpty();
        assertThat(text(read(file), "Percent")).isEqualTo("13");
    }

    /** The example of Revenu Québec, 100.00 + 5.00 + 9.98: its two taxes are one rate of 14.975 %, and a note names each. */
    @Test
    void twoTaxesStandAsOneRate() throws Exception {
        var file = billed(Map.of("Pads", "100.00"), "CA-QC");
        assertThat(rules.violatedBy(file)).isEmpty();
        var document = read(file);
        assertThat(text(document, "Percent")).isEqualTo("14.975");
        assertThat(text(document, "TaxAmount")).isEqualTo("14.98");
        assertThat(new String(file, StandardCharsets.UTF_8))
                .contains("GST 5 % (invented): $5.00", "QST 9.975 % (invented): $9.98");
    }

    /** Two taxes rounded each by itself, and one rounded together, may be a cent apart: the rules bear it. */
    @Test
    void centsOfTwoRoundingsAreBorne() throws Exception {
        var file = billed(Map.of("Bolt", "0.10"), "CA-QC");
        assertThat(text(read(file), "TaxAmount")).isEqualTo("0.02");
        assertThat(rules.violatedBy(file)).isEmpty();
    }

    /** A shop in a country of the European Union: 25 % of 1000.00, by hand. */
    @Test
    void vatIsValidWithNoMapping() throws Exception {
        var vat = new Estimate.Named(new Tax(Said.verbatim("VAT"), new BigDecimal("25")), "SE 123 456 7890 01");
        AgreedWork.agree(
                shop.book(), VISIT, "SE", CurrencyUnit.EUR, List.of(vat), Map.of("Pads", "900.00", "Bolt", "100.00"));
        var file = file(AgreedWork.bill(shop.book(), VISIT));
        assertThat(rules.violatedBy(file)).isEmpty();
        var document = read(file);
        assertThat(text(document, "TaxInclusiveAmount")).isEqualTo("1250.00");
        assertThat(text(document, "CompanyID")).isEqualTo("SE123456789001");
    }

    @Test
    void whatWasPaidIsTakenOffAndCashIsRounded() throws Exception {
        billed(Map.of("Pads", "100.00"), "CA-QC");
        pay("a", Payment.Way.CARD, "14.98");
        var partly = file(1);
        assertThat(rules.violatedBy(partly)).isEmpty();
        assertThat(text(read(partly), "PayableAmount")).isEqualTo("100.00");

        shop.book().bills().credit("c", 1, CreditReason.WRONG_CAR, "Wrong car", ServedShop.TODAY, "", now());
        AgreedWork.bill(shop.book(), VISIT);
        shop.book()
                .bills()
                .pay(3, new Payment("b", Payment.Way.CASH, Money.parse("CAD 115.00"), ServedShop.TODAY, "", now()));
        var cash = file(3);
        assertThat(rules.violatedBy(cash)).isEmpty();
        assertThat(text(read(cash), "PayableRoundingAmount")).isEqualTo("0.02");
        assertThat(text(read(cash), "PayableAmount")).isEqualTo("0.00");
    }

    private void pay(String id, Payment.Way way, String amount) {
        shop.book().bills().pay(1, new Payment(id, way, Money.parse("CAD " + amount), ServedShop.TODAY, "", now()));
    }

    private static Instant now() {
        return ServedShop.CLOCK.instant();
    }

    @Test
    void aCreditNoteIsValidAndNamesItsBill() throws Exception {
        billed(Map.of("Pads", "100.00"), "CA-QC");
        shop.book().bills().credit("c", 1, CreditReason.WRONG_CAR, "Wrong car", ServedShop.TODAY, "", now());
        var file = file(2);
        assertThat(rules.violatedBy(file)).isEmpty();
        var document = read(file);
        assertThat(document.getDocumentElement().getLocalName()).isEqualTo("CreditNote");
        assertThat(text(document, "InvoiceDocumentReference")).isEqualTo("1");
        assertThat(text(document, "PayableAmount")).isEqualTo("114.98");
    }

    /** What a line takes away is a piece less: no price is below nothing (BR-27). */
    @Test
    void aLineBelowNothingIsValid() throws Exception {
        assertThat(rules.violatedBy(billed(Map.of("Pads", "100.00", "Rebate", "-10.00"), "CA-ON")))
                .isEmpty();
    }

    /** What is without charge is a line with a price of nothing. */
    @Test
    void aLineOfNothingIsValid() throws Exception {
        assertThat(rules.violatedBy(billed(Map.of("Pads", "100.00", "Hose without charge", "0.00"), "CA-QC")))
                .isEmpty();
    }

    /** So that the tests above can fail. */
    @Test
    void theRulesFindWhatIsSpoilt() throws Exception {
        var file = billed(Map.of("Pads", "100.00"), "CA-ON");
        assertThat(rules.violatedBy(spoilt(file, "113.00(?=</cbc:TaxInclusive)", "114.00")))
                .contains("BR-CO-15");
        assertThat(rules.violatedBy(spoilt(file, "100.00(?=</cbc:TaxExclusive)", "101.00")))
                .contains("BR-CO-13");
        assertThat(rules.violatedBy(spoilt(file, "<cbc:Percent>13", "<cbc:Percent>33")))
                .contains("BR-S-09");
        assertThat(rules.violatedBy(spoilt(file, "<cbc:RegistrationName>[^<]*", "<cbc:RegistrationName>")))
                .contains("BR-06");
        assertThat(rules.violatedBy(spoilt(file, "<cac:PaymentTerms>.*</cac:PaymentTerms>", "")))
                .contains("BR-CO-25");
        assertThat(rules.violatedBy(spoilt(file, "<cbc:IssueDate>[^<]*</cbc:IssueDate>", "")))
                .contains("BR-03")
                .anySatisfy(violated -> assertThat(violated).startsWith("schema: "));
    }

    @Test
    void whatNobodySaidIsAskedForInOneSentence() throws Exception {
        var tax = new Estimate.Named(new Tax(TaxCode.HST, new BigDecimal("13")), "");
        AgreedWork.agree(shop.book(), VISIT, "CA-ON", CurrencyUnit.CAD, List.of(tax), Map.of("Pads", "100.00"));
        AgreedWork.bill(shop.book(), VISIT);
        var refused = shop.get(MoneyLinks.billXml(1));
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("the number under which the shop collects its tax");

        var given = new TaxPlace.OfShop("HST", null, "123456789 RT0001");
        shop.book()
                .prices()
                .keep("p", new TaxPlace("CA-ON", CurrencyUnit.CAD, ServedShop.TODAY, List.of(given)), "", now());
        assertThat(rules.violatedBy(file(1))).isEmpty();
        assertThat(shop.get(MoneyLinks.billXml(7)).statusCode()).isEqualTo(404);
    }
}
