package cornerbook.core.brake.burnish;

import cornerbook.core.quantity.Range;

/**
 * What the brakes of a car have to stop, as its lumped-heat model needs it.
 *
 * @param massKg of the car as it is driven
 * @param rotatingMassFactor the mass that the energy sees, over the mass: wheels and drivetrain turn too
 * @param frontShare share of the friction energy that the front axle takes
 * @param rollingCircumferenceM way of one turn of a wheel
 */
public record BrakedCar(double massKg, double rotatingMassFactor, double frontShare, double rollingCircumferenceM) {
    /**
     * Mass raised by 5 % for the rotating parts where their inertia is not known. Source: Larminie and Lowry, Electric Vehicle
     * Technology Explained, chapter 9.
     */
    public static final double USUAL_ROTATING_MASS_FACTOR = 1.05;

    /** Standard acceleration of free fall, exact by definition (3rd CGPM, 1901). */
    private static final double GRAVITY_M_PER_S2 = 9.80665;

    public BrakedCar {
        Range.check(BurnishSaid.Part.MASS, massKg, 300, 10_000, "kg");
        Range.check("rotating mass factor", rotatingMassFactor, 1, 1.5, "");
        Range.check(BurnishSaid.Part.FRONT_SHARE, frontShare, 0, 1, "");
        Range.check("rolling circumference", rollingCircumferenceM, 1, 4, "m");
    }

    /**
     * Share of the braking that the front axle takes where each axle brakes by its load: static share + (h/L)(a/g), from the moments
     * about the tyres' contact.
     *
     * @param staticFrontShare share of the mass on the front axle at rest
     * @param centreHeightMm h, of the centre of gravity
     * @param wheelbaseMm L
     */
    public static double frontShareWhenBraking(
            double staticFrontShare, double centreHeightMm, double wheelbaseMm, double decelerationMPerS2) {
        Range.check("share on the front axle", staticFrontShare, 0.2, 0.8, "");
        Range.check("height of the centre of gravity", centreHeightMm, 200, 1500, "mm");
        Range.check("wheelbase", wheelbaseMm, 1500, 5500, "mm");
        return Math.min(1, staticFrontShare + centreHeightMm / wheelbaseMm * decelerationMPerS2 / GRAVITY_M_PER_S2);
    }

    double turnsPerMinute(double speedKmh) {
        return speedKmh / 3.6 / rollingCircumferenceM * 60;
    }
}
