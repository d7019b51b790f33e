package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.car.CarSaid;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.visit.Because;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What happens when cars, visits and re-torques come on top of those that the book has. */
class BookChangesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final CarHistory CAR = finished();
    private static final Visit LAST = CAR.visits().getLast();

    private static final Because BECAUSE = new Because(null, "Other wheels", "Ada", LocalDate.of(2026, 11, 25));

    @TempDir
    private Path folder;

    private Book book;

    @BeforeEach
    void open() {
        book = EmptyBook.open(folder);
        book.records().addCar(CAR);
    }

    @AfterEach
    void isSound() {
        assertThat(book.check()).isEmpty();
        book.close();
    }

    @Test
    void anIdOfAnotherCarIsNamedWithItsOwner() {
        var sameWheels = new CarHistory(named("other"), CAR.customer(), CAR.sets(), List.of());
        var tag = CAR.sets().getFirst().wheels().getFirst().tag();
        assertThatThrownBy(() -> book.records().addCar(sameWheels))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("The wheel %s of car other is in the book as one of car %s, expected a tag of its own"
                        .formatted(tag, CAR.vehicle().id()));
        var sameVisit = new CarHistory(named("other"), CAR.customer(), List.of(), List.of(bare(LAST.id())));
        assertThatThrownBy(() -> book.records().addCar(sameVisit))
                .extracting(InEnglish::told, STRING)
                .contains("The visit %s of car other is in the book".formatted(LAST.id()));
        var volts = volts(LAST.readings().getFirst().id());
        var sameReading = new CarHistory(
                named("other"), CAR.customer(), List.of(), List.of(bare("new").withReadings(List.of(volts))));
        assertThatThrownBy(() -> book.records().addCar(sameReading))
                .extracting(InEnglish::told, STRING)
                .contains("The reading %s of visit new is in the book at visit".formatted(volts.id()));
        assertThat(book.cars().list()).hasSize(1);
    }

    @Test
    void aKnownCustomerIsBroughtUpToDateAndTold() {
        var known = CAR.customer();
        var moved = new Customer(known.id(), known.name(), "555 0199", null);
        var changed = book.records().addCars(List.of(new CarHistory(named("second"), moved, List.of(), List.of())));
        assertThat(changed).containsExactly(new Customer(known.id(), known.name(), "555 0199", known.email()));
        assertThat(book.cars().find(CAR.vehicle().id()).orElseThrow().customer())
                .isEqualTo(changed.getFirst());
        assertThat(book.records()
                        .addCars(List.of(new CarHistory(named("third"), changed.getFirst(), List.of(), List.of()))))
                .isEmpty();
    }

    @Test
    void aRefusedImportLeavesTheCustomerAsItWas() {
        var moved = new Customer(CAR.customer().id(), "Another Name", null, null);
        assertThatThrownBy(() -> book.records()
                        .addCars(List.of(
                                new CarHistory(named("second"), moved, List.of(), List.of()),
                                new CarHistory(named("second"), moved, List.of(), List.of()))))
                .isInstanceOf(BookException.class);
        assertThat(book.cars().find(CAR.vehicle().id()).orElseThrow().customer())
                .isEqualTo(CAR.customer());
    }

    /** Ids of sets are a car's own: two cars may both have a set "winter". */
    @Test
    void aSetThatIsPutRightLeavesASetOfAnotherCarAlone() {
        var set = CAR.sets().getFirst();
        var other = new CarHistory(
                named("other"),
                CAR.customer(),
                List.of(new WheelSet(set.id(), set.season(), "shelf 9", List.of())),
                List.of());
        book.records().addCar(other);
        var moved = new WheelSet(set.id(), set.season(), "shelf 1", set.wheels());
        var sets = Stream.concat(Stream.of(moved), CAR.sets().stream().skip(1)).toList();
        var id = CAR.vehicle().id();
        book.cars()
                .change(
                        new CarHistory(CAR.vehicle(), CAR.customer(), sets, CAR.visits()),
                        book.cars().findRevision(id).orElseThrow(),
                        TODAY);
        assertThat(book.cars().find(id).orElseThrow().sets()).isEqualTo(sets);
        assertThat(book.cars().find("other")).contains(other);
    }

    @Test
    void aCarWithoutItsCustomerIsAFindingOfTheCheck() throws SQLException {
        try (var damaged = damaged("delete from customer")) {
            assertThat(damaged.check())
                    .contains(new CarSaid.PartMissing(CAR.vehicle().id(), CarSaid.Part.CUSTOMER));
        }
    }

    @Test
    void aValueThatCannotStandIsAFindingOfTheCheck() throws SQLException {
        try (var damaged = damaged("update visit set visit_date = 'soon'")) {
            assertThat(damaged.check())
                    .contains(new CarSaid.Unreadable(CAR.vehicle().id(), new CarSaid.NoDay("soon")));
            assertThatThrownBy(damaged.cars()::listHistories).isInstanceOf(BookException.class);
        }
    }

    @Test
    void aReadSeesTheBookAsAtOneMoment() {
        var file = BookFile.open(folder);
        var counts = file.read(handle -> {
            var before = handle.select("select count(*) from visit")
                    .mapTo(Long.class)
                    .one();
            book.visits().add(CAR.vehicle().id(), later("next", LAST.leftOn(), LAST.leftOn()));
            return List.of(
                    before,
                    handle.select("select count(*) from visit")
                            .mapTo(Long.class)
                            .one());
        });
        assertThat(counts.get(1)).isEqualTo(counts.get(0));
    }

    @Test
    void aVisitAddedWithOtherWheelsOpensItsRetorqueAndSupersedesTheOneBefore() {
        assertThat(openRetorques()).containsExactly(LAST.id());
        book.visits().add(CAR.vehicle().id(), later("change", LAST.leftOn(), LAST.arrivedOn()));
        assertThat(openRetorques()).containsExactly("change");
        assertThatThrownBy(() -> book.retorques().record(LAST.id(), TODAY, LAST.odometerKm() + 90, 140, null))
                .extracting(InEnglish::told, STRING)
                .contains("superseded");
    }

    @Test
    void wheelsThatAreRecordedLaterSupersedeToo() {
        book.visits().add(CAR.vehicle().id(), later("change", LAST.leftOn(), Map.of()));
        assertThat(openRetorques()).containsExactly(LAST.id());
        book.visits().recordLeaving("change", LAST.arrivedOn(), List.of(), List.of(), BECAUSE);
        assertThat(openRetorques()).containsExactly("change");
        // Recorded by mistake: the car left as it came, so the re-torque before it still stands.
        book.visits().recordLeaving("change", LAST.leftOn(), List.of(), List.of(), BECAUSE);
        assertThat(openRetorques()).containsExactly(LAST.id());
    }

    @Test
    void wheelsThatWentOffAndOnForBrakeWorkOpenARetorque() {
        book.visits().add(CAR.vehicle().id(), later("brakes", LAST.leftOn(), LAST.leftOn()));
        assertThat(openRetorques()).containsExactly(LAST.id());
        var tag = LAST.leftOn().get(Corner.LF);
        book.readings()
                .add(
                        "brakes",
                        List.of(new Reading(
                                "torque", Measure.WHEEL_TORQUE, Corner.LF, tag, null, 140, "140 N·m", null, null)));
        assertThat(openRetorques()).containsExactly("brakes");
    }

    @Test
    void aVisitThatIsEnteredLateFindsItsPlace() {
        var first = CAR.visits().getFirst();
        var between = visit(
                "between",
                first.date().plusDays(10),
                first.odometerKm() + 10,
                first.leftOn(),
                CAR.visits().get(1).arrivedOn());
        book.visits().add(CAR.vehicle().id(), between);
        assertThat(book.cars().find(CAR.vehicle().id()).orElseThrow().visits().get(1))
                .isEqualTo(between);
        assertThat(openRetorques()).containsExactly(LAST.id());
    }

    private List<String> openRetorques() {
        return book.retorques().listOpen().stream().map(OpenRetorque::visitId).toList();
    }

    private static CarHistory finished() {
        return DemoShop.histories(TODAY).stream()
                .filter(history -> !history.visits()
                        .getLast()
                        .leftOn()
                        .equals(history.visits().getLast().arrivedOn()))
                .filter(history -> !history.visits().getLast().leftOn().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static Visit later(String id, Map<Corner, String> came, Map<Corner, String> goes) {
        return visit(id, LAST.date().plusDays(30), LAST.odometerKm() + 1000, came, goes);
    }

    private static Visit visit(
            String id, LocalDate date, double odometerKm, Map<Corner, String> came, Map<Corner, String> goes) {
        return new Visit(id, date, odometerKm, came, goes, List.of());
    }

    private static Visit bare(String id) {
        return visit(id, TODAY, 1000, Map.of(), Map.of());
    }

    private static Reading volts(String id) {
        return new Reading(id, Measure.BATTERY_VOLTAGE, null, null, null, 12.6, "12.6 V", null, null);
    }

    private static Vehicle named(String id) {
        var vehicle = CAR.vehicle();
        return new Vehicle(
                id,
                vehicle.name(),
                vehicle.plate(),
                vehicle.vin(),
                vehicle.drive(),
                vehicle.electric(),
                vehicle.jurisdiction(),
                vehicle.front(),
                vehicle.rear(),
                vehicle.fastener(),
                vehicle.battery(),
                vehicle.brakeFluid(),
                vehicle.details());
    }

    /** Another book with the car, after somebody else's statement. */
    private Book damaged(String sql) throws SQLException {
        var place = folder.resolve("damaged");
        try (var sound = EmptyBook.open(place)) {
            sound.records().addCar(CAR);
        }
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + place.resolve(BookFile.NAME));
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
        return EmptyBook.open(place);
    }
}
