package cornerbook.app.desk.customer;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.Book;
import cornerbook.app.book.bill.BillLedger;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.bill.Payment;
import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.coming.AskedMatter;
import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.mail.Letter;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.app.mail.Delivery;
import cornerbook.app.mail.Delivery.Outcome;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Visit;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Matter;
import cornerbook.core.coming.Purpose;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** A person asks for what the shop knows, or to be forgotten. */
class CustomerPagesTest {
    private static final Instant WHEN = Instant.parse("2026-11-25T09:00:00Z");
    private static final String NAME = "Ottilie Grandfontaine";
    private static final String PHONE = "555-0177";
    private static final String EMAIL = "ottilie@example.org";

    @TempDir
    private Path folder;

    private static CarHistory car() {
        var car = ServedShop.car("demo-08");
        return new CarHistory(
                car.vehicle(), new Customer("person-1", NAME, PHONE, EMAIL, "fr"), car.sets(), car.visits());
    }

    private static Visit last(CarHistory car) {
        return car.visits().getLast();
    }

    private ServedShop shop() {
        return new ServedShop(folder, List.of(car()));
    }

    private static void write(Book book) {
        var visit = last(car()).id();
        book.bay().addDeclined(visit, new Declined("d-1", "PADS", "Renew the pads", true, NAME, "Bo", WHEN));
        book.contacts()
                .add(
                        "c-1",
                        "person-1",
                        List.of(new ContactAnswer(
                                Purpose.SEASON, Channel.E_MAIL, false, "Ottilie hears enough of us", "Bo", WHEN)));
        book.mails()
                .begin(
                        new Letter(
                                "m-1",
                                "person-1",
                                EMAIL,
                                "fr",
                                "Ottilie’s car",
                                "Bonjour Ottilie, bientôt",
                                List.of(new AskedMatter(visit, Matter.NEXT_VISIT))),
                        "Bo",
                        WHEN);
        book.mails().end("m-1", new Delivery(Outcome.REFUSED, "550 no mailbox " + EMAIL), WHEN);
        book.estimates().keep(estimate(visit));
        book.estimates()
                .agree(
                        new Agreement(
                                "g-1",
                                "e-1",
                                Agreement.Way.TELEPHONE,
                                NAME,
                                PHONE,
                                Language.FRENCH,
                                "Oui",
                                "M1 2L3 4",
                                Map.of(0, true),
                                "Bo",
                                WHEN),
                        ServedShop.TODAY);
        book.bills().make(new BillLedger.NewBill("b-1", visit, List.of("A"), List.of(), ServedShop.TODAY, "Bo", WHEN));
        book.bills()
                .pay(1, new Payment("p-1", Payment.Way.CARD, Money.parse("CAD 1.00"), ServedShop.TODAY, "Bo", WHEN));
        book.bills()
                .credit(
                        "k-1",
                        1,
                        CreditReason.COMPLAINT,
                        "Ottilie did not like the sound",
                        ServedShop.TODAY,
                        "Bo",
                        WHEN);
        book.bay().addRemark(visit, new Remark("r-1", Remark.Topic.COMPLAINT, "Ottilie hears a scraping", "Bo", WHEN));
    }

    private static Estimate estimate(String visitId) {
        return new Estimate(
                "e-1",
                visitId,
                0,
                Language.FRENCH,
                ServedShop.TODAY,
                ServedShop.TODAY,
                "CA-QC",
                CurrencyUnit.CAD,
                List.of(new EstimateLine("A", "", null, "Plaquettes", "", "", false, Money.parse("CAD 1.00"))),
                List.of(),
                "Bo",
                WHEN);
    }

    @Test
    void allThatIsKeptOfAPersonStandsOnOnePageAndInOneFile() throws Exception {
        try (var shop = shop()) {
            write(shop.book());
            assertThat(shop.get("/cars/demo-08").body()).contains(CustomerLinks.customer("person-1"));
            var page = shop.get(CustomerLinks.customer("person-1")).body();
            assertThat(page)
                    .contains(
                            NAME, PHONE, EMAIL, car().vehicle().plate(), "Renew the pads", "Ottilie hears a scraping");
            assertThat(page).as("who gives it out, on paper").contains("<p class=\"printed\"><strong>" + DemoShop.NAME);
            var file = new JsonMapper()
                    .readTree(shop.get(CustomerLinks.customerFile("person-1")).body());
            assertThat(file.path("customer").path("phone").stringValue()).isEqualTo(PHONE);
            assertThat(file.path("cars").size()).isEqualTo(1);
            var line = file.path("estimates").path(0).path("lines").path(0);
            assertThat(line.path("words").stringValue()).isEqualTo("Plaquettes");
            assertThat(line.path("amount").stringValue()).isEqualTo("CAD 1.00");
            assertThat(line.path("agreed").booleanValue()).isTrue();
            var bill = file.path("bills").path(0);
            assertThat(bill.path("number").intValue()).isEqualTo(1);
            assertThat(bill.path("total").stringValue()).isEqualTo("CAD 1.00");
            assertThat(bill.path("paid").path(0).path("way").stringValue()).isEqualTo("CARD");
            assertThat(page)
                    .contains("Plaquettes: $1.00 before taxes, agreed", "Bill 1 of 25 Nov 2026", "$1.00 paid on")
                    .as("seven years by section 230(4)(b) of the Income Tax Act")
                    .contains("kept until 25 Nov 2033", "section 230(4)(b)");
            assertThat(file.path("mentions").valueStream())
                    .extracting(mention -> mention.path("kind").stringValue())
                    .contains("DECLINED", "REMARK", "AGREED");
            assertThat(shop.get(CustomerLinks.customer("nobody")).statusCode()).isEqualTo(404);
        }
    }

