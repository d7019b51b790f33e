package cornerbook.app.desk.store;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.SetMove;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.app.sheet.label.LabelPaper;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Spot;
import java.awt.image.BufferedImage;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** The store by hand and by scanner. Car 03 has left on its winter set, car 08 is here today. All invented. */
class StorePagesTest {
    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, ServedShop.cars());
    }

    /** A scanner types what it reads, and Enter; the field that it types into has the focus. */
    private static void scan(Page page, String code) {
        page.locator("#code:focus").waitFor();
        page.waitForResponse(answer -> answer.request().isNavigationRequest(), () -> {
            page.keyboard().type(code);
            page.keyboard().press("Enter");
        });
        page.waitForLoadState();
    }

    private KeptSet set(String tag) {
        return shop.book().stock().find(tag).orElseThrow();
    }

    private void nameRack(Page page) {
        page.navigate(shop.address(StoreLinks.store()));
        page.locator("[id='room.new']").fill("Cellar");
        page.getByLabel("Name of a place").fill("K-#-##");
        page.getByLabel("Shelves above each other").fill("3");
        page.getByLabel("Places on a shelf").fill("8");
        page.getByText("Name this rack").click();
        page.getByRole(AriaRole.IMG).first().waitFor();
    }

    @Test
    void aRackIsNamedASetGoesInByScanAndTheWrongCarIsStopped() {
        var page = chromium.open(shop.address(StoreLinks.store()), 1180);
        nameRack(page);
        assertThat(page.locator(".rack svg").getAttribute("aria-label")).isEqualTo("Rack K-#-##: 24 of 24 free");

        page.getByText("Sets in and out").click();
        scan(page, "03S2");
        assertThat(page.locator("main").innerText()).contains("In hand").contains("Free for it: K-1-02");
        scan(page, "K-2-05");
        assertThat(page.locator("[role=status]").innerText()).startsWith("Lies at K-2-05");
        assertThat(set("03S1").place()).isEqualTo("K-2-05");

        page.navigate(shop.address(StoreLinks.scanFor("demo-08-v7")));
        scan(page, "03S2");
        assertThat(page.locator("[role=alert]").innerText())
                .startsWith("Stop: wheel 03S2 belongs to")
                .contains(ServedShop.car("demo-08").vehicle().plate())
                .endsWith("it stays here.");
        assertThat(set("03S1").lies()).isTrue();
        scan(page, "08W3");
        assertThat(page.locator("[role=status]").innerText()).startsWith("Fetched for its car");
        assertThat(set("08W1").last()).extracting(SetMove::visitId).isEqualTo("demo-08-v7");
        page.navigate(shop.address(StoreLinks.store()));
        assertThat(page.locator("section[aria-labelledby=out]").innerText()).contains("fetched for the car");
    }

    /** K-1-01 stands 2 m from the door, K-1-08 9 m, and L-1 behind it 15 m: by their names one would walk K-1-01, K-1-08, L-1. */
    @Test
    void setsOfTomorrowAreListedAsOneWalks() throws Exception {
        assertThat(post("", rack(Map.of("x", "0", "y", "2", "along", "INWARD", "places", "8")))
                        .statusCode())
                .isEqualTo(303);
        assertThat(post("", rack(Map.of("pattern", "A", "shelves", "1", "places", "1", "x", "3", "y", "12")))
                        .statusCode())
                .isEqualTo(303);
        lay("02S1", "A");
        lay("03S1", "K-1-08");
        lay("04S1", "K-2-01");
        for (var car : List.of("demo-02", "demo-03", "demo-04")) {
            assertThat(shop.post(
                                    DayLinks.appointments(),
                                    Map.of(
                                            "id",
                                            UUID.randomUUID().toString(),
                                            "car",
                                            car,
                                            "day",
                                            "2026-11-27",
                                            "work",
                                            "WHEELS",
                                            "state",
                                            "BOOKED",
                                            "minutes",
                                            "35"))
                            .statusCode())
                    .isEqualTo(303);
        }
        var page = chromium.open(shop.address(StoreLinks.fetch() + "?carried=4"), 390);
        assertThat(page.locator("main h1").innerText()).contains("27 Nov 2026");
        assertThat(page.locator("ol .when").allInnerTexts()).containsExactly("K-2-01", "K-1-08", "A");
        assertThat(page.locator("main").innerText())
                .contains("3 sets in one round, 30\u00a0m to walk")
                .contains("No way is shorter.");
        page.navigate(shop.address(StoreLinks.fetch() + "?carried=1"));
        assertThat(page.locator("main").innerText()).contains("3 sets in 3 rounds, 52\u00a0m to walk");
        assertThat(shop.get(StoreLinks.fetch() + "?carried=0").statusCode()).isEqualTo(422);
        assertThat(shop.get(StoreLinks.fetch() + "?day=soon").statusCode()).isEqualTo(400);
    }

    @Test
    void aRackIsChangedOnItsPage() throws Exception {
        assertThat(post("", rack(Map.of())).statusCode()).isEqualTo(303);
        lay("03S1", "K-2-05");
        var page = chromium.open(shop.address(StoreLinks.store()), 390);
        page.getByText("One set lies here").click();
        assertThat(page.locator("main").innerText())
                .contains("03S1 03S2 03S3 03S4")
                .contains("since 25 Nov 2026");
        page.getByText("Take it off the map").click();
        page.locator("[role=alert]").waitFor();
        assertThat(page.locator("[role=alert]").innerText()).startsWith("A set lies at “K-2-05”: move it first.");
        page.getByLabel("Sets at a place").fill("2");
        page.getByText("Save", new Page.GetByTextOptions().setExact(true)).click();
        page.getByText("Places for 19 sets are free, of 20.").waitFor();
        assertThat(shop.book().racks().list().getFirst().turn()).isEqualTo(1);
    }

    @Test
    void theStoreIsCountedByScanning() throws Exception {
        assertThat(post("", rack(Map.of())).statusCode()).isEqualTo(303);
        lay("03S1", "K-1-01");
        lay("04S1", "K-1-02");
        var page = chromium.open(shop.address(StoreLinks.count()), 1180);
        page.getByText("Begin a count").click();
        scan(page, "03S1");
        assertThat(page.locator("[role=alert]").innerText())
                .isEqualTo("Scan the place first, then the wheels that lie there.");
        scan(page, "K-1-01");
        scan(page, "04S3");
        assertThat(page.locator("main").innerText())
                .as("whoever stands before the rack is told at once")
                .contains("in the book at K-1-02");
        scan(page, "K-1-02");
        scan(page, "NOBODYS1");
        assertThat(page.locator("main").innerText())
                .contains("2 places looked at, one set found")
                .contains("8 places not looked at");
        page.getByText("The count is done").click();
        page.getByText("At another place than in the book").waitFor();
        assertThat(page.locator("main").innerText())
                .as("of a wheel that the book does not know it says nothing")
                .contains("found at K-1-02")
                .doesNotContain("in the book nowhere");
        page.getByText("It stays there: change the book").click();
        page.locator("[role=alert]").waitFor();
        assertThat(page.locator("[role=alert]").innerText()).startsWith("“K-1-01” is full");
        page.getByText("It is not in the store").click();
        page.getByText("not in the store").waitFor();
        page.getByText("It stays there: change the book").click();
        page.getByText("stays there, the book says so").waitFor();
        assertThat(set("04S1").place()).isEqualTo("K-1-01");
        assertThat(set("03S1").place()).isNull();
        assertThat(shop.get(StoreLinks.count("nothing", "")).statusCode()).isEqualTo(404);
        refused(409, "There is no such count.", "/count/end", Map.of("count", "nothing"));
        assertThat(post("/count/answer", Map.of("answer", "SING")).statusCode()).isEqualTo(400);
    }

    /** What is read back from the receipt stands in the readings of the invented car. */
    @Test
    void theCustomerGetsAReceiptOfHowTheSetWasTakenIn() throws Exception {
        assertThat(post("", rack(Map.of())).statusCode()).isEqualTo(303);
        lay("03S1", "K-1-01");
        var page = chromium.open(shop.address(StoreLinks.store()), 1180);
        page.getByText("One set lies here").click();
        page.getByText("Summer set").first().click();
        page.getByLabel("The wheels are").selectOption("STANDING");
        page.getByLabel("Pressure as stored").fill("2.4 bar");
        page.getByText("Note it").click();
        page.locator(".caution").waitFor();
        assertThat(page.locator("main").innerText())
                .contains("on rims, standing, at 240\u00a0kPa")
                .contains("hang them up, or stack four at most")
                .contains("laid at K-1-01");
        try (var document = Loader.loadPDF(shop.getBytes(StoreLinks.receipt("demo-03", "demo-03-S")))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains(ServedShop.car("demo-03").customer().name())
                    .contains("03S4")
                    .contains(depthOf("03S4"))
                    .contains("K-1-01")
                    .contains("standing");
        }
        refused(422, "Say how the wheels lie", "/set", Map.of("car", "demo-03", "set", "demo-03-S"));
        for (var pressure : Map.of("much", 422, "-3", 409, "9999", 409).entrySet()) {
            assertThat(post(
                                    "/set",
                                    Map.of(
                                            "car",
                                            "demo-03",
                                            "set",
                                            "demo-03-S",
                                            "lies",
                                            "HUNG",
                                            "pressure",
                                            pressure.getKey()))
                            .statusCode())
                    .as(pressure.getKey())
                    .isEqualTo(pressure.getValue());
        }
        assertThat(shop.get(StoreLinks.storedSet("demo-03", "nothing")).statusCode())
                .isEqualTo(404);
        assertThat(shop.get(StoreLinks.receipt("nobody", "nothing")).statusCode())
                .isEqualTo(404);
    }

    /** The set that comes off is on its car yet: its labels and its receipt name the place that is free for it. */
    @Test
    void labelsAndReceiptNameThePlaceThatIsProposed() throws Exception {
        assertThat(post("", rack(Map.of())).statusCode()).isEqualTo(303);
        var comesOff = set(ServedShop.car("demo-08")
                .getVisit("demo-08-v7")
                .arrivedOn()
                .values()
                .iterator()
                .next());
        assertThat(comesOff.lies()).isFalse();
        try (var labels = Loader.loadPDF(shop.getBytes("/wheel-tags.pdf?visit=demo-08-v7&paper=ROLL_62&first=1"));
                var tags = Loader.loadPDF(shop.getBytes(VisitLinks.tags("demo-08-v7")));
                var receipt = Loader.loadPDF(shop.getBytes(
                        StoreLinks.receipt("demo-08", comesOff.key().setId())))) {
            var text = new PDFTextStripper();
            assertThat(text.getText(labels)).containsPattern("lay at K-\\d-\\d\\d");
            assertThat(text.getText(tags)).containsPattern("Lay it at K-\\d-\\d\\d");
            assertThat(text.getText(receipt)).containsPattern("It is laid at place K-\\d-\\d\\d of the store");
        }
    }

    private static String depthOf(String tag) {
        return ServedShop.car("demo-03").visits().reversed().stream()
                .flatMap(visit -> visit.readings().stream())
                .filter(read -> read.measure() == Measure.TREAD_DEPTH && tag.equals(read.wheelTag()))
                .filter(read -> read.spot() == Spot.OUTER)
                .map(read -> String.format(Locale.ROOT, "%.1f / ", read.value()))
                .findFirst()
                .orElseThrow();
    }

    /** Kept once however often it is sent, without what the camera wrote into it, on the page and on the receipt. */
    @Test
    void aPhotoOfTheSetIsOnItsPageAndItsReceipt(@TempDir Path folder) throws Exception {
        var set = set("03S1");
        var image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        var file = folder.resolve("photo.png");
        ImageIO.write(image, "png", file.toFile());
        var page = chromium.open(
                shop.address(
                        StoreLinks.storedSet(set.key().vehicleId(), set.key().setId())),
                390);
        page.getByLabel("Pressure as stored").fill("280");
        for (int time = 0; time < 2; time++) {
            page.getByLabel("Photo of the set").setInputFiles(file);
            page.locator(".photos img").waitFor();
            page.locator("#photo:enabled").waitFor();
        }
        assertThat(page.getByLabel("Pressure as stored").inputValue())
                .as("what was typed before the photo was taken")
                .isEqualTo("280");
        assertThat(page.locator(".photos img").count()).isEqualTo(1);
        assertThat(images(set)).isEqualTo(1);
        try (var receipt = Loader.loadPDF(shop.getBytes(
                StoreLinks.receipt(set.key().vehicleId(), set.key().setId())))) {
            assertThat(new PDFTextStripper().getText(receipt))
                    .as("nobody was named: no comma waits for a name")
                    .doesNotContainPattern(", *\\R");
        }

        var none = folder.resolve("none.png");
        Files.writeString(none, "no photo");
        page.getByLabel("Photo of the set").setInputFiles(none);
        page.locator(".error:not(:empty)").waitFor();
        assertThat(page.locator(".error:not(:empty)").innerText())
                .doesNotContain("Exception")
                .isNotBlank();
        assertThat(images(set)).isEqualTo(1);
    }

    private int images(KeptSet set) throws Exception {
        var bytes = shop.getBytes(
                StoreLinks.receipt(set.key().vehicleId(), set.key().setId()));
        int images = 0;
        try (var pdf = Loader.loadPDF(bytes)) {
            for (var page : pdf.getPages()) {
                for (var name : page.getResources().getXObjectNames()) {
                    images += page.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
        }
        return images;
    }

    /** By the visits of the invented cars: whose stored set was on the car last more than a month ago. */
    @Test
    void whoeverDidNotFetchASetIsCalled() throws Exception {
        assertThat(post("", rack(Map.of())).statusCode()).isEqualTo(303);
        var page = chromium.open(shop.address(StoreLinks.left() + "?months=1"), 390);
        var first = page.locator("main .rows > li").first();
        var all = page.locator("main .rows > li .name").allInnerTexts();
        assertThat(all).isNotEmpty();
        first.getByText("Called", new Locator.GetByTextOptions().setExact(true)).click();
        page.getByText("called 25 Nov 2026").first().waitFor();
        assertThat(page.locator("a[href^='tel:']").first().getAttribute("href")).startsWith("tel:");
        var days = shop.book().stock().list().stream()
                .filter(KeptSet::lies)
                .flatMap(set -> set.since(ServedShop.CLOCK.getZone()).stream())
                .filter(day -> !day.isAfter(ServedShop.TODAY.minusMonths(1)))
                .count();
        assertThat(all).hasSize((int) days);
        assertThat(shop.get(StoreLinks.left() + "?months=0").statusCode()).isEqualTo(400);
        assertThat(post("/left", Map.of("visit", "nothing", "answer", "CALLED")).statusCode())
                .isGreaterThanOrEqualTo(400);

        var lines = shop.get(StoreLinks.store() + ".csv").body().split("\r\n", -1);
        assertThat(lines[0]).isEqualTo("place,room,car,plate,customer,telephone,set,wheels,since,out");
        assertThat(lines)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("\"Rack S, bay 3\",,")
                        .contains("03S1 03S2 03S3 03S4")
                        .endsWith(",no"));
    }

    private void lay(String tag, String place) throws Exception {
        var answer = post("/scan", Map.of("tag", tag, "code", place));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    }

    /** What technicians typed so far becomes racks by one tap each. */
    @Test
    void typedPlacesGoOnTheMap() throws Exception {
        var page = chromium.open(shop.address(StoreLinks.store()), 390);
        int groups = page.getByText("Put on the map").count();
        assertThat(groups).isEqualTo(2);
        for (int i = 0; i < groups; i++) {
            page.getByText("Put on the map").first().click();
            page.locator(".rack").nth(i).waitFor();
        }
        assertThat(page.getByText("Put on the map").count()).isZero();
        assertThat(shop.book().racks().map().find("Rack W, bay 8")).isPresent();
        assertThat(new String(
                        shop.getBytes(StoreLinks.store() + "/labels.pdf?paper=" + LabelPaper.values()[0]),
                        0,
                        5,
                        US_ASCII))
                .isEqualTo("%PDF-");
    }

    @Test
    void whatCannotBeIsOneSentenceAndChangesNothing() throws Exception {
        refused(422, "so the name must have “#” at two spots", "", rack(Map.of("pattern", "K-#")));
        refused(422, "How many is a whole number, as 4, not “many”.", "", rack(Map.of("places", "many")));
        refused(422, "The way from the door must be from", "", rack(Map.of("x", "99999")));
        refused(422, "from 1 to 40 characters", "", rack(Map.of("room", " ")));
        refused(409, "There is no such rack any more.", "/down", Map.of("rack", "nothing", "turn", "0"));
        assertThat(shop.book().racks().list()).isEmpty();
        assertThat(post("", rack(Map.of())).statusCode()).isEqualTo(303);
        refused(409, "Another rack has a place “K-1-01”.", "", rack(Map.of()));
        for (var code : List.of("", "nothing", "<script>", "K-9-99")) {
            refused(409, "is neither the tag of a wheel nor a place", "/scan", Map.of("code", code));
        }
        refused(409, "Scan a wheel of the set", "/scan", Map.of("code", "K-1-01", "visit", "demo-08-v7"));
        assertThat(post("/scan", Map.of("code", "03S1", "visit", "demo-08-v7", "id", "x"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(post("/scan", Map.of("code", "K-1-01", "tag", "03S1", "id", ""))
                        .statusCode())
                .isEqualTo(400);
        var many = shop.get(StoreLinks.fetch() + "?day=2026-12-03&carried=many");
        assertThat(many.statusCode()).isEqualTo(422);
        assertThat(many.body()).contains("is a whole number from 1 to 50.", "value=\"many\"", "value=\"2026-12-03\"");
        assertThat(shop.get(StoreLinks.rack("nobody")).statusCode()).isEqualTo(404);
        assertThat(shop.get(StoreLinks.scanFor("nobody")).statusCode()).isEqualTo(404);
        assertThat(shop.get(StoreLinks.store() + "/labels.pdf?rack=nothing").statusCode())
                .isEqualTo(404);
        assertThat(shop.get(StoreLinks.store() + "/labels.pdf?paper=silk").statusCode())
                .isEqualTo(422);
    }

    private static Map<String, String> rack(Map<String, String> other) {
        var fields = new HashMap<>(Map.of(
                "room", "Cellar", "pattern", "K-#-##", "shelves", "2", "places", "5", "capacity", "1", "width", "1"));
        fields.putAll(other);
        return fields;
    }

    private HttpResponse<String> post(String to, Map<String, String> typed) throws Exception {
        var fields = new HashMap<>(typed);
        fields.putIfAbsent("id", UUID.randomUUID().toString());
        return shop.post(StoreLinks.store() + to, fields);
    }

    private void refused(int status, String sentence, String to, Map<String, String> typed) throws Exception {
        var answer = post(to, typed);
        assertThat(answer.statusCode()).as(sentence).isEqualTo(status);
        assertThat(answer.body()).contains(sentence).doesNotContain("Exception").doesNotContain("<script>.");
    }
}
