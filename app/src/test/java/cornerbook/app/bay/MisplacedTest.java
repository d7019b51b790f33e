package cornerbook.app.bay;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.Axe;
import cornerbook.app.door.Chromium;
import cornerbook.app.photo.Jpeg;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Corner;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What was entered at the wrong corner or the wrong car, moved from the bay. Cars are invented. */
class MisplacedTest {
    private final CarHistory one = BayShop.untouched("demo-08");
    private final CarHistory other = BayShop.untouched("demo-01");
    private final String here = one.visits().getLast().id();
    private final String there = other.visits().getLast().id();

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private BayShop shop;

    /** Photos are told apart by when they were made, as a camera does. */
    private Instant photoMadeAt = Instant.parse("2026-11-25T09:00:00Z");

    @BeforeEach
    void openTheShop(@TempDir Path folder) {
        shop = new BayShop(folder, List.of(one, other));
    }

    private List<JsonNode> send(ObjectNode... entries) throws Exception {
        return BayShop.JSON
                .readTree(shop.post(here, List.of(entries)).body())
                .path("answers")
                .valueStream()
                .toList();
    }

    private static ObjectNode move(String thing, String id, Map<String, String> goal) {
        var entry = TabletEntries.entry("move", Map.of("thing", thing, "moved", id));
        goal.forEach(entry::put);
        return entry;
    }

    @Test
    void aTickGoesToTheRightCarAndIsTakenBackHere() throws Exception {
        var tick = TabletEntries.tick("RECEIVED", true);
        var move = move("TICK", tick.path("id").stringValue(), Map.of("to", there));
        assertThat(send(tick, move, move))
                .extracting(each -> each.path("status").stringValue())
                .containsExactly("stored", "stored", "already");
        var struck = shop.book.records().notes(here).ticks();
        assertThat(StandingTicks.of(struck).find("RECEIVED", null).orElseThrow().done())
                .isFalse();
        assertThat(struck).as("kept").hasSize(2);
        assertThat(shop.book.records().notes(there).ticks()).singleElement().satisfies(moved -> {
            assertThat(moved.done()).isTrue();
            assertThat(moved.person()).isEqualTo("Ada");
        });
        assertThat(shop.page("/visits/" + here))
                .contains("damage and warning lights looked at", other.vehicle().plate());
        assertThat(send(move("TICK", tick.path("id").stringValue(), Map.of("to", there)))
                        .getFirst()
                        .path("status")
                        .stringValue())
                .as("it stands here no more")
                .isEqualTo("refused");
    }

    @Test
    void aFastenersTickGoesToTheWheelOfTheRightCorner() throws Exception {
        var wheels = TabletEntries.names(shop.get("/bay/visits/" + here + "/sheet.json")
                .path("en")
                .path("metric")
                .path("planned"));
        var tick = TabletEntries.tick("FASTENER.LF.1", true).put("wheel", wheels.get("LF"));
        send(
                TabletEntries.entry("leaving", Map.of("wheels", wheels, "shown", Map.of())),
                tick,
                move("TICK", tick.path("id").stringValue(), Map.of("corner", "RR")));
        var standing = StandingTicks.of(shop.book.records().notes(here).ticks());
        assertThat(standing.find("FASTENER.LF.1", wheels.get("LF"))
                        .orElseThrow()
                        .done())
                .isFalse();
        assertThat(standing.find("FASTENER.RR.1", wheels.get("RR"))
                        .orElseThrow()
                        .done())
                .isTrue();
    }

    @Test
    void aPhotoGoesToTheRightCornerAndIsKeptStruck() throws Exception {
        var id = photo(Corner.LF);
        assertThat(send(move("PHOTO", id, Map.of("corner", "RF")))
                        .getFirst()
                        .path("status")
                        .stringValue())
                .isEqualTo("stored");
        assertThat(shop.book.photos().list(here)).singleElement().satisfies(moved -> {
            assertThat(moved.corner()).isEqualTo(Corner.RF);
            assertThat(moved.person()).isEqualTo("Bo");
        });
        assertThat(shop.book.photos().findJpeg(id)).as("never erased").isPresent();
        assertThat(shop.book.check()).isEmpty();
        assertThat(send(move("PHOTO", id, Map.of("corner", "RR")))
                        .getFirst()
                        .path("status")
                        .stringValue())
                .as("it stands here no more")
                .isEqualTo("refused");
    }

    @Test
    void nothingIsMovedToWhereItIsOrToACarThatIsNotThere() throws Exception {
        var id = photo(Corner.LF);
        for (var goal : List.of(Map.<String, String>of(), Map.of("corner", "LF"), Map.of("to", "nobody"))) {
            assertThat(send(move("PHOTO", id, goal)).getFirst().path("status").stringValue())
                    .isEqualTo("refused");
        }
        assertThat(shop.book.photos().list(here))
                .singleElement()
                .satisfies(photo -> assertThat(photo.id()).isEqualTo(id));
    }

    private String photo(Corner corner) {
        var id = UUID.randomUUID().toString();
        photoMadeAt = photoMadeAt.plusSeconds(1);
        var photo = new Photo(id, corner, null, "Bo", photoMadeAt, false);
        shop.book.photos().add(here, new KeptPhoto(photo, new Jpeg("no picture".getBytes(StandardCharsets.UTF_8))));
        return id;
    }