    @Test
    void whatIsErasedStandsInNoFileOfTheBookAndTheCarsRecordStays() throws Exception {
        var plate = car().vehicle().plate();
        List<String> findings;
        try (var shop = shop()) {
            write(shop.book());
            shop.waitUntilJudged();
            findings = gravest(shop.book());
            var fields = Map.of("name", NAME, "reason", "Asked for it", "person", "Bo", "plates", "1", "words", "1");
            assertThat(shop.post(CustomerLinks.eraseCustomer("person-1"), fields)
                            .statusCode())
                    .isEqualTo(303);
            assertThat(shop.get(CustomerLinks.customer("person-1")).body()).contains("Asked for it");
            var read = shop.book().cars().find("demo-08").orElseThrow();
            assertThat(read.visits())
                    .usingRecursiveComparison()
                    .ignoringFieldsMatchingRegexes(".*notes")
                    .isEqualTo(car().visits());
            assertThat(read.visits())
                    .as("whoever wrote them may have named the person")
                    .allSatisfy(visit -> assertThat(visit.card().notes()).isIn(null, "", "–"));
            assertThat(read.customer()).isEqualTo(new Customer("person-1", "–", null, null, null));
            shop.waitUntilJudged();
            assertThat(gravest(shop.book())).isEqualTo(findings);
            assertThat(shop.book().contacts().listOf("person-1").agreed(Purpose.SEASON, Channel.E_MAIL))
                    .as("that there was an answer stays")
                    .isFalse();
            assertThat(shop.book().mails().listOf("person-1"))
                    .as("that there was an e-mail stays")
                    .singleElement()
                    .satisfies(mail -> assertThat(mail.last().outcome()).isEqualTo(Outcome.REFUSED));
            assertThat(shop.book().bills().of(last(car()).id()).getLast().why(Reader.DEFAULT))
                    .as("the numbered paper stays as it is")
                    .isEqualTo("a complaint was settled");
            assertThat(shop.book().search().find("ottilie", 0, 10).cars()).isEmpty();
            assertThat(shop.get("/cars/demo-08").statusCode()).isEqualTo(200);
        }
        assertThat(inFiles(NAME)).isEmpty();
        assertThat(inFiles(PHONE)).isEmpty();
        assertThat(inFiles(EMAIL)).isEmpty();
        assertThat(inFiles("M1 2L3 4")).as("what was drawn").isEmpty();
        assertThat(inFiles("ottilie")).as("words by which cars are found").isEmpty();
        assertThat(inFiles("hears a scraping")).isEmpty();
        assertThat(inFiles("hears enough of us")).isEmpty();
        assertThat(inFiles("did not like the sound")).isEmpty();
        assertThat(inFiles("Bonjour Ottilie")).isEmpty();
        assertThat(inFiles("no mailbox")).isEmpty();
        assertThat(inFiles(plate)).isEmpty();
        assertThat(inFiles(car().vehicle().name())).as("found where it stands").isNotEmpty();
    }

    @Test
    void nothingIsErasedByMistake() throws Exception {
        try (var shop = shop()) {
            for (var fields : List.of(
                    Map.of("name", "Ottilie", "reason", "Asked for it", "person", "Bo"),
                    Map.of("name", NAME, "reason", "", "person", "Bo"),
                    Map.of("name", NAME, "reason", "Asked for it"))) {
                var answer = shop.post(CustomerLinks.eraseCustomer("person-1"), fields);
                assertThat(answer.statusCode()).isEqualTo(422);
                assertThat(answer.body()).contains("nothing was erased");
            }
            assertThat(shop.book().cars().find("demo-08").orElseThrow().customer())
                    .isEqualTo(car().customer());
        }
    }

