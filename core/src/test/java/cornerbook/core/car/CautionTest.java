package cornerbook.core.car;

import static cornerbook.core.car.Caution.*;
import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.corner.Axle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Who has to mind what, and where: written down by hand from how the trade works, gravest first. */
class CautionTest {
    private static final Vehicle ELECTRIC = Cars.withBrake(Caliper.FIXED, true);
    private static final Vehicle ENGINE_WITH_LEVER = Cars.combustion(Cars.withBrake(Caliper.SLIDING, false));
    private static final Vehicle HYBRID = Cars.hybrid(ENGINE_WITH_LEVER);
    private static final Vehicle BY_WIRE = Cars.byWire(ELECTRIC, true);
    private static final Vehicle BY_FLUID = Cars.byWire(ELECTRIC, false);
    private static final Vehicle LITHIUM =
            Cars.withBattery(new TwelveVoltBattery(Chemistry.LITHIUM, 60, null, null, null));

    private static final Map<WorkStep, List<Caution>> ELECTRIC_CAR = Map.ofEntries(
            Map.entry(WorkStep.RECEIVE, List.of(COLD_TYRES)),
            Map.entry(WorkStep.LIFT, List.of(ORANGE_CABLES, ASLEEP, JACK_MODE, LIFT_POINTS, LOOK_UP)),
            Map.entry(
                    WorkStep.BEFORE_THE_BRAKES,
                    List.of(SERVICE_PLUG, BY_WIRE_CLOSES, CHOCKED, SERVICE_MODE_FIRST, SUPPORT_12_V)),
            Map.entry(WorkStep.LOOK_OVER, List.of(DAMAGED_STUD)),
            Map.entry(WorkStep.PADS_AND_MOVEMENT, List.of(DUST, HOT_DISC, NEVER_BY_ITS_HOSE)),
            Map.entry(WorkStep.DRUM, List.of(DUST)),
            Map.entry(WorkStep.PISTON_AND_HARDWARE, List.of(FLUID_RISES)),
            Map.entry(WorkStep.HUB_AND_DISC_APART, List.of(DIAL_AT_SAME_RADIUS)),
            Map.entry(WorkStep.CLEANED_AND_LUBRICATED, List.of(DUST, GRINDING)),
            Map.entry(WorkStep.REPLACED, List.of(BOTH_SIDES_TOGETHER)),
            Map.entry(WorkStep.CLOSED, List.of(BOLTS_USED_ONCE)),
            Map.entry(WorkStep.PEDAL_AND_PARKING_BRAKE, List.of(BY_WIRE_PEDAL, PUMP_THE_PEDAL)),
            Map.entry(WorkStep.BRAKE_FLUID, List.of(FLUID_BURNS)),
            Map.entry(WorkStep.WHEELS_OFF, List.of(RUSTED_ON, DAMAGED_STUD, SEALANT)),
            Map.entry(WorkStep.WHEELS_ON, List.of(DAMAGED_STUD, BARE_FACES)),
            Map.entry(WorkStep.PRESSURE, List.of(COLD_TYRES)),
            Map.entry(WorkStep.TORQUE, List.of(NO_IMPACT_WRENCH, IN_SEQUENCE)),
            Map.entry(WorkStep.BATTERY, List.of(LET_IT_SLEEP, STANDBY_ASLEEP, TERMINALS_ELECTRIC)),
            Map.entry(WorkStep.BATTERY_CHARGED, List.of(NEVER_CHARGE_FROZEN, CHARGING_GAS, CHARGED_BY_CONVERTER)),
            Map.entry(WorkStep.AFTER_THE_DRIVE, List.of(HOT_DISC, WALKING_SPEED, AIM_AT_ALL_FOUR)));

    private static final Vehicle DRUMS =
            Cars.withRearDrums(new DrumBrake(228.6, 230.6, 5.0, 1.0), BrakeDetails.NOT_KNOWN);

    /** Shoes of the parking brake inside the rear discs. */
    private static final Vehicle PARKING_SHOES = Cars.withRearParkingShoes(null);

    @Test
    void electricCarWithAParkingBrakeMotor() {
        for (var step : WorkStep.values()) {
            assertThat(Caution.at(step, ELECTRIC))
                    .as(step.name())
                    .isEqualTo(ELECTRIC_CAR.getOrDefault(step, List.of()));
        }
    }

    /** A car with an engine may be a hybrid, which the book does not know: what a hybrid needs is said of it too. */
    @Test
    void carWithAnEngineAndALeverDiffersWhereItIsKnownTo() {
        var others = Map.of(
                WorkStep.LIFT, List.of(ORANGE_CABLES, KEY_AWAY, JACK_MODE, LIFT_POINTS, LOOK_UP),
                WorkStep.BEFORE_THE_BRAKES, List.of(SERVICE_PLUG, BY_WIRE_CLOSES),
                WorkStep.BATTERY, List.of(LET_IT_REST, STANDBY_ASLEEP, TERMINALS),
                WorkStep.BATTERY_CHARGED, List.of(NEVER_CHARGE_FROZEN, CHARGING_GAS));
        for (var step : WorkStep.values()) {
            assertThat(Caution.at(step, ENGINE_WITH_LEVER))
                    .as(step.name())
                    .isEqualTo(others.getOrDefault(step, ELECTRIC_CAR.getOrDefault(step, List.of())));
        }
    }

