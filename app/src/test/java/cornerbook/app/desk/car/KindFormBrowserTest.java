package cornerbook.app.desk.car;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.app.exchange.KindFile;
import cornerbook.core.car.Vehicle;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The data sheet of a kind of car as a form. Cars and kinds are invented. */
class KindFormBrowserTest {
    private static final Path EXAMPLE = Path.of("../docs/kinds/fjordling-volta.json");
    private static final String NAME = "Fjordling Volta";

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    private Page page;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.cars().getFirst()));
        page = chromium.open(shop.address(ShopLinks.kinds()), 820);
    }

    private Locator field(String pointer) {
        return page.locator("[name='" + pointer + "']");
    }

    private void keep() {
        page.getByText("Keep the sheet").last().click();
    }

    private KindFile.Kind kept(String name) {
        return KindFile.readAll(shop.book().kindSheets().find(name).stream().toList(), ServedShop.TODAY)
                .getFirst();
    }

    /** Nothing but the fields: no text of a file is seen or typed. A whole VIN stands for its kind. */
    @Test
    void aSheetIsFilledInAndWhatIsWrongIsMarkedAndTakenThere() {
        page.getByText("Fill in a form").click();
        field(KindFile.NAME).fill(NAME);
        field(KindFile.VIN).fill("XFJVT3E47TB004417");
        field("/vehicle/frontAxle/tyreSize").fill("225/55R18");
        field("/vehicle/rearAxle/tyreSize").fill("255/45R19");
        field("/vehicle/fastener/thread").fill("M14x1.5");
        field("/vehicle/fastener/count").fill("5");
        field("/vehicle/fastener/seat").selectOption("cone");
        field("/vehicle/fastener/retorqueAfter").fill("80");
        field("/vehicle/fastener/torque").fill("140 mm");
        keep();
        assertThat(page.locator("[role=alert]")).isVisible();
        assertThat(field(KindFile.SOURCE)).isFocused();
        assertThat(page.locator(".field.wrong")).hasCount(2);
        assertThat(page.locator(".field.wrong:has([name='" + KindFile.SOURCE + "'])"))
                .containsText("This is needed.");
        assertThat(page.locator(".field.wrong:has([name='/vehicle/fastener/torque'])"))
                .containsText("140 mm");
        assertThat(shop.book().kindSheets().list()).isEmpty();

        field(KindFile.SOURCE).fill("Handbook of the maker, edition 3 (invented)");
        field("/vehicle/fastener/torque").fill("140");
        keep();
        assertThat(page).hasURL(shop.address(ShopLinks.kinds()));
        var kind = kept(NAME);
        assertThat(kind.vin()).isEqualTo("XFJVT3E4*T");
        assertThat(kind.vehicle().rear().tyreSize()).isEqualTo("255/45R19");
        assertThat(Objects.requireNonNull(kind.vehicle().fastener()).torqueNm()).isEqualTo(140);
    }

    /** What is not touched stays to the last digit, in whose units it is ever shown. */
    @Test
    void aSheetIsChangedAndRenamedInTheUnitsOfWhoReads() throws Exception {
        var example = Files.readString(EXAMPLE);
        shop.post(ShopLinks.kinds(), Map.of("file", example));
        var before = kept(NAME);
        page.context().addCookies(List.of(new Cookie("units", "us").setUrl(shop.address("/"))));
        page.navigate(shop.address(ShopLinks.kind(NAME)));
        assertThat(field("/vehicle/frontAxle/placardPressure")).not().hasValue("250");
        keep();
        assertThat(kept(NAME)).isEqualTo(before);

        page.navigate(shop.address(ShopLinks.kind(NAME)));
        field(KindFile.NAME).fill(NAME + " II");
        field("/vehicle/fastener/torque").fill("130 N·m");
        keep();
        assertThat(page.locator("li.row")).hasCount(1);
        var after = kept(NAME + " II");
        assertThat(Objects.requireNonNull(after.vehicle().fastener()).torqueNm())
                .isEqualTo(130);
        assertThat(after.vehicle().front()).isEqualTo(before.vehicle().front());
        assertThat(shop.book().kindSheets().list()).hasSize(1);
    }

    @Test
    void aSheetOfAnotherNameIsNotReplacedUnseen() throws Exception {
        var example = Files.readString(EXAMPLE);
        shop.post(ShopLinks.kinds(), Map.of("file", example));
        shop.post(ShopLinks.kinds(), Map.of("file", example.replace(NAME, "Fjordling Ampere")));
        page.navigate(shop.address(ShopLinks.kind("Fjordling Ampere")));
        field(KindFile.NAME).fill(NAME);
        keep();
        assertThat(page.locator(".field.wrong")).containsText("is kept already");
        assertThat(field(KindFile.NAME)).isFocused();
        assertThat(shop.book().kindSheets().list()).hasSize(2);
    }

    /** Of the data of a car of that kind, without what is that car's alone. */
    @Test
    void aSheetBeginsWithTheDataOfACarOfTheKind() throws Exception {
        var car = shop.book().cars().list().getFirst();
        var kind = shop.book().cars().listKinds().getFirst();
        page.reload();
        page.getByLabel("Or with what the book has of a car of the kind").selectOption(kind);
        page.getByText("Begin with its data").click();
        assertThat(field(KindFile.NAME)).hasValue(kind);
        assertThat(field("/vehicle/plate")).hasCount(0);
        Vehicle vehicle = shop.book().cars().find(car.id()).orElseThrow().vehicle();
        assertThat(field("/vehicle/frontAxle/tyreSize"))
                .hasValue(vehicle.front().tyreSize());
        assertThat(page.content()).doesNotContain(vehicle.plate());
        field(KindFile.SOURCE).fill("Handbook of the maker (invented)");
        keep();
        assertThat(page.locator("li.row")).containsText(kind);
        assertThat(kept(kind).vehicle().front()).isEqualTo(vehicle.front());
        var none = shop.get(ShopLinks.kindForm() + "?like=Nobody+Knows");
        assertThat(none.statusCode()).isEqualTo(422);
        assertThat(none.body()).contains("of which more is known than its tyres");
        assertThat(shop.get(ShopLinks.kind("Nobody Knows")).statusCode()).isEqualTo(404);
    }
}
