package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.rack.By;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Rack;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The set that comes off is laid down from the bay sheet. Car 08 has come on its summer set; all invented. */
class BayShelfBrowserTest {

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    private final By by = new By("Ida", ServedShop.CLOCK.instant());

    @AutoClose
    private BayShop shop;

    private String visitId;

    @BeforeEach
    void open(@TempDir Path folder) {
        var car = BayShop.untouched("demo-08");
        visitId = car.visits().getLast().id();
        shop = new BayShop(folder, List.of(car, ServedShop.car("demo-03")));
    }

    private void nameRack() {
        shop.book
                .racks()
                .name(
                        "rack",
                        new Rack("Cellar", new Naming("K-##", 1, 2), FloorPoint.DOOR, Rack.Along.RIGHT, 1, 1),
                        by);
    }

    private Page sheet() {
        var tablet = chromium.newTablet(390, 844);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        var page = tablet.newPage();
        page.navigate(shop.address("/bay/visits/" + visitId + "#ON"));
        page.locator("[id='tag.LF']").waitFor();
        return page;
    }

    private KeptSet comesOff() {
        return shop.book
                .stock()
                .find(shop.visit(visitId).arrivedOn().values().iterator().next())
                .orElseThrow();
    }

    @Test
    void aPlaceThatWasTakenMeanwhileIsToldAndTheNextOneIsShown() {
        nameRack();
        var page = sheet();
        var shelf = page.locator(".shelf");
        assertThat(shelf).containsText("goes to K-0");
        Axe.assertNoViolation(page, "a free place");
        var first = shelf.innerText().contains("K-01") ? "K-01" : "K-02";
        var other = first.equals("K-01") ? "K-02" : "K-01";
        shop.book.stock().put("other", "03S1", first, by, ServedShop.TODAY);

        shelf.getByText("Put there").click();
        assertThat(shelf.locator(".wrong")).containsText(first);
        assertThat(shelf).containsText("goes to " + other);
        assertThat(comesOff().lies()).isFalse();

        shelf.getByText("Put there").click();
        assertThat(shelf).containsText("lies at " + other);
        assertThat(comesOff()).matches(KeptSet::lies);
        assertThat(comesOff().place()).isEqualTo(other);
    }

    @Test
    void nothingIsProposedWhereNoRackWasNamed() {
        assertThat(sheet().locator(".shelf")).isEmpty();
        nameRack();
        assertThat(sheet().locator(".shelf")).containsText("K-0");
    }
}
