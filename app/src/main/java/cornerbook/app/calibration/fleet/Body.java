package cornerbook.app.calibration.fleet;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.Side;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;

/**
 * What the car itself does to its tyres: its mass, where it lies, which wheels drive, and how they stand.
 *
 * @param toeRad by corner, as the wheel runs
 * @param ownFactor by corner, what no figure of this car explains: camber of the road, roundabouts, the driver's weight
 */
record Body(
        double massKg,
        double frontShare,
        DriveLayout drive,
        boolean electric,
        Map<Corner, Double> toeRad,
        Map<Corner, Double> ownFactor) {
    private static final double GRAVITY_MPS2 = 9.81;
    /** Force sideways per radian of slip angle and newton of load; passenger tyres: 10 to 15. From memory. */
    private static final double CORNERING_PER_RAD = 12;
    /** Force along per unit of slip and newton of load; passenger tyres: 15 to 30. From memory. */
    private static final double SLIP_STIFFNESS = 22;
    /** Air and rolling resistance at the speeds of an ordinary road. From memory. */
    private static final double DRAG_N = 380;

    private static final double FRONT_OF_BRAKING = 0.68;
    private static final double ELECTRIC_MASS = 1.2;

    static Body any(RandomGenerator random) {
        double which = random.nextDouble();
        var drive = which < 0.6 ? DriveLayout.FRONT : which < 0.9 ? DriveLayout.ALL : DriveLayout.REAR;
        boolean electric = random.nextDouble() < 0.3;
        double massKg = Math.clamp(1500 + 220 * random.nextGaussian(), 950, 2400) * (electric ? ELECTRIC_MASS : 1);
        double frontShare = (drive == DriveLayout.FRONT && !electric ? 0.60 : 0.51) + 0.015 * random.nextGaussian();
        var toe = new EnumMap<Corner, Double>(Corner.class);
        var own = new EnumMap<Corner, Double>(Corner.class);
        for (var axle : Axle.values()) {
            // Running straight, the two wheels of an axle share its toe evenly; most stand within a tenth of a degree.
            double ofAxle = Math.toRadians(0.05 + 0.05 * random.nextGaussian());
            for (var corner : Corner.values()) {
                if (corner.axle() == axle) {
                    toe.put(corner, ofAxle * (corner.side() == Side.LEFT ? 1 : -1));
                    own.put(corner, Math.exp(0.06 * random.nextGaussian()));
                }
            }
        }
        return new Body(massKg, frontShare, drive, electric, toe, own);
    }

    /**
     * Work done by sliding at the contact of one wheel for every km, kJ. A tyre that transmits a force slips in proportion to it
     * (F / C), so work goes with the square of the force (Schallamach and Turner 1960, Wear 3:1; from memory).
     */
    double workKjPerKm(Driver driver, Corner corner) {
        boolean front = corner.axle() == Axle.FRONT;
        double wheelKg = massKg * (front ? frontShare : 1 - frontShare) / 2;
        double loadN = wheelKg * GRAVITY_MPS2;
        int driven = drive == DriveLayout.ALL ? 4 : 2;
        double pushesN = drive.drives(corner.axle()) ? massKg * driver.forwardMps2() / driven : 0;
        double dragN = drive.drives(corner.axle()) ? DRAG_N / driven : 0;
        double brakesN = massKg * driver.brakingMps2() * (front ? FRONT_OF_BRAKING : 1 - FRONT_OF_BRAKING) / 2;
        double sidewaysN = wheelKg * driver.sidewaysMps2();
        double alongWork = (pushesN * pushesN + dragN * dragN + brakesN * brakesN) / (SLIP_STIFFNESS * loadN);
        double sidewaysWork = sidewaysN * sidewaysN / (CORNERING_PER_RAD * loadN);
        double toe = Objects.requireNonNull(toeRad.get(corner));
        double toeWork = CORNERING_PER_RAD * loadN * toe * toe;
        return (alongWork + sidewaysWork + toeWork) * Objects.requireNonNull(ownFactor.get(corner));
    }

    /** Energy that one wheel's brake takes for every km, kJ, before regeneration. */
    double brakeKjPerKm(Driver driver, Corner corner) {
        double share = (corner.axle() == Axle.FRONT ? FRONT_OF_BRAKING : 1 - FRONT_OF_BRAKING) / 2;
        // A car that brakes at a root mean square of 0.45 m/s² sheds about a sixth of that on average over all metres.
        return massKg * driver.brakingMps2() / 6 * share * Objects.requireNonNull(ownFactor.get(corner));
    }
}
