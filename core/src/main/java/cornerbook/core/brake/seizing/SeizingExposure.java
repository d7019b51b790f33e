package cornerbook.core.brake.seizing;

import java.util.List;

/**
 * What a pad is exposed to, as the hazard of its seizing sees it.
 *
 * @param saltShare share of the year on salted roads, 0 to 1
 * @param garaged whether the car stands inside at night
 * @param distanceKmPerYear distance covered in a year
 * @param frictionBrakeShare share of the braking energy that goes through the pads, 0 to 1: near 1 without regeneration
 */
public record SeizingExposure(double saltShare, boolean garaged, double distanceKmPerYear, double frictionBrakeShare) {
    /** Nearest round figures of a car in road-salt country, at which the covariates are zero. */
    static final double CENTRE_SALT_SHARE = 0.4;

    static final double CENTRE_DISTANCE_KM = 15_000;
    static final double CENTRE_FRICTION_SHARE = 0.5;
    private static final double REGENERATING_FRICTION = 0.3;
    private static final double DISTANCE_STEP_KM = 10_000;

    public SeizingExposure {
        share("salt share", saltShare);
        share("friction brake share", frictionBrakeShare);
        if (!(distanceKmPerYear >= 0 && distanceKmPerYear <= 300_000)) {
            throw new IllegalArgumentException(
                    "distance is %s km per year, expected 0 to 300000 km".formatted(distanceKmPerYear));
        }
    }

    /**
     * The exposure of a car in road-salt country of which only the distance is known: salt on 40 % of the year's days, outside
     * at night, 30 % of the braking by friction where the car regenerates. Common practice, no source.
     */
    public static SeizingExposure usual(double distanceKmPerYear, boolean regenerates) {
        return new SeizingExposure(
                CENTRE_SALT_SHARE, false, distanceKmPerYear, regenerates ? REGENERATING_FRICTION : 1);
    }

    /** Salt, garage, distance in steps of 10 000 km, friction: each as the distance from the centre. */
    List<Double> covariates() {
        return List.of(
                saltShare - CENTRE_SALT_SHARE,
                garaged ? 1.0 : 0.0,
                (distanceKmPerYear - CENTRE_DISTANCE_KM) / DISTANCE_STEP_KM,
                frictionBrakeShare - CENTRE_FRICTION_SHARE);
    }

    private static void share(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("%s is %s, expected 0 to 1".formatted(what, value));
        }
    }
}
