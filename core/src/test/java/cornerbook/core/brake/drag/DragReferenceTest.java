package cornerbook.core.brake.drag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.burnish.DiscBody;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DragReferenceTest {
    private static final double DIAMETER_MM = 320;
    private static final DiscBody VENTED = DiscBody.castIron(7.2, DIAMETER_MM, true);

    private static DragDrive drive(double speedKmh, @Nullable Double minutes) {
        return new DragDrive(speedKmh, minutes, 2.05);
    }

    /** The power that is found warms the disc just so: its heat balance, integrated by Hipparchus (hipparchus-ode 4.0.3). */
    @ParameterizedTest
    @CsvSource({"60,20,57", "30,5,20", "100,45,130"})
    void thePowerFoundWarmsTheDiscJustSo(double speedKmh, double minutes, double warmerByK) {
        var drive = drive(speedKmh, minutes);
        double powerW = Drag.of(VENTED, DIAMETER_MM, drive, warmerByK).powerW().least();
        double coolingWPerK = VENTED.coolingWPerK(drive.turnsPerMinute());
        double warmed = new DormandPrince853Integrator(1e-6, 60, 1e-10, 1e-10)
                .integrate(
                        new OrdinaryDifferentialEquation() {
                            @Override
                            public int getDimension() {
                                return 1;
                            }

                            @Override
                            public double[] computeDerivatives(double t, double[] y) {
                                return new double[] {
                                    (VENTED.heatShare() * powerW - coolingWPerK * y[0]) / VENTED.heatCapacityJPerK()
                                };
                            }
                        },
                        new ODEState(0, new double[] {0}),
                        minutes * 60)
                .getPrimaryState()[0];
        assertThat(warmed).isCloseTo(warmerByK, within(1e-6));
    }

    /**
     * McPhee and Johnson 2008: the vanes give off 45.5 % of the heat at 342 turns a minute and 55.4 % at 1025. With one coefficient
     * for all of the surface and as much surface in the vanes as on the faces they give off 50 %, between the two.
     */
    @Test
    void vanesGiveOffAboutHalf() {
        double faces = DiscBody.castIron(7.2, DIAMETER_MM, false).coolingWPerK(684);
        assertThat(1 - faces / VENTED.coolingWPerK(684)).isBetween(0.455, 0.554);
    }

    /**
     * By hand, at 60 km/h on 0.32 m: Re = 16.667 × 0.32/15.1e-6 = 353 200; 0.04 Re^0.8 = 1097, times 0.0257/0.32 is 88.1 W/(m²·K);
     * at 30 km/h Re = 176 600; 0.70 Re^0.55 = 538, 43.2 W/(m²·K).
     */
    @ParameterizedTest
    @CsvSource({"60,88.1", "30,43.2"})
    void coolingInTheWindByHand(double speedKmh, double coefficient) {
        assertThat(new DragDisc(VENTED, DIAMETER_MM).mostCoolingWPerK(speedKmh / 3.6) / VENTED.coolingAreaM2())
                .isCloseTo(coefficient, within(0.5));
    }

    /** A force of 36 N takes 1 kWh in 100 km: 36 × 100 000 J are 3.6 MJ. */
    @Test
    void energyByTheWay() {
        var drag = Drag.of(VENTED, DIAMETER_MM, drive(60, null), 50);
        assertThat(drag.kwhPer100Km().most()).isCloseTo(drag.forceN().most() / 36, within(1e-12));
        assertThat(drag.forceN().most() * 60 / 3.6).isCloseTo(drag.powerW().most(), within(1e-9));
    }
}
