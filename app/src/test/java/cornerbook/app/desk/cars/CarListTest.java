package cornerbook.app.desk.cars;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.SeasonKind;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A list that a shop kept in a spreadsheet becomes cars of the book. Cars and people are invented. */
class CarListTest {
    private static final String LIST = """
            Licence plate,Owner,Phone,Tire size,Rear tires,EV,Colour,Wheels on
            LST 001,"Ostrom, Ada",819 555-0101,205/55 R16,,yes,blue,winter
            LST 002,Bo Tamm,819 555-0102,225/45 R18,255/40 R18,,red,Summer

            LST 003,"Ostrom, Ada",819 555-0101,195/65 R15,,no,,All season
            LST-001,Cy Unknown,,205/55 R16,,,,winter
            ,Di Plateless,,205/55 R16,,,,winter
            LST 005,Ed Roundtyre,,wide,,,,winter
            LST 006,Fay Maybe,,205/55 R16,,perhaps,,muddy
            """;

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @TempDir
    private Path folder;

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open() {
        shop = new ServedShop(folder.resolve("book"), List.of(ServedShop.car("demo-01")));
    }

    @Test
    void whatFitsIsAddedAndTheRestComesBackToBeMended() throws Exception {
        var file = Files.writeString(folder.resolve("cars.csv"), LIST);
        var page = chromium.open(shop.address(CarLinks.carList()), 1180);
        page.locator("#list\\.file").setInputFiles(file);
        page.getByText("Look at what would become of it").click();
        assertThat(page.locator("#looked").innerText())
                .contains("3 cars can be added. 4 rows cannot be taken as they are.");
        assertThat(histories()).hasSize(1);
        assertThat(problems(page))
                .containsExactly(
                        "6: The plate stands in row 2 already.",
                        "7: Plate is missing.",
                        "8: Tyre size \"wide\": has \"WIDE\" where it needs section width in mm, as 225.",
                        "9: Electric has “perhaps”; expected yes or no."
                                + " “muddy” is no season; expected summer, winter or all-season.");
        Axe.assertNoViolation(page, "list of cars");
        page.getByText("Add 3 cars").click();
        assertThat(page.locator("#added").innerText()).contains("3 cars were added.");
        var added = histories().stream()
                .filter(car -> car.vehicle().plate().startsWith("LST"))
                .toList();
        assertThat(added).extracting(car -> car.vehicle().plate()).containsExactly("LST 001", "LST 002", "LST 003");
        assertThat(added.get(0).vehicle().electric()).isTrue();
        assertThat(added.get(0).sets().getFirst().season()).isEqualTo(SeasonKind.WINTER);
        assertThat(added.get(1).vehicle().axle(Axle.REAR).tyreSize().toString()).contains("255/40");
        assertThat(added.get(2).customer()).isEqualTo(added.get(0).customer());
        assertThat(added.get(2).customer().name()).isEqualTo("Ostrom, Ada");

        var left = page.locator("#list").inputValue();
        assertThat(page.locator("#looked").innerText())
                .isEqualTo("1 is in the book already and stays as it is. 3 rows cannot be taken as they are.");
        assertThat(problems(page).getFirst()).startsWith("3: Plate is missing.");
        assertThat(left.lines()).hasSize(5).first().asString().startsWith("\"Licence plate\",Owner");
        page.locator("#list")
                .fill(left.replace("wide", "205/55 R16")
                        .replace("perhaps", "yes")
                        .replace("muddy", "hiver"));
        page.getByText("Look again").click();
        page.getByText("Add 2 cars").click();
        assertThat(histories()).hasSize(6);
    }

    @Test
    void namesOfColumnsMayBeAnyAndAreChosen() {
        var page = chromium.open(shop.address(CarLinks.carList()), 390);
        page.locator("#list").fill("Kfz\tWho\tRubber\nLST 010\tIda\t205/55 R16\n");
        page.getByLabel("Winter", new Page.GetByLabelOptions().setExact(true)).check();
        page.getByText("Look at what would become of it").click();
        assertThat(page.locator("#looked").innerText()).contains("No car can be added.");
        page.getByLabel("Kfz").selectOption("PLATE");
        page.getByLabel("Who").selectOption("OWNER");
        page.getByLabel("Rubber").selectOption("SIZE");
        page.getByText("Look again").click();
        Axe.assertNoViolation(page, "list of cars");
        page.getByText("Add 1 car").click();
        assertThat(page.locator("#added").innerText()).contains("1 car was added.");
    }

    /** As a spreadsheet of a French-speaking country saves it on an older machine. */
    @Test
    void semicolonsAccentsAndTheCodePageOfOldAreRead() throws Exception {
        var file = folder.resolve("liste.csv");
        Files.write(
                file,
                "Plaque;Propriétaire;Téléphone;Pneus;Électrique;Saison\nLST 020;Élodie Forêt;819 555-0120;205/55 R16;oui;été\n"
                        .getBytes(Charset.forName("windows-1252")));
        var page = chromium.open(shop.address(CarLinks.carList()), 1180);
        page.locator("#list\\.file").setInputFiles(file);
        page.getByText("Look at what would become of it").click();
        page.getByText("Add 1 car").click();
        assertThat(histories())
                .anySatisfy(car -> assertThat(car.customer().name()).isEqualTo("Élodie Forêt"));
    }

    @Test
    void whatIsInTheBookStaysAsItIs() throws Exception {
        var plate = histories().getFirst().vehicle().plate();
        var before = histories();
        var answer = shop.post(
                CarLinks.carList() + "/add",
                Map.of(
                        "list",
                        "plate,owner,size\n" + plate.toLowerCase(Locale.ROOT) + ",Another,205/55 R16",
                        "season",
                        "WINTER"));
        assertThat(answer.body()).contains("No car was added.");
        assertThat(histories()).isEqualTo(before);
    }

    @Test
    void whatIsNoListIsRefusedInASentence() throws Exception {
        assertRefused("", "The list has no row below its first one");
        assertRefused("plate,owner", "The list has no row below its first one");
        assertRefused("a,b\n\"c,d\n", "is not the text of a spreadsheet");
        assertThat(shop.post(CarLinks.carList(), Map.of("list", "a\u0001,b\nc,d\n"))
                        .statusCode())
                .isEqualTo(400);
    }

    @Test
    void aThousandRowsAreTakenAtOnce() throws Exception {
        var list = new StringBuilder("plate;customer;tyre size\n");
        IntStream.range(0, 1000).forEach(i -> list.append("M%04d;Owner %<d;205/55 R16\n".formatted(i)));
        var answer = shop.post(CarLinks.carList() + "/add", Map.of("list", list.toString(), "season", "SUMMER"));
        assertThat(answer.body()).containsPattern("1.000 cars were added\\.");
        assertThat(shop.book().cars().count()).isEqualTo(1001);
    }

    private void assertRefused(String list, String sentence) throws Exception {
        var answer = shop.post(CarLinks.carList(), Map.of("list", list));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(sentence);
    }

    private List<CarHistory> histories() {
        return shop.book().cars().listHistories().stream()
                .sorted(Comparator.comparing(car -> car.vehicle().plate()))
                .toList();
    }

    private static List<String> problems(Page page) {
        return page.locator("table.rows").first().locator("tbody tr").all().stream()
                .map(row -> row.locator("th").innerText() + ": "
                        + String.join(" ", row.locator("td:last-child p").allInnerTexts()))
                .toList();
    }
}
