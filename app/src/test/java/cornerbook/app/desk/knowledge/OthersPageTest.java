package cornerbook.app.desk.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.app.knowledge.Extent;
import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.core.assess.Learner;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A shop takes a file in by its page, and back. All cars are invented. */
class OthersPageTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private SigningKey key;
    private Path file;

    @BeforeEach
    void open(@TempDir Path folder) throws Exception {
        shop = new ServedShop(folder.resolve("book"), ServedShop.cars());
        shop.waitUntilJudged();
        key = SigningKey.make(folder.resolve("key"));
        var day = LocalDate.ofInstant(ServedShop.CLOCK.instant(), ServedShop.CLOCK.getZone());
        var learned = Learner.learn(DemoShop.histories(day, 100, 160).toList(), day.minusDays(3));
        file = Files.writeString(
                folder.resolve("knowledge.txt"),
                KnowledgeFile.of(new Extent(60, 12, 500, day.minusYears(3), day.minusDays(4)), learned)
                        .write(key));
    }

    @Test
    void aFileIsLookedAtTakenInAndTakenBack() throws Exception {
        var page = chromium.open(shop.address(ShopLinks.othersKnowledge()), 390);
        page.locator("#key").fill(key.publicKey().pem());
        page.locator("#name").fill("Réseau inventé");
        page.getByText("Trust this key").click();
        page.getByText(key.publicKey().fingerprint()).first().waitFor();

        page.locator("#file\\.file").setInputFiles(file);
        page.getByText("Look at it").click();
        page.locator("#looked").waitFor();
        assertThat(page.locator("#looked").innerText())
                .contains("60 cars of 12 shops", "signed by Réseau inventé", "500 visits");
        assertThat(page.locator("details.of-others").count()).isGreaterThan(5);
        page.locator("details.of-others").evaluateAll("all => all.forEach(each => each.open = true)");
        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(390);
        assertThat(shop.book().others().find()).isEmpty();

        page.getByText("Take it in", new Page.GetByTextOptions().setExact(true)).click();
        page.locator("#counts").waitFor();
        assertThat(shop.book().others().find()).isPresent();
        shop.waitUntilJudged();
        // The page of a car names where its numbers come from.
        var car = ServedShop.cars().getFirst().vehicle().id();
        assertThat(shop.get(CarLinks.car(car)).body()).contains("of 12 shops, signed by Réseau inventé");

        page.getByText("Take it back").click();
        page.getByText("Nothing was taken in").waitFor();
        assertThat(shop.get(CarLinks.car(car)).body()).doesNotContain("Réseau inventé");
    }

    @Test
    void whatIsRefusedIsToldInOneSentence() {
        var page = chromium.open(shop.address(ShopLinks.othersKnowledge()), 390);
        page.locator("#file").fill("no knowledge");
        page.getByText("Look at it").click();
        assertThat(page.locator("#others\\.error").innerText()).contains("no knowledge file");
        page.locator("#file\\.file").setInputFiles(file);
        page.getByText("Look at it").click();
        page.getByText(key.publicKey().fingerprint()).waitFor();
        assertThat(page.locator("#others\\.error").innerText()).contains("not one that the shop trusts");
        assertThat(shop.book().others().listKeys()).isEmpty();
    }
}
