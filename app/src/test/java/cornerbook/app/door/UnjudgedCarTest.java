package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.bay.BayRoom;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Limit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A car that cannot be judged keeps no other car back, and its entries can be put right. */
class UnjudgedCarTest {
    private static final Path EXAMPLE = Path.of("../docs/examples/seasonal-visit.json");
    private static final String ELSEWHERE = "XX";

    @TempDir
    private Path folder;

    /** A depth that can be, and that no wear from the visit before explains. */
    @Test
    void aPlausibleTypoBreaksNoPageAndIsPutRight() throws Exception {
        var cars = new ArrayList<>(ServedShop.cars());
        var example = read(Files.readString(EXAMPLE));
        cars.add(example);
        var slot = new Slot(Measure.TREAD_DEPTH, Corner.LF, "EX-W4", Spot.INNER);
        var visit = example.getVisit("example-v3");
        assertThat(slot.findIn(visit).orElseThrow().asWritten()).isEqualTo("6.7 mm");
        try (var shop = shop(cars, new Assessor(LimitsFile.load()))) {
            shop.book().knowledge().learn(ServedShop.TODAY);
            shop.kill();
            shop.restart();
            var pages = new CarPages(shop);
            assertThat(pages.typeAtBay("example-v3", slot, "8.7")).isEqualTo("stored");
            pages.assertAnswer(example, "example-v3", "the typo");
            pages.assertAnswers(VisitLinks.handover("example-v3"), "the typo");
            var list = shop.get("/").body();
            cars.forEach(car -> assertThat(list).contains(car.vehicle().plate()));

            assertThat(slot.findIn(shop.visit("example-v3")).orElseThrow().value())
                    .isEqualTo(8.7);
            assertThat(pages.typeAtDesk("example-v3", slot, "6.7")).isTrue();
            assertThat(slot.findIn(shop.visit("example-v3")).orElseThrow().value())
                    .isEqualTo(6.7);
            shop.waitUntilJudged();
            assertThat(shop.get("/").body()).doesNotContain("could not be judged", "being judged");
            assertThat(shop.get(VisitLinks.findings("example-v3")).body()).contains("Hand-over sheet");
        }
    }

    /** The limits of its place are not on file, so judging it faults whatever was entered. */
    @Test
    void aCarThatFaultsIsShownAsSuchAndTheOthersStand() throws Exception {
        var cars = new ArrayList<>(ServedShop.cars().subList(0, 3));
        var sound = cars.getFirst();
        var car = read(VisitFile.write(cars.removeLast())
                .replaceFirst("\"jurisdiction\" : \"[^\"]*\"", "\"jurisdiction\" : \"" + ELSEWHERE + "\""));
        cars.add(car);
        var visitId = car.visits().getLast().id();
        try (var shop = shop(cars, withoutHouseRules())) {
            var pages = new CarPages(shop);
            shop.waitUntilJudged();
            assertThat(shop.get("/").body())
                    .contains(sound.vehicle().plate(), car.vehicle().plate())
                    .containsOnlyOnce("could not be judged")
                    .containsPattern("fault [0-9a-f]{8}");
            assertThat(shop.get(CarLinks.car(car.vehicle().id())).body())
                    .contains("could not be judged", VisitLinks.visit(visitId), "Specification")
                    .containsPattern("[0-9a-f]{8} in the log");
            for (var path : List.of(VisitLinks.findings(visitId), VisitLinks.plan(visitId))) {
                var page = shop.get(path);
                assertThat(page.statusCode()).as(path).isEqualTo(200);
                assertThat(page.body())
                        .contains("could not be judged", "href=\"" + VisitLinks.visit(visitId) + "\"")
                        .containsPattern("[0-9a-f]{8} in the log")
                        .doesNotContain("Exception", "null");
            }
            var sheet = shop.get(VisitLinks.handover(visitId));
            assertThat(sheet.statusCode()).isEqualTo(409);
            assertThat(sheet.body()).contains("could not be judged");
            pages.assertAnswer(car, visitId, "nothing");
            assertThat(shop.get(CarLinks.car(sound.vehicle().id())).body())
                    .contains("Latest findings")
                    .doesNotContain("could not be judged");
            assertThat(shop.get(VisitLinks.findings(sound.visits().getLast().id()))
                            .body())
                    .contains("Hand-over sheet");

            var slot = new Slot(Measure.OUTSIDE_TEMPERATURE, null, null, null);
            assertThat(pages.typeAtBay(visitId, slot, "3")).isEqualTo("stored");
            assertThat(pages.typeAtDesk(visitId, slot, "4")).isTrue();
            assertThat(slot.findIn(shop.visit(visitId)).orElseThrow().value()).isEqualTo(4);
        }
    }

    /** A value that the book cannot give back, as after damage. */
    @Test
    void aCarThatCannotBeReadStandsInTheListToo() throws Exception {
        var cars = ServedShop.cars().subList(0, 3);
        var damaged = cars.getFirst().vehicle();
        try (var shop = shop(cars, new Assessor(LimitsFile.load()))) {
            try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("book.sqlite"));
                    var statement = connection.createStatement()) {
                // Damage is met when the car is judged next.
                statement.execute("update vehicle set revision = revision + 1, fastener_seat = 'GLUED' where id = '"
                        + damaged.id() + "'");
            }
            assertThat(shop.get("/").statusCode()).isEqualTo(200);
            shop.waitUntilJudged();
            var list = shop.get("/");
            assertThat(list.statusCode()).isEqualTo(200);
            assertThat(list.body())
                    .containsOnlyOnce("could not be judged")
                    .contains(damaged.plate(), cars.getLast().vehicle().plate());
        }
    }

    private ServedShop shop(List<CarHistory> cars, Assessor assessor) {
        return new ServedShop(folder, cars, () -> new Room[] {new BayRoom()}, assessor);
    }

    private static CarHistory read(String json) {
        if (VisitFile.read(json, ServedShop.TODAY) instanceof VisitFile.Read read) {
            return read.history();
        }
        throw new IllegalArgumentException("the visit file was refused");
    }

    /** What serves where no row names the place is taken away. */
    private static Assessor withoutHouseRules() {
        return new Assessor(LimitsFile.load().stream()
                .map(limit -> limit.jurisdiction().equals("*")
                        ? new Limit(
                                "CA-QC",
                                limit.kind(),
                                limit.season(),
                                limit.value(),
                                limit.from(),
                                limit.until(),
                                limit.citation())
                        : limit)
                .toList());
    }
}
