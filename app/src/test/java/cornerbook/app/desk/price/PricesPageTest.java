package cornerbook.app.desk.price;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.price.PriceKey;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.price.Job;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.joda.money.Money;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The price list at the desk. Prices are invented. */
class PricesPageTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car("demo-08")));
    }

    @Test
    void aShopSaysItsPlaceAndItsPrices() {
        var page = chromium.open(shop.address(MoneyLinks.prices()), 390);
        page.locator("#registration\\.0").fill("123 RT");
        page.getByText("Keep place and taxes").click();
        page.getByText("123 RT").waitFor();
        assertThat(page.locator("main").innerText()).contains("GST", "5 %", "QST", "9.975 %", "section 165(1)");

        page.locator("#hour").fill("115");
        page.getByLabel("Minutes: brake pads").fill("50");
        page.getByLabel("Parts: brake pads").fill("89,90");
        page.getByText("Keep these prices").click();
        page.locator("#size").fill("235/50R19");
        page.locator("#offer").fill("Plain");
        page.locator("#tyre\\.amount").fill("219.00");
        page.getByText("Keep the tyre").click();
        page.getByText("$219.00").waitFor();

        var list = shop.book().prices().on(ServedShop.TODAY);
        assertThat(list.hour()).contains(Money.parse("CAD 115.00"));
        assertThat(list.find(Job.PADS)).hasValueSatisfying(value -> {
            assertThat(value.minutes()).isEqualTo(50);
            assertThat(value.amount()).isEqualTo(Money.parse("CAD 89.90"));
        });
        assertThat(shop.book().prices().listRows())
                .as("what was left as it was adds nothing")
                .hasSize(3);

        page.getByText("No longer").click();
        page.getByText("2 earlier or later prices").waitFor();
        assertThat(shop.book().prices().on(ServedShop.TODAY).of(PriceKey.Item.TYRE))
                .isEmpty();
    }

    /** What is shown is read back, in either language and with either mark. */
    @Test
    void amountsAndPerCentsHaveTheCommaInFrench() throws Exception {
        assertThat(post("/place", own("9,975")).statusCode()).isEqualTo(303);
        for (var hour : List.of("115,50", "116.50")) {
            assertThat(post("/work", Map.of("hour", hour)).statusCode()).isEqualTo(303);
            var french = shop.send(shop.request(MoneyLinks.prices()).header("Accept-Language", "fr"))
                    .body();
            assertThat(french)
                    .contains("value=\"" + hour.replace('.', ',') + "\"", "value=\"9,975\"")
                    .doesNotContain("9.975");
            assertThat(shop.get(MoneyLinks.prices()).body())
                    .contains("value=\"" + hour.replace(',', '.') + "\"", "value=\"9.975\"");
        }
    }

    @Test
    void whatCannotBeIsOneSentenceAndKeepsWhatWasTyped() throws Exception {
        refused("say whose taxes", "/work", Map.of("hour", "115"));
        assertThat(post("/place", Map.of("place", "CA-QC", "currency", "CAD")).statusCode())
                .isEqualTo(303);
        for (var amount : List.of("-5", "12.345", "free", "1e3", "12345678")) {
            refused("is no amount in CAD", "/work", Map.of("hour", amount));
        }
        refused("is no whole number of minutes", "/work", Map.of("PADS.minutes", "an hour"));
        refused("is no currency", "/place", Map.of("place", "CA-QC", "currency", "DOLLAR"));
        refused("is no rate of a tax", "/place", own("a lot"));
        refused("cannot be, expected", "/place", own("51"));
        refused("has a name and a rate", "/place", own(""));
        refused("as CA-QC", "/place", Map.of("elsewhere", "Laval", "currency", "CAD"));
        refused("is written as 2027-05-15", "/work", Map.of("hour", "1", "begins", "tomorrow"));
        refused("A tyre has a season", "/tyre", Map.of("size", "1", "tyre.amount", "1"));
        refused(
                "“banana” is no tyre size, as 205/55R16",
                "/tyre",
                Map.of("season", "WINTER", "size", "banana", "tyre.amount", "1"));
        refused(
                "is no tread",
                "/tyre",
                Map.of("season", "WINTER", "size", "205/55R16", "tyre.amount", "1", "tread", "deep"));
        refused("It has no name", "/part", Map.of("part.amount", "1"));
        assertThat(shop.book().prices().listRows()).isEmpty();
    }

    private static Map<String, String> own(String percent) {
        return Map.of("elsewhere", "AT", "currency", "EUR", "registration.0", "", "tax.0", "USt", "percent.0", percent);
    }

    private HttpResponse<String> post(String where, Map<String, String> fields) throws Exception {
        var all = new HashMap<>(fields);
        all.put("id", UUID.randomUUID().toString());
        return shop.post(MoneyLinks.prices() + where, all);
    }

    private void refused(String sentence, String where, Map<String, String> fields) throws Exception {
        var answer = post(where, fields);
        assertThat(answer.statusCode()).as(sentence).isEqualTo(422);
        assertThat(answer.body()).contains(sentence).doesNotContain("Exception");
    }
}
