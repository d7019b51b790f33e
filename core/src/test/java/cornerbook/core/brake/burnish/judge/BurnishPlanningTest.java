package cornerbook.core.brake.burnish.judge;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.brake.BrakeDetails;
import cornerbook.core.brake.DrumBrake;
import cornerbook.core.brake.burnish.BurnishSaid;
import cornerbook.core.car.Cars;
import cornerbook.core.corner.Axle;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BurnishPlanningTest {
    /** A small car whose drums are never asked for the mass of a disc: 228.6 mm drums, invented. */
    @Test
    void aPlanOfOneAxleAsksNothingOfTheOther() {
        var known = BurnishPlanning.of(
                Cars.withRearDrums(new DrumBrake(228.6, 230.6, 5.0, 1.0), BrakeDetails.NOT_KNOWN), 10);
        var planning = new BurnishPlanning(known.vehicle(), 1200.0, 0.6, 6.0, 260.0, null, null, 10);
        assertThat(planning.axles()).containsExactly(Axle.FRONT);
        assertThat(planning.missing(Set.of(Axle.FRONT))).isEmpty();
        assertThat(planning.missing(List.of(Axle.values()))).containsExactly(new BurnishSaid.HasDrums(Axle.REAR));
        assertThat(planning.drive(Axle.FRONT, 0).plan().stops()).isPositive();
    }
}