    /**
     * A hybrid has the high voltage of an electric car, and is minded as one; and its drive starts by itself: "an active ready mode is
     * difficult to identify … turn off the ignition, place the key outside of the vehicle" (a vehicle maker's workshop manual on
     * hybrids).
     */
    @Test
    void aHybridIsMindedAsAnElectricCar() {
        for (var step : WorkStep.values()) {
            var electric = new ArrayList<>(Caution.at(step, ELECTRIC));
            electric.removeAll(List.of(CHOCKED, SERVICE_MODE_FIRST, SUPPORT_12_V));
            if (step == WorkStep.BEFORE_THE_BRAKES) {
                electric.add(1, READY_STARTS);
            }
            assertThat(Caution.at(step, HYBRID)).as(step.name()).isEqualTo(electric);
        }
    }

    /** Of a car of which nobody said what drives it, the key is put away once, and the terminals have one order. */
    @Test
    void whatTheCautionOfHighVoltageSaysIsNotSaidOnceMore() {
        var unknown = Cars.ofUnknownPower(ELECTRIC);
        assertThat(Caution.at(WorkStep.LIFT, unknown)).contains(ASLEEP).doesNotContain(KEY_AWAY);
        assertThat(Caution.at(WorkStep.BATTERY, unknown))
                .contains(TERMINALS_ELECTRIC, LET_IT_REST)
                .doesNotContain(TERMINALS);
    }

    /** Until somebody has said, both are minded; then the pedal is pumped or it is not. */
    @Test
    void aPedalThatMovesNoFluidIsNotPumped() {
        assertThat(Caution.at(WorkStep.PEDAL_AND_PARKING_BRAKE, BY_WIRE)).containsExactly(BY_WIRE_PEDAL);
        assertThat(Caution.at(WorkStep.BEFORE_THE_BRAKES, BY_WIRE)).contains(BY_WIRE_CLOSES);
        assertThat(Caution.at(WorkStep.PEDAL_AND_PARKING_BRAKE, BY_FLUID)).containsExactly(PUMP_THE_PEDAL);
        assertThat(Caution.at(WorkStep.BEFORE_THE_BRAKES, BY_FLUID)).doesNotContain(BY_WIRE_CLOSES);
        assertThat(MeasureAt.of(BY_WIRE, Measure.PEDAL_PUMPED, null)).isEqualTo(new CarSaid.BrakesByWireReady());
        assertThat(MeasureAt.of(ELECTRIC, Measure.PEDAL_PUMPED, null))
                .isEqualTo(new MeasureAt(Measure.PEDAL_PUMPED, null));
    }

    /** The dust of a drum comes out with the drum, not with a brush. */
    @Test
    void dustIsMindedWhereTheDrumComesOff() {
        assertThat(ServiceSteps.atCorner(DRUMS, Axle.REAR))
                .filteredOn(step -> step.step() == WorkStep.DRUM)
                .singleElement()
                .satisfies(step -> assertThat(step.cautions()).contains(DUST));
    }

    /** A drum is not knocked off, its springs fly, and a foot on the pedal pushes the pistons out of the wheel cylinder. */
    @Test
    void drumIsMindedWhereItComesOff() {
        assertThat(Caution.at(WorkStep.DRUM, DRUMS)).containsExactly(DUST, DRUM_HELD_BY_ITS_SHOES, SHOES_UNDER_SPRINGS);
        assertThat(Caution.at(WorkStep.DRUM, PARKING_SHOES)).containsExactly(DUST);
    }

    /** Back the adjuster off before the disc; shoes before cable; bed in: makers' service manuals on parking brakes inside a disc. */
    @Test
    void shoesInsideADiscAreMindedWhereTheyAreMet() {
        assertThat(Caution.at(WorkStep.HUB_AND_DISC_APART, PARKING_SHOES))
                .containsExactly(DIAL_AT_SAME_RADIUS, PARKING_SHOES_HOLD_THE_DISC);
        assertThat(Caution.at(WorkStep.CLOSED, PARKING_SHOES))
                .containsExactly(BOLTS_USED_ONCE, PARKING_SHOES_BEFORE_CABLE);
        assertThat(Caution.at(WorkStep.AFTER_THE_DRIVE, PARKING_SHOES))
                .containsExactly(HOT_DISC, WALKING_SPEED, BED_IN_PARKING_SHOES, AIM_AT_ALL_FOUR);
    }

    static Stream<Vehicle> cars() {
        return Stream.of(
                PARKING_SHOES,
                BY_WIRE,
                DRUMS,
                ELECTRIC,
                HYBRID,
                ENGINE_WITH_LEVER,
                LITHIUM,
                Cars.withBrake(Caliper.SLIDING, false));
    }

    @ParameterizedTest
    @MethodSource("cars")
    void noneIsSaidTwiceWhereOneLooks(Vehicle car) {
        for (var axle : Axle.values()) {
            assertThat(said(ServiceSteps.atCorner(car, axle))).doesNotHaveDuplicates();
        }
        assertThat(said(ServiceSteps.ofVehicle(car))).doesNotHaveDuplicates();
    }

    /** Each is for some car, else nobody ever reads it. */
    @Test
    void eachIsSaidOfSomeCar() {
        var agm = Cars.withBattery(new TwelveVoltBattery(Chemistry.AGM, 60, null, null, null));
        var said = EnumSet.noneOf(Caution.class);
        Stream.concat(cars(), Stream.of(agm))
                .forEach(car -> Arrays.stream(WorkStep.values()).forEach(step -> said.addAll(Caution.at(step, car))));
        assertThat(said).containsExactlyInAnyOrder(Caution.values());
    }

    private static List<Caution> said(List<ServiceStep> steps) {
        return steps.stream()
                .map(ServiceStep::cautions)
                .flatMap(Collection::stream)
                .toList();
    }
}
