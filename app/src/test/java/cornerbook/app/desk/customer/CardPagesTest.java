package cornerbook.app.desk.customer;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** People from an address book become customers. Cards, cars and people are invented. */
class CardPagesTest {
    private static final String CARDS = String.join(
            "\r\n",
            "BEGIN:VCARD",
            "VERSION:4.0",
            "FN:Ida Tern",
            "TEL:+1 819 555 0190",
            "LANG:fr",
            "END:VCARD",
            "BEGIN:VCARD",
            "VERSION:4.0",
            "FN:O. Grandfontaine",
            "TEL;VALUE=uri:tel:+1-819-555-0177",
            "EMAIL:other@example.org",
            "END:VCARD",
            "BEGIN:VCARD",
            "VERSION:4.0",
            "FN:Grandfontaine\\, Ottilie",
            "TEL:555-0100",
            "END:VCARD",
            "BEGIN:VCARD",
            "VERSION:4.0",
            "FN:Ole Gull",
            "END:VCARD",
            "");

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @TempDir
    private Path folder;

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open() {
        var car = ServedShop.car("demo-08");
        var owner = new Customer("person-1", "Ottilie Grandfontaine", "(819) 555-0177", null, null);
        shop = new ServedShop(
                folder.resolve("book"), List.of(new CarHistory(car.vehicle(), owner, car.sets(), car.visits())));
    }

    private List<Customer> customers() {
        return shop.book().cards().list();
    }

    @Test
    void aFileIsLookedAtBeforeItIsTaken() throws Exception {
        var file = Files.writeString(folder.resolve("people.vcf"), CARDS);
        var page = chromium.open(shop.address(CustomerLinks.cards()), 390);
        page.locator("[type=file]").setInputFiles(file);
        page.getByText("Look at them").click();
        page.locator("#looked").waitFor();
        assertThat(page.locator("#looked").innerText()).contains("3 cards can be taken, one cannot");
        assertThat(page.locator("main").innerText())
                .contains(
                        "Card 4, Ole Gull",
                        "It has neither telephone nor e-mail",
                        "same telephone as Ottilie Grandfontaine",
                        "same name as Ottilie Grandfontaine",
                        "papers: Français");
        assertThat(page.locator("#card\\.1").inputValue()).isEqualTo("new");
        assertThat(page.locator("#card\\.2").inputValue())
                .as("the same telephone")
                .isEqualTo("person-1");
        assertThat(page.locator("#card\\.3").inputValue())
                .as("the same name alone is for a person to say")
                .isEqualTo("left");
        assertThat(customers()).as("nothing is stored by looking").hasSize(1);

        page.getByText("Take these").click();
        page.locator("#taken").waitFor();
        assertThat(page.locator("#taken").innerText()).contains("2 customers are new or completed.");
        assertThat(customers()).extracting(Customer::name).containsExactly("Ida Tern", "Ottilie Grandfontaine");
        assertThat(customers().getLast())
                .as("what the book knew stays, what was missing is added")
                .isEqualTo(
                        new Customer("person-1", "Ottilie Grandfontaine", "(819) 555-0177", "other@example.org", null));
        assertThat(customers().getFirst().language()).isEqualTo("fr");
        var added = customers().getFirst().id();
        assertThat(page.locator("main").innerText()).contains("One customer without a car");
        assertThat(shop.get(CustomerLinks.customer(added)).body()).contains("Ida Tern");
        for (var asked : List.of("tern%20IDA", "555-0190")) {
            assertThat(shop.get("/?q=" + asked).body())
                    .as("whoever calls and has no car here yet is found by the same field")
                    .contains("Without a car in the book", CustomerLinks.customer(added), CarLinks.newCar(added));
        }
        assertThat(shop.get("/?q=Ottilie").body()).doesNotContain("Without a car");
        assertThat(shop.get("/").body()).as("only who was asked for").doesNotContain("Without a car");
        assertThat(shop.book().cars().find("demo-08").orElseThrow().customer().email())
                .isEqualTo("other@example.org");
    }