    /** The desk has the same form for all three, and moves all of them or none. */
    @Test
    void theDeskMovesReadingsTicksAndPhotosAlike() throws Exception {
        var tick = TabletEntries.tick("RECEIVED", true);
        send(TabletEntries.pad("INNER", "8.0"), tick);
        var photo = photo(Corner.LF);
        assertThat(shop.page(VisitLinks.visitData(here)))
                .contains("Damage and warning lights looked at", "value=\"RF\"", "photo." + photo);
        assertThat(atDesk(Map.of("photo." + photo, "1", "to", "nobody", "reason", "Mixed up")))
                .isEqualTo(422);
        assertThat(atDesk(Map.of("reason", "Mixed up", "to", there)))
                .as("nothing chosen")
                .isEqualTo(422);
        var chosen = Map.of("step.PADS_AND_MOVEMENT", "1", "photo." + photo, "1");
        assertThat(atDesk(with(chosen, Map.of("corner", "RF", "reason", "Wrong side"))))
                .isEqualTo(303);
        assertThat(shop.book.photos().list(here))
                .singleElement()
                .satisfies(moved -> assertThat(moved.corner()).isEqualTo(Corner.RF));
        assertThat(new StandingReadings(shop.visit(here)).all())
                .singleElement()
                .satisfies(moved -> assertThat(moved.corner()).isEqualTo(Corner.RF));
        assertThat(atDesk(Map.of("all", "1", "to", there, "reason", "Mixed up")))
                .isEqualTo(303);
        assertThat(shop.book.photos().list(here)).isEmpty();
        assertThat(StandingTicks.of(shop.book.records().notes(here).ticks())
                        .find("RECEIVED", null)
                        .orElseThrow()
                        .done())
                .isFalse();
        assertThat(shop.book.records().notes(there).ticks())
                .singleElement()
                .satisfies(moved -> assertThat(moved.person()).isEqualTo("Ada"));
        assertThat(shop.book.photos().list(there)).hasSize(1);
        assertThat(new StandingReadings(shop.visit(there)).all()).hasSize(1);
    }

    /** What belongs to several corners is not heaped on one. */
    @Test
    void theDeskMovesOnlyOneCornerToAnother() throws Exception {
        photo(Corner.LF);
        photo(Corner.RR);
        assertThat(atDesk(Map.of("photos", "1", "corner", "RF", "reason", "Wrong side")))
                .isEqualTo(422);
        assertThat(shop.book.photos().list(here)).extracting(Photo::corner).containsExactly(Corner.LF, Corner.RR);
    }

    private static Map<String, String> with(Map<String, String> fields, Map<String, String> more) {
        var all = new HashMap<>(fields);
        all.putAll(more);
        return all;
    }

    private int atDesk(Map<String, String> fields) throws Exception {
        return shop.form("/visits/" + here + "/move", with(fields, Map.of("person", "Ada")))
                .statusCode();
    }

    /** Three taps: what, and where it belongs. */
    @Test
    void aReadingIsMovedByTouchToAnotherCornerAndToAnotherCar() throws Exception {
        send(TabletEntries.pad("INNER", "8.0"), TabletEntries.pad("OUTER", "7.5"));
        BrowserContext tablet = chromium.newTablet(390, 844);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        Page page = tablet.newPage();
        open(page, there, "RECEIVE");
        open(page, here, "BRAKE.LF");
        page.getByText("This belongs elsewhere").click();
        var thing = page.locator(".elsewhere button.tick");
        assertThat(thing).hasCount(2);
        for (var target : thing.all()) {
            assertThat(target.boundingBox().height).isGreaterThanOrEqualTo(44);
        }
        Axe.assertNoViolation(page, "elsewhere at 390");
        thing.first().click();
        page.getByText("To RF").click();
        assertThat(thing).hasCount(1);
        thing.first().click();
        page.locator(
                        ".elsewhere button.quiet",
                        new Page.LocatorOptions().setHasText(other.vehicle().name()))
                .click();
        assertThat(page.locator(".elsewhere")).isHidden();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(shop.readings(here))
                .singleElement()
                .satisfies(reading -> assertThat(reading.corner()).isEqualTo(Corner.RF));
        assertThat(shop.readings(there)).singleElement().satisfies(reading -> {
            assertThat(reading.corner()).isEqualTo(Corner.LF);
            assertThat(reading.asWritten()).isEqualTo("8.0 mm");
        });
    }

    /** What was read at the right corner already is shown, and written over by a second tap alone. */
    @Test
    void aReadingIsNotMovedOverAnotherWithoutAsking() throws Exception {
        send(TabletEntries.pad("INNER", "8.0"));
        assertThat(send(move("READING", shop.readings(here).getFirst().id(), Map.of("corner", "RF")))
                        .getFirst()
                        .path("status")
                        .stringValue())
                .isEqualTo("stored");
        send(TabletEntries.pad("INNER", "7.5"));
        var tablet = chromium.newTablet(1180, 820);
        tablet.addInitScript("localStorage.setItem('person', 'Ada')");
        var page = tablet.newPage();
        open(page, here, "BRAKE.LF");
        page.getByText("This belongs elsewhere").click();
        page.locator(".elsewhere button.tick").first().click();
        page.getByText("To RF").click();
        assertThat(page.locator(".elsewhere .caution")).containsText("RF Pad inner: 8");
        page.getByText("Leave it where it is").click();
        page.getByText("To RF").click();
        page.getByText("To RF, in its place").click();
        assertThat(page.locator("#link")).hasText("All in the book");
        assertThat(page.locator(".elsewhere")).isHidden();
        assertThat(new StandingReadings(shop.visit(here)).all()).singleElement().satisfies(reading -> {
            assertThat(reading.corner()).isEqualTo(Corner.RF);
            assertThat(reading.asWritten()).isEqualTo("7.5 mm");
        });
    }

    private void open(Page page, String visit, String step) {
        page.navigate(shop.address("/bay/visits/" + visit + "#" + step));
        assertThat(page.locator("#main h2")).isVisible();
        assertThat(page.locator("#link")).hasText("All in the book");
    }
}
