package cornerbook.core.car;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.car.ServiceSaid.LubricantKind;
import cornerbook.core.car.ServiceSaid.LubricantPlace;
import cornerbook.core.car.ServiceSaid.ServiceCaution;
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
        assertThat(ServiceSteps.ofVehicle(car)).anyMatch(step -> says(step, ServiceCaution.HIGH_VOLTAGE));
        assertThat(ServiceSteps.atCorner(car, Axle.FRONT).getFirst().cautions().getFirst())
                .isEqualTo(ServiceCaution.DUST);
        assertThat(ServiceSteps.atCorner(car, Axle.FRONT)).anyMatch(step -> says(step, ServiceCaution.GRINDING));
        assertThat(ServiceSteps.ofVehicle(car)).anyMatch(step -> says(step, ServiceCaution.PUMP_THE_PEDAL));
    }

    @Test
    void everyMeasureStandsInOneStepOnly() {
        assertThat(measures(Cars.withBrake(Caliper.SLIDING, true))).doesNotHaveDuplicates();
    }

    private static boolean says(ServiceStep step, ServiceCaution caution) {
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
