package cornerbook.core.brake;

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

    public BrakedCar {
        Checks.range("mass", massKg, 300, 10_000, " kg");
        Checks.range("rotating mass factor", rotatingMassFactor, 1, 1.5, "");
        Checks.range("front share", frontShare, 0, 1, "");
        Checks.range("rolling circumference", rollingCircumferenceM, 1, 4, " m");
    }

    double turnsPerMinute(double speedKmh) {
        return speedKmh / 3.6 / rollingCircumferenceM * 60;
    }
}
