package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.Migrations;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.tread.judge.StoredWheelCheck.Identity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteConfig.TransactionMode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class BookTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final List<CarHistory> SHOP = DemoShop.histories(TODAY);

    private static final Because BECAUSE = new Because(null, "Other wheels", "Ada", LocalDate.of(2026, 11, 25));

    @TempDir
    private Path folder;

    @Test
    void whatGoesInComesOutEqual() {
        try (var book = Book.open(folder)) {
            book.records().addCars(SHOP);
        }
        try (var book = Book.open(folder)) {
            for (var history : SHOP) {
                assertThat(book.cars().find(history.vehicle().id())).contains(history);
            }
            assertThat(book.check()).isEmpty();
            assertThat(book.cars().list()).hasSize(SHOP.size());
            assertThat(book.visits().list(TODAY)).isNotEmpty();
        }
    }

    /** Drums, counted pistons, a hybrid and brakes by wire, which no car of the demo has. */
    @Test
    void aCarWithDrumsComesOutAsItWentIn() {
        var json = VisitFile.write(new CarHistory(
                SHOP.getFirst().vehicle(),
                SHOP.getFirst().customer(),
                SHOP.getFirst().sets(),
                List.of()));
        var written = JsonMapper.shared().readTree(json);
        var vehicle = (ObjectNode) written.get("vehicle");
        vehicle.put("electric", false).put("hybrid", true).put("brakesByWire", true);
        vehicle.withObject("/frontAxle/brake").put("pistons", 4);
        vehicle.withObject("/rearAxle/brake")
                .removeAll()
                .put("electricParkingBrake", false)
                .put("parkingBrake", "cable")
                .put("drumNew", "180 mm")
                .put("drumDiscard", "181 mm")
                .put("liningNew", "4 mm")
                .put("liningMinimum", "1 mm");
        var read = VisitFile.read(written.toString(), TODAY);
        assertThat(read).isInstanceOf(VisitFile.Read.class);
        var history = ((VisitFile.Read) read).history();
        assertThat(history.vehicle().rear().brake().hasDrum()).isTrue();
        assertThat(history.vehicle().front().brake().pistons()).isEqualTo(4);
        try (var book = Book.open(folder)) {
            book.records().addCar(history);
        }
        try (var book = Book.open(folder)) {
            assertThat(book.cars().find(history.vehicle().id())).contains(history);
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void whatWasLearnedIsKeptAndLearnedAnewInItsPlace() {
        try (var book = Book.open(folder)) {
            assertThat(book.knowledge().read()).isEqualTo(Knowledge.NONE);
            book.records().addCars(SHOP.subList(0, 6));
            book.knowledge().learn(TODAY.minusDays(1));
            book.records().addCars(SHOP.subList(6, SHOP.size()));
            book.knowledge().learn(TODAY);
        }
        try (var book = Book.open(folder)) {
            var knowledge = book.knowledge().read();
            var expected = Learner.learn(book.cars().listHistories(), TODAY);
            assertThat(knowledge.learnedOn()).isEqualTo(TODAY);
            assertThat(knowledge.distances()).isEqualTo(expected.distances());
            assertThat(knowledge.seizing()).isNotNull().isEqualTo(expected.seizing());
            assertThat(knowledge.wear().rows())
                    .containsExactlyInAnyOrderElementsOf(expected.wear().rows());
        }
    }

    /** Cars that are all alike leave the curvature of the likelihood without a maximum; learning ends all the same. */
    @Test
    void aBookOfSixHundredCarsThatAreMuchAlikeIsLearned() {
        try (var book = Book.open(folder)) {
            book.records()
                    .addCars(IntStream.range(0, 50)
                            .boxed()
                            .flatMap(copy -> SHOP.stream().map(car -> copyOf(car, copy)))
                            .toList());
            var knowledge = book.knowledge().learn(TODAY);
            assertThat(book.knowledge().read().wear().rows())
                    .containsExactlyInAnyOrderElementsOf(knowledge.wear().rows());
            assertThat(book.knowledge().read().distances()).isEqualTo(knowledge.distances());
            assertThat(book.knowledge().read().seizing()).isNotNull().isEqualTo(knowledge.seizing());
            assertThat(knowledge.wear().rows()).isNotEmpty().allSatisfy(row -> {
                assertThat(row.learned().standardErrors().values()).allMatch(error -> error > 0 && error <= 0.4);
            });
        }
    }

    /** The same car under other identities. */
    private static CarHistory copyOf(CarHistory car, int copy) {
        var json = VisitFile.write(car).replace("\"demo-", "\"c" + copy + "-demo-");
        for (var wheel :
                car.sets().stream().flatMap(set -> set.wheels().stream()).toList()) {
            json = json.replace("\"" + wheel.tag() + "\"", "\"c" + copy + "-" + wheel.tag() + "\"");
        }
        return ((VisitFile.Read) VisitFile.read(json, TODAY)).history();
    }

    @Test
    void eachChangeOfItsHistoryRaisesACarsRevision() {
        try (var book = Book.open(folder)) {
            var car = SHOP.get(1);
            var last = car.visits().getLast();
            book.records()
                    .addCar(new CarHistory(
                            car.vehicle(),
                            car.customer(),
                            car.sets(),
                            car.visits().subList(0, car.visits().size() - 1)));
            long added = revision(book);
            book.visits().add(car.vehicle().id(), last.withReadings(List.of()).withLeftOn(Map.of()));
            long visited = revision(book);
            book.visits().recordLeaving(last.id(), last.leftOn(), List.of(), List.of(), BECAUSE);
            long left = revision(book);
            book.readings().add(last.id(), last.readings());
            assertThat(List.of(added, visited, left, revision(book))).isSorted().doesNotHaveDuplicates();
        }
    }

    private static long revision(Book book) {
        return book.cars().findRevision(book.cars().list().getFirst().id()).orElseThrow();
    }

    @Test
    void aCarIsAddedOnceAndAllOrNone() {
        try (var book = Book.open(folder)) {
            book.records().addCar(SHOP.get(1));
            assertThatThrownBy(() -> book.records().addCars(SHOP.subList(0, 2)))
                    .isInstanceOf(BookException.class)
                    .extracting(InEnglish::told, STRING)
                    .contains("in the book already");
            assertThat(book.cars().list()).hasSize(1);
        }
    }

    @Test
    void readingsAreNeverChangedOrDeleted() throws SQLException {
        try (var book = Book.open(folder)) {
            book.records().addCar(SHOP.getFirst());
        }
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BookFile.NAME));
                var statement = connection.createStatement()) {
            assertThatThrownBy(() -> statement.execute("update reading set amount = 1"))
                    .hasMessageContaining("never changed");
            assertThatThrownBy(() -> statement.execute("delete from reading")).hasMessageContaining("never deleted");
        }
    }

    @Test
    void aReadingSentTwiceIsKeptOnceAndACorrectionIsANewOne() {
        try (var book = Book.open(folder)) {
            book.records().addCars(SHOP);
            var visit = someVisit();
            var reading = vehicleReading("test-1", 12.6, null, null);
            book.readings().add(visit.id(), List.of(reading));
            book.readings().add(visit.id(), List.of(reading));
            assertThat(readings(book, visit))
                    .filteredOn(r -> r.id().equals("test-1"))
                    .hasSize(1);
            assertThatThrownBy(
                            () -> book.readings().add(visit.id(), List.of(vehicleReading("test-1", 12.7, null, null))))
                    .extracting(InEnglish::told, STRING)
                    .contains("another value");
            book.readings().add(visit.id(), List.of(vehicleReading("test-2", 12.7, "test-1", "misread")));
            assertThat(readings(book, visit)).extracting(Reading::id).contains("test-1", "test-2");
            var elsewhere = SHOP.get(1).visits().getLast().id();
            assertThatThrownBy(() -> book.readings().add(elsewhere, List.of(reading)))
                    .extracting(InEnglish::told, STRING)
                    .contains("another visit");
            assertThatThrownBy(() -> book.readings().add("nowhere", List.of(reading)))
                    .extracting(InEnglish::told, STRING)
                    .contains("No visit nowhere");
        }
    }

    @Test
    void aReadingDeeperThanNewIsRefusedAndNothingIsKept() {
        try (var book = Book.open(folder)) {
            book.records().addCars(SHOP);
            var visit = someVisit();
            var corner = Corner.LF;
            var tag = visit.arrivedOn().get(corner);
            var deep = new Reading("deep", Measure.TREAD_DEPTH, corner, tag, Spot.INNER, 15, "15 mm", null, null);
            assertThatThrownBy(() ->
                            book.readings().add(visit.id(), List.of(vehicleReading("with-it", 12.6, null, null), deep)))
                    .isInstanceOf(BookException.class)
                    .extracting(InEnglish::told, STRING)
                    .contains("deeper than new");
            assertThat(readings(book, visit)).extracting(Reading::id).doesNotContain("with-it", "deep");
        }
    }

    @Test
    void fittingOpensARetorqueUntilItIsRecorded() {
        try (var book = Book.open(folder)) {
            book.records().addCars(SHOP);
            var open = book.retorques().listOpen();
            assertThat(open).isNotEmpty();
            var first = open.getFirst();
            assertThatThrownBy(() -> book.retorques()
                            .record(first.visitId(), first.dueDate(), first.dueOdometerKm() - 5000, 140, null))
                    .extracting(InEnglish::told, STRING)
                    .contains("or later");
            book.retorques().record(first.visitId(), first.dueDate(), first.dueOdometerKm() + 3, 120, null);
            assertThat(book.retorques().listOpen())
                    .extracting(OpenRetorque::visitId)
                    .doesNotContain(first.visitId());
        }
    }

    @Test
    void aMixedUpWheelIsStopped() {
        try (var book = Book.open(folder)) {
            var history = withTwoSets();
            book.records().addCar(history);
            var last = history.visits().getLast();
            var stored = history.sets().stream()
                    .filter(set -> set.wheels().stream()
                            .noneMatch(wheel -> last.leftOn().containsValue(wheel.tag())))
                    .findFirst()
                    .orElseThrow();
            var leaving = new EnumMap<Corner, String>(Corner.class);
            for (var corner : Corner.values()) {
                leaving.put(corner, stored.wheels().get(corner.ordinal()).tag());
            }
            var visit = new Visit(
                    "mix", last.date().plusDays(180), last.odometerKm() + 7000, last.leftOn(), Map.of(), List.of());
            book.visits().add(history.vehicle().id(), visit);
            var wrong = new Identity(stored.wheels().getFirst().tag(), "0101", null);
            assertThatThrownBy(() -> book.visits().recordLeaving("mix", leaving, List.of(wrong), List.of(), BECAUSE))
                    .isInstanceOf(BookException.class)
                    .extracting(InEnglish::told, STRING)
                    .contains("wrong wheel");
            assertThat(book.cars()
                            .findOfVisit("mix")
                            .orElseThrow()
                            .getVisit("mix")
                            .leftOn())
                    .isEmpty();
            var twice = new EnumMap<>(leaving);
            twice.put(Corner.RR, stored.wheels().getFirst().tag());
            assertThatThrownBy(() -> book.visits().recordLeaving("mix", twice, List.of(), List.of(), BECAUSE))
                    .extracting(InEnglish::told, STRING)
                    .contains("at once");
            var correctsNothing = new Reading(
                    "new", Measure.BATTERY_TEMPERATURE, null, null, null, 11, "11 °C", "not there", "mistyped");
            assertThatThrownBy(() ->
                            book.visits().recordLeaving("mix", leaving, List.of(), List.of(correctsNothing), BECAUSE))
                    .isInstanceOf(BookException.class);
            assertThat(book.visits().find("mix").orElseThrow().leftOn())
                    .as("a reading that cannot stand leaves the wheels as they were")
                    .isEmpty();
            book.visits().recordLeaving("mix", leaving, List.of(), List.of(), BECAUSE);
            assertThat(book.retorques().listOpen())
                    .extracting(OpenRetorque::visitId)
                    .contains("mix");
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void backupAndRestoreGiveTheSameBook() {
        var copy = folder.resolve("copy.sqlite");
        try (var book = Book.open(folder.resolve("one"))) {
            book.records().addCars(SHOP);
            book.backup(copy);
            assertThatThrownBy(() -> book.backup(copy))
                    .extracting(InEnglish::told, STRING)
                    .contains("there already");
        }
        Book.restore(copy, folder.resolve("two"));
        try (var book = Book.open(folder.resolve("two"))) {
            assertThat(book.cars().find(SHOP.getLast().vehicle().id())).contains(SHOP.getLast());
        }
        assertThatThrownBy(() -> Book.restore(copy, folder.resolve("two")))
                .extracting(InEnglish::told, STRING)
                .contains("has a book already");
    }

    @Test
    void anOlderBookIsBroughtUpToDateAndKeepsTheLatestRetorqueOpen() throws IOException, SQLException {
        var source = BookFile.source(Files.createFile(folder.resolve(BookFile.NAME)), TransactionMode.IMMEDIATE);
        Flyway.configure()
                .configuration(Migrations.of(source, "sqlite").getConfiguration())
                .target("3")
                .load()
                .migrate();
        try (var handle = Jdbi.open(source)) {
            handle.execute("insert into customer (id, name) values ('C', 'Invented Person')");
            handle.execute(
                    "insert into vehicle (id, customer_id, name, plate, drive, electric, jurisdiction, fastener_thread, fastener_count, fastener_seat, fastener_torque_nm, retorque_after_km, battery_chemistry, battery_capacity_ah) values ('CAR', 'C', 'Invented car', 'QX 1', 'FRONT', 1, 'CA-QC', 'M12×1.5', 5, 'CONE', 120, 80, 'AGM', 60)");
            for (var axle : List.of("FRONT", "REAR")) {
                handle.execute(
                        "insert into vehicle_axle (vehicle_id, axle, axle_load_kg, tyre_size, load_index, speed_symbol, placard_pressure_kpa, caliper, electric_parking_brake, pad_new_mm, pad_minimum_mm, disc_new_mm, disc_minimum_mm, runout_limit_mm, thickness_variation_limit_mm) values ('CAR', ?, 1000, '205/55R16', 91, 'H', 240, 'SLIDING', 1, 11, 3, 26, 24, 0.05, 0.015)",
                        axle);
            }
            for (var day : List.of("2025-10-20", "2026-04-20")) {
                handle.execute(
                        "insert into visit (id, vehicle_id, visit_date, odometer_km) values (?, 'CAR', ?, 10000)",
                        day,
                        day);
                handle.execute(
                        "insert into retorque (visit_id, due_odometer_km, due_date, torque_nm) values (?, 1, '2026-01-01', 1)",
                        day);
            }
            // As a book from before the quotation marks in V1.
            handle.execute("update flyway_schema_history set checksum = 1 where version = '1'");
        }
        try (var book = Book.open(folder)) {
            assertThat(book.retorques().listOpen())
                    .extracting(OpenRetorque::visitId)
                    .containsExactly("2026-04-20");
            assertThat(book.check()).isEmpty();
            assertThat(book.cars().find("CAR").orElseThrow().vehicle().details())
                    .isEqualTo(VehicleDetails.NOT_KNOWN);
        }
    }

    private Visit someVisit() {
        return SHOP.getFirst().visits().getLast();
    }

    private static List<Reading> readings(Book book, Visit visit) {
        return book.cars()
                .findOfVisit(visit.id())
                .orElseThrow()
                .getVisit(visit.id())
                .readings();
    }

    private static CarHistory withTwoSets() {
        return SHOP.stream()
                .filter(history -> history.sets().size() == 2
                        && history.visits().getLast().date().isBefore(TODAY)
                        && history.visits().getLast().leftOn().size() == 4
                        && history.sets().stream().allMatch(set -> set.wheels().size() == 4))
                .findFirst()
                .orElseThrow();
    }

    private static Reading vehicleReading(String id, double volts, @Nullable String corrects, @Nullable String reason) {
        return new Reading(id, Measure.BATTERY_VOLTAGE, null, null, null, volts, volts + " V", corrects, reason);
    }
}
