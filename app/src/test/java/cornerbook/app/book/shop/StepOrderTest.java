package cornerbook.app.book.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.record.CarRecord;
import cornerbook.app.book.store.Migrations;
import cornerbook.app.cars.CarLibrary;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Vehicle;
import cornerbook.core.say.Refused;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteDataSource;

/** The order of the work and what it may not turn round. Cars are invented. */
class StepOrderTest {
    private static final CarHistory DRUMS = CarLibrary.car(CarLibrary.text("drums-behind-in-order"));
    private static final CarHistory DISCS = CarLibrary.car(CarLibrary.text("sound-car"));

    private final StepOrder brakesFirst = StepOrder.USUAL.moved(SheetStep.BRAKES, true, null);

    @AutoClose
    private Book book;

    @BeforeEach
    void open(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        book.records().add(List.of(new CarRecord(DRUMS), new CarRecord(DISCS)));
    }

    @Test
    void nothingThatSafetyAsksForIsTurnedRound() {
        assertThat(rule(SheetStep.LIFT, false)).isEqualTo(StepRule.LIFTED_BEFORE_WHEELS_OFF);
        assertThat(rule(SheetStep.TORQUE, true))
                .as("pressure and torque may change places")
                .isNull();
        var torqueEarly = StepOrder.USUAL.moved(SheetStep.TORQUE, true, null);
        assertThat(torqueEarly.refusal(SheetStep.TORQUE, true, null)).contains(StepRule.ON_BEFORE_TORQUE);
        assertThat(rule(SheetStep.PEDAL, true)).isEqualTo(StepRule.BRAKES_BEFORE_PEDAL);
        assertThat(StepOrder.USUAL.canBeBeside(SheetStep.BURNISH, false))
                .as("hand-over is last")
                .isFalse();
        assertThat(StepOrder.USUAL.canBeBeside(SheetStep.LIFT, true))
                .as("receiving is first")
                .isFalse();
    }

    /** However steps are moved, no order comes about in which anybody drives or hands over on wheels that are not tight. */
    @Test
    void noWayOfMovingBreaksARule() {
        var random = new Random(7);
        var order = StepOrder.USUAL;
        for (int i = 0; i < 2000; i++) {
            var step = SheetStep.values()[random.nextInt(SheetStep.values().length)];
            boolean up = random.nextBoolean();
            if (order.canBeBeside(step, up) && order.refusal(step, up, null).isEmpty()) {
                order = order.moved(step, up, null);
            }
            assertThat(order.steps())
                    .containsSubsequence(
                            SheetStep.LIFT, SheetStep.OFF, SheetStep.ON, SheetStep.TORQUE, SheetStep.BURNISH)
                    .endsWith(SheetStep.DEPART);
        }
        assertThat(order).isNotEqualTo(StepOrder.USUAL);
    }

    @Test
    void anOrderThatBreaksARuleCannotBe() {
        var wrong = new ArrayList<>(StepOrder.USUAL.steps());
        Collections.swap(wrong, wrong.indexOf(SheetStep.ON), wrong.indexOf(SheetStep.TORQUE));
        assertThatThrownBy(() -> new StepOrder(wrong)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new StepOrder(List.of(SheetStep.RECEIVE))).hasMessageContaining("every step once");
    }

    /** A drum is only seen with the wheel off, whatever the shop does with discs. */
    @Test
    void aCarWithDrumsHasItsWheelsOffFirst() {
        book.stepOrders().put(null, brakesFirst);
        assertThat(book.stepOrders().of(DISCS.vehicle()).steps()).containsSubsequence(SheetStep.BRAKES, SheetStep.OFF);
        assertThat(book.stepOrders().of(DRUMS.vehicle()).steps())
                .containsSubsequence(SheetStep.OFF, SheetStep.BRAKES, SheetStep.PEDAL);
        assertThatThrownBy(() -> StepOrder.USUAL.moved(SheetStep.BRAKES, true, DRUMS.vehicle()))
                .isInstanceOf(Refused.class);
    }

    @Test
    void anOrderOfAKindHoldsForCarsOfThatKindOnly() {
        var one = DISCS.vehicle();
        book.stepOrders().put(one, brakesFirst);
        assertThat(book.stepOrders().findOfKind(named(one, one.name() + ", green")))
                .contains(brakesFirst);
        assertThat(book.stepOrders().findOfKind(named(one, "Other Kind"))).isEmpty();
        assertThat(book.stepOrders().ofShop()).isEqualTo(StepOrder.USUAL);
    }

    /** A book in which the brakes came first keeps that. */
    @Test
    void anOlderBookKeepsItsOrder(@TempDir Path folder) throws Exception {
        var source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + folder.resolve("book.db"));
        var migrations = Migrations.of(source, "sqlite");
        Flyway.configure()
                .configuration(migrations.getConfiguration())
                .target("38")
                .load()
                .migrate();
        try (var connection = source.getConnection();
                var statement = connection.createStatement()) {
            statement.execute("insert into shop_rule (rule) values ('BRAKES_FIRST'), ('SECOND_CHECK')");
        }
        migrations.migrate();
        try (var connection = source.getConnection();
                var statement = connection.createStatement()) {
            var steps = statement.executeQuery("select steps from step_order where vehicle_id is null");
            assertThat(steps.next()).isTrue();
            assertThat(StepOrder.parse(steps.getString(1)).steps())
                    .containsSubsequence(SheetStep.BRAKES, SheetStep.PEDAL, SheetStep.OFF);
        }
        try (var connection = source.getConnection();
                var statement = connection.createStatement()) {
            var rules = statement.executeQuery("select rule from shop_rule");
            assertThat(rules.next()).isTrue();
            assertThat(rules.getString(1)).isEqualTo("SECOND_CHECK");
            assertThat(rules.next()).isFalse();
        }
    }

    private static @Nullable StepRule rule(SheetStep step, boolean up) {
        return StepOrder.USUAL.refusal(step, up, null).orElse(null);
    }

    /** Another car with the same data, of which no VIN is known. */
    private static Vehicle named(Vehicle car, String name) {
        return new Vehicle(
                "another",
                name,
                "ANO 123",
                null,
                car.drive(),
                car.drivesElectric(),
                car.jurisdiction(),
                car.front(),
                car.rear(),
                car.fastener(),
                car.battery(),
                car.brakeFluid(),
                car.details());
    }
}