    @Test
    void theSameFormTwiceCountsOnceAndWhatWasNotChosenIsLeft() throws Exception {
        var form = Map.of("id", UUID.randomUUID().toString(), "cards", CARDS, "card.1", "new", "card.4", "new");
        assertThat(shop.post(CustomerLinks.cards() + "/take", form).body()).contains("One customer is new");
        assertThat(shop.post(CustomerLinks.cards() + "/take", form).body()).contains("Nothing was new.");
        assertThat(customers()).hasSize(2);
        var other =
                Map.of("id", UUID.randomUUID().toString(), "cards", CARDS, "card.1", "person-1", "card.3", "nobody");
        assertThat(shop.post(CustomerLinks.cards() + "/take", other).body())
                .as("only a customer who is like the card is completed by it")
                .contains("Nothing was new.");
    }

    /** The first car of somebody from an address book is that person's: nothing is typed twice. */
    @Test
    void whoCameFromACardBringsACar() throws Exception {
        var form = Map.of("id", UUID.randomUUID().toString(), "cards", CARDS, "card.1", "new");
        shop.post(CustomerLinks.cards() + "/take", form);
        var ida = customers().getFirst();
        assertThat(shop.get(CustomerLinks.customer(ida.id())).body()).contains(CarLinks.newCar(ida.id()));
        assertThat(shop.get(CarLinks.newCar(ida.id())).body()).contains("value=\"Ida Tern\"", "+1 819 555 0190");
        var car = UUID.randomUUID().toString();
        var door = Map.of(
                "car", car,
                "customer", ida.id(),
                "/customer/name", "Ida Tern",
                "/vehicle/plate", "QX 7007",
                "/vehicle/frontAxle/tyreSize", "225/55R18",
                "/wheelSets/0/season", "WINTER");
        assertThat(shop.post(CarLinks.newCar(), door).statusCode()).isEqualTo(303);
        assertThat(shop.book().cars().find(car).orElseThrow().customer()).isEqualTo(ida);
        assertThat(shop.book().cards().listWithoutCar()).isEmpty();
        assertThat(shop.get(CarLinks.newCar("nobody")).statusCode()).isEqualTo(200);
    }

    @Test
    void whoseDataWereErasedIsNeitherFoundNorFilledAgain() throws Exception {
        shop.post(
                CustomerLinks.eraseCustomer("person-1"),
                Map.of("name", "Ottilie Grandfontaine", "reason", "Asked for it", "person", "Bo"));
        assertThat(shop.post(CustomerLinks.cards(), Map.of("cards", CARDS)).body())
                .doesNotContain("person-1");
        var form = Map.of("id", UUID.randomUUID().toString(), "cards", CARDS, "card.2", "person-1");
        assertThat(shop.post(CustomerLinks.cards() + "/take", form).body()).contains("Nothing was new.");
        assertThat(shop.book()
                        .customers()
                        .find("person-1")
                        .orElseThrow()
                        .customer()
                        .email())
                .isNull();
    }

    @Test
    void whatIsNoFileOfCardsIsOneSentence() throws Exception {
        for (var text : List.of("", "name;telephone", "<script>")) {
            var answer = shop.post(CustomerLinks.cards(), Map.of("cards", text));
            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).contains("There is no card in it").doesNotContain("Exception", "<script>");
        }
        var picture = shop.post(CustomerLinks.cards(), Map.of("cards", "\u0011PNG\u0000"));
        assertThat(picture.statusCode()).isEqualTo(422);
        assertThat(picture.body())
                .as("another file than one with cards")
                .contains("There is no card in it", "Customers from an address book");
        assertThat(shop.post(CustomerLinks.cards() + "/take", Map.of("cards", CARDS))
                        .statusCode())
                .as("a form without its number")
                .isEqualTo(400);
        assertThat(customers()).hasSize(1);
    }
}