    /** What was said is added to, with its words and who took it; the last answer stands. */
    @Test
    void theCustomerAgreesAndTakesItBack() throws Exception {
        try (var shop = shop()) {
            assertThat(shop.get(CustomerLinks.customer("person-1")).body())
                    .contains("Pouvons-nous vous appeler", "section 6(6)(c)", "ask first");
            assertThat(answer(shop, "AGREES", "purpose.OTHER", "channel.E_MAIL"))
                    .isEqualTo(303);
            assertThat(shop.get(CustomerLinks.customer("person-1")).body()).contains("e-mail: yes, agreed");
            assertThat(answer(shop, "DECLINES", "purpose.OTHER", "channel.E_MAIL", "channel.TELEPHONE"))
                    .isEqualTo(303);
            assertThat(shop.get(CustomerLinks.customer("person-1")).body())
                    .contains("e-mail: no, declined", "telephone: no, declined", "May we?", "told to Bo");
            assertThat(shop.book().contacts().listOf("person-1").list())
                    .extracting(ContactAnswer::agreed)
                    .containsExactly(true, false, false);
            assertThat(answer(shop, "AGREES", "purpose.OTHER")).isEqualTo(409);
            assertThat(answer(shop, "AGREES", "channel.E_MAIL")).isEqualTo(409);
            assertThat(answer(shop, "PERHAPS", "purpose.OTHER", "channel.E_MAIL"))
                    .isEqualTo(400);
            var unticked = shop.post(
                    CustomerLinks.contactAnswer("person-1"),
                    Map.of("answer", "AGREES", "purpose.OTHER", "1", "words", "Asked at the counter", "id", id()));
            assertThat(unticked.body())
                    .as("the page again, with what was typed")
                    .contains("Choose at least one purpose and one way.", "Asked at the counter")
                    .containsPattern("purpose.OTHER[^>]* checked");
            assertThat(unticked.body().split("checked", -1))
                    .as("nothing of the other form")
                    .hasSize(2);
            var wordless =
                    Map.of("answer", "AGREES", "purpose.OTHER", "1", "channel.E_MAIL", "1", "words", "", "id", id());
            assertThat(shop.post(CustomerLinks.contactAnswer("person-1"), wordless)
                            .body())
                    .contains("Write down what the customer was asked");
            assertThat(shop.book().contacts().listOf("person-1").list()).hasSize(3);
        }
    }

    private static String id() {
        return UUID.randomUUID().toString();
    }

    private static int answer(ServedShop shop, String answer, String... ticks) throws Exception {
        var fields = new HashMap<>(Map.of("id", id(), "answer", answer, "words", "May we?", "person", "Bo"));
        for (var tick : ticks) {
            fields.put(tick, "yes");
        }
        return shop.post(CustomerLinks.contactAnswer("person-1"), fields).statusCode();
    }

    /** A telephone alone is erased where nobody asked for more. */
    @Test
    void plateAndNotesStayWhereTheyWereNotChosen() throws Exception {
        try (var shop = shop()) {
            write(shop.book());
            shop.post(CustomerLinks.eraseCustomer("person-1"), Map.of("name", NAME, "reason", "Sold", "person", "Bo"));
            var page = shop.get(CustomerLinks.customer("person-1")).body();
            assertThat(page).contains(car().vehicle().plate(), "Ottilie hears a scraping", "Renew the pads");
            assertThat(page).doesNotContain(NAME, PHONE);
        }
    }

    /** Six years after the end of the tax year of the visit (Canada, Income Tax Act, section 230(4)(b)). */
    @Test
    void whoWasHereOnlyBeforeTheYearsThatPapersAreKeptIsListed() throws Exception {
        var car = car();
        var first = car.visits().getFirst();
        try (var shop = new ServedShop(
                folder,
                List.of(new CarHistory(
                        car.vehicle(),
                        car.customer(),
                        car.sets(),
                        List.of(first.withOdometer(
                                ServedShop.TODAY.minusYears(7).minusDays(1), first.odometerKm())))))) {
            assertThat(shop.get(CustomerLinks.goneCustomers()).body()).contains(NAME, "230(4)(b)");
        }
    }

    @Test
    void whoWasHereSinceIsNot() throws Exception {
        try (var shop = shop()) {
            assertThat(shop.get(CustomerLinks.goneCustomers()).body()).doesNotContain(NAME);
        }
    }

    private static List<String> gravest(Book book) {
        return book.cars().list().stream()
                .map(VehicleSummary::verdict)
                .map(verdict -> String.valueOf(verdict.gravest()))
                .toList();
    }

    private List<Path> inFiles(String text) throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> contains(file, text))
                    .toList();
        }
    }

    private static boolean contains(Path file, String text) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1)
                    .contains(new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
