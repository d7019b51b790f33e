package cornerbook.core.brake.drag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.brake.drag.AxleDrag.Answer;
import cornerbook.core.brake.drag.AxleDrag.Read;
import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.QuantitySaid.OutOfRange;
import cornerbook.core.say.Refused;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DragPropertyTest {
    private static final DiscBody BODY = DiscBody.castIron(4.6, 300, false);
    private static final DragDrive DRIVE = new DragDrive(60, 20.0, 2.05);

    private static AxleDrag axle(double leftC, double rightC, @Nullable Double airC) {
        return AxleDrag.of(BODY, 300, DRIVE, new Read(Corner.LR, leftC), new Read(Corner.RR, rightC), airC);
    }

    /** The two laws of cooling do not cross, whatever disc, wheel and speed. */
    @ParameterizedTest
    @CsvSource({"10,150,1.5", "10,500,4", "60,300,2", "130,150,1.5", "130,500,1.5", "26,280,2.1"})
    void leastIsNeverAboveMost(double speedKmh, double diameterMm, double circumferenceM) {
        var body = DiscBody.castIron(6, diameterMm, true);
        for (var drive : List.of(
                new DragDrive(speedKmh, 1.0, circumferenceM),
                new DragDrive(speedKmh, 20.0, circumferenceM),
                new DragDrive(speedKmh, null, circumferenceM))) {
            var drag = Drag.of(body, diameterMm, drive, 40);
            assertThat(drag.powerW().least())
                    .isPositive()
                    .isLessThanOrEqualTo(drag.powerW().most());
        }
    }

    /** The same warmth after a shorter drive was made by more force. */
    @Test
    void aShorterDriveMeansMoreForce() {
        double before =
                Drag.of(BODY, 300, new DragDrive(60, null, 2.05), 40).forceN().least();
        for (double minutes : new double[] {60, 20, 5, 1}) {
            double force = Drag.of(BODY, 300, new DragDrive(60, minutes, 2.05), 40)
                    .forceN()
                    .least();
            assertThat(force).isGreaterThan(before);
            before = force;
        }
    }

    /** A technician seldom knows the speed; from 40 to 90 km/h the force changes by less than the two laws differ. */
    @Test
    void forceHardlyDependsOnSpeed() {
        var slow = Drag.of(BODY, 300, new DragDrive(40, null, 2.05), 40).forceN();
        var fast = Drag.of(BODY, 300, new DragDrive(90, null, 2.05), 40).forceN();
        assertThat(slow.least() / fast.least()).isBetween(0.9, 1.1);
        assertThat(slow.most() / fast.most()).isBetween(0.75, 1.3);
    }

    /** Heat adds up: what each takes above the air differs by the excess. */
    @Test
    void excessIsTheDifferenceOfTheTwo() {
        var axle = axle(112, 51, 12.0);
        assertThat(axle.hotter()).isEqualTo(Corner.LR);
        var hotter = Objects.requireNonNull(axle.hotterTakes());
        var cooler = Objects.requireNonNull(axle.coolerTakes());
        assertThat(hotter.forceN().most() - cooler.forceN().most())
                .isCloseTo(axle.excess().forceN().most(), within(1e-9));
        assertThat(axle(51, 112, 12.0).hotter()).isEqualTo(Corner.RR);
        assertThat(axle(112, 51, null).hotterTakes()).isNull();
    }

    /** 30 °F are 16.7 °C and 100 °F are 55.6 °C: technicians' training library on thermal diagnosis of brakes. */
    @ParameterizedTest
    @CsvSource({"64,64,EVEN", "64,80.6,EVEN", "64,80.7,MAY_DRAG", "119.5,64,MAY_DRAG", "119.6,64,DRAGS"})
    void whatADifferenceSays(double leftC, double rightC, Answer answer) {
        assertThat(axle(leftC, rightC, null).answer()).isEqualTo(answer);
    }

    @Test
    void onlyWhatLeavesNoDoubtIsToBeFoundBeforeTheCarLeaves() {
        assertThat(axle(130, 64, null).cautions()).contains(DragSaid.Caution.DRAGS);
        assertThat(axle(100, 64, null).cautions())
                .doesNotContain(DragSaid.Caution.DRAGS)
                .contains(DragSaid.Caution.HOT_DISCS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {9, 131, Double.NaN})
    void refusesASpeedThatIsNoDrive(double speedKmh) {
        assertThatThrownBy(() -> new DragDrive(speedKmh, null, 2))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.said()).isInstanceOf(OutOfRange.class));
    }

    @Test
    void refusesADiscThatIsCoolerThanTheAir() {
        assertThatThrownBy(() -> axle(40, 10, 12.0))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.said()).isInstanceOf(DragSaid.CoolerThanAir.class));
    }
}
