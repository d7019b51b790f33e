package cornerbook.core.car;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.battery.TwelveVoltBattery;
import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.car.ServiceSaid.LubricantKind;
import cornerbook.core.car.ServiceSaid.LubricantPlace;
import cornerbook.core.corner.Axle;
import cornerbook.core.say.Said;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ServiceStepsTest {
    @Test
    void pinsFitTheCaliper() {
        assertThat(measures(Cars.withBrake(Caliper.SLIDING, true)))
                .contains(Measure.SLIDE_PIN_MOVEMENT)
                .doesNotContain(Measure.RETAINING_PIN_MOVEMENT);
        assertThat(measures(Cars.withBrake(Caliper.FIXED, true)))
                .contains(Measure.RETAINING_PIN_MOVEMENT)
                .doesNotContain(Measure.SLIDE_PIN_MOVEMENT);
    }

    @Test
    void aParkingBrakeMotorIsPutIntoServiceModeAndBackAndItsPadBacksStayDry() {
        var with = Cars.withBrake(Caliper.SLIDING, true);
        assertThat(measures(with)).contains(Measure.PARKING_BRAKE_IN_SERVICE_MODE, Measure.PARKING_BRAKE_CYCLED);
        assertThat(padBacks(with)).isEqualTo(LubricantKind.NOTHING);
        var without = Cars.withBrake(Caliper.SLIDING, false);
        assertThat(measures(without))
                .contains(Measure.PARKING_BRAKE_HOLDING)
                .doesNotContain(Measure.PARKING_BRAKE_IN_SERVICE_MODE, Measure.PARKING_BRAKE_CYCLED);
        assertThat(padBacks(without)).isEqualTo(LubricantKind.AS_THE_PAD_MAKER_ASKS);
    }

    @Test
    void cautionsStandWhereTheHandsAre() {
        var car = Cars.withBrake(Caliper.FIXED, true);
        assertThat(ServiceSteps.ofVehicle(car)).anyMatch(step -> says(step, Caution.SERVICE_PLUG));
        var atCorner = ServiceSteps.atCorner(car, Axle.FRONT);
        assertThat(atCorner.get(0).cautions()).containsExactly(Caution.DAMAGED_STUD);
        assertThat(atCorner.get(1).cautions().getFirst()).isEqualTo(Caution.DUST);
        assertThat(ServiceSteps.atCorner(car, Axle.FRONT)).anyMatch(step -> says(step, Caution.GRINDING));
        assertThat(ServiceSteps.ofVehicle(car)).anyMatch(step -> says(step, Caution.PUMP_THE_PEDAL));
    }

    /** Nothing is cranked in an electric car; charge, capacity and standby current are asked for in every car. */
    @Test
    void aCrankingCurrentIsAskedForWhereAnEngineIsCranked() {
        var electric = Cars.vehicle();
        var both = List.of(Measure.BATTERY_VOLTAGE, Measure.STANDBY_CURRENT, Measure.BATTERY_CAPACITY);
        assertThat(measures(Cars.combustion(electric)))
                .contains(Measure.BATTERY_CRANKING_CURRENT, Measure.BATTERY_CRANKING_CURRENT_CHARGED)
                .containsAll(both);
        assertThat(measures(electric))
                .doesNotContain(Measure.BATTERY_CRANKING_CURRENT, Measure.BATTERY_CRANKING_CURRENT_CHARGED)
                .containsAll(both);
    }

    /** At the terminals by the car: an electric car first sleeps (vehicle makers' manuals), with an engine there is no converter. */
    @Test
    void theTerminalsOfAnElectricCarWaitUntilItSleeps() {
        var electric = Cars.vehicle();
        assertThat(Caution.at(WorkStep.BATTERY, electric))
                .contains(Caution.LET_IT_SLEEP, Caution.TERMINALS_ELECTRIC)
                .doesNotContain(Caution.TERMINALS);
        assertThat(Caution.at(WorkStep.BATTERY_CHARGED, electric)).contains(Caution.CHARGED_BY_CONVERTER);
        var combustion = Cars.combustion(electric);
        assertThat(Caution.at(WorkStep.BATTERY, combustion))
                .contains(Caution.LET_IT_REST, Caution.TERMINALS)
                .doesNotContain(Caution.LET_IT_SLEEP, Caution.TERMINALS_ELECTRIC);
        assertThat(Caution.at(WorkStep.BATTERY_CHARGED, combustion)).doesNotContain(Caution.CHARGED_BY_CONVERTER);
    }

    /** While charging by the cells: acid freezes and gives off gas, AGM has a program, lithium is not charged below 0 °C. */
    @Test
    void chargingIsMindedByTheCells() {
        assertThat(charging(Chemistry.FLOODED)).containsExactly(Caution.NEVER_CHARGE_FROZEN, Caution.CHARGING_GAS);
        assertThat(charging(Chemistry.AGM))
                .containsExactly(Caution.NEVER_CHARGE_FROZEN, Caution.CHARGING_GAS, Caution.CHARGER_FOR_AGM);
        assertThat(charging(Chemistry.LITHIUM)).containsExactly(Caution.LITHIUM_ABOVE_ZERO);
    }

    private static List<Caution> charging(Chemistry cells) {
        var battery = new TwelveVoltBattery(cells, 60, null, null, null);
        return Caution.at(WorkStep.BATTERY_CHARGED, Cars.combustion(Cars.withBattery(battery)));
    }

    @Test
    void everyMeasureStandsInOneStepOnly() {
        assertThat(measures(Cars.withBrake(Caliper.SLIDING, true))).doesNotHaveDuplicates();
    }

    private static boolean says(ServiceStep step, Caution caution) {
        return step.cautions().contains(caution);
    }

    private static Said padBacks(Vehicle car) {
        return ServiceSteps.atCorner(car, Axle.REAR).stream()
                .flatMap(step -> step.lubricants().stream())
                .filter(lubricant -> lubricant.place() == LubricantPlace.PAD_BACKS)
                .findFirst()
                .orElseThrow()
                .kind();
    }

    private static List<Measure> measures(Vehicle car) {
        return Stream.of(ServiceSteps.ofVehicle(car), ServiceSteps.atCorner(car, Axle.REAR))
                .flatMap(Collection::stream)
                .flatMap(step -> step.measures().stream())
                .toList();
    }
}
