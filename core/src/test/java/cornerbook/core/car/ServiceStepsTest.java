package cornerbook.core.car;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeSpecification.Caliper;
import cornerbook.core.corner.Axle;
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
        assertThat(padBacks(with)).isEqualTo("nothing");
        var without = Cars.withBrake(Caliper.SLIDING, false);
        assertThat(measures(without))
                .contains(Measure.PARKING_BRAKE_HOLDING)
                .doesNotContain(Measure.PARKING_BRAKE_IN_SERVICE_MODE, Measure.PARKING_BRAKE_CYCLED);
        assertThat(padBacks(without)).isNotEqualTo("nothing");
    }

    @Test
    void cautionsStandWhereTheHandsAre() {
        var car = Cars.withBrake(Caliper.FIXED, true);
        assertThat(ServiceSteps.before(car)).anyMatch(step -> says(step, "high voltage"));
        assertThat(ServiceSteps.atCorner(car, Axle.FRONT).getFirst().cautions().getFirst())
                .contains("never blow");
        assertThat(ServiceSteps.atCorner(car, Axle.FRONT)).anyMatch(step -> says(step, "goggles"));
        assertThat(ServiceSteps.after(car)).anyMatch(step -> says(step, "Pump the pedal"));
    }

    @Test
    void everyMeasureStandsInOneStepOnly() {
        assertThat(measures(Cars.withBrake(Caliper.SLIDING, true))).doesNotHaveDuplicates();
    }

    private static boolean says(ServiceStep step, String words) {
        return step.cautions().stream().anyMatch(caution -> caution.contains(words));
    }

    private static String padBacks(Vehicle car) {
        return ServiceSteps.atCorner(car, Axle.REAR).stream()
                .flatMap(step -> step.lubricants().stream())
                .filter(lubricant -> lubricant.place().equals("pad backs"))
                .findFirst()
                .orElseThrow()
                .kind();
    }

    private static List<Measure> measures(Vehicle car) {
        return Stream.of(ServiceSteps.before(car), ServiceSteps.atCorner(car, Axle.REAR), ServiceSteps.after(car))
                .flatMap(Collection::stream)
                .flatMap(step -> step.measures().stream())
                .toList();
    }
}
