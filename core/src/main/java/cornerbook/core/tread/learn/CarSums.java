package cornerbook.core.tread.learn;

import cornerbook.core.tread.WearParameter;

/**
 * The logarithm of the likelihood summed over cars at one place, its slope, and the outer products of the slopes of sets and
 * of whole cars.
 */
final class CarSums {
    private static final int PARAMETERS = WearParameter.values().length;

    private double log;
    private final double[] slope = new double[PARAMETERS];
    private final double[] outerOfSets = new double[PARAMETERS * PARAMETERS];
    private final double[] outerOfCars = new double[PARAMETERS * PARAMETERS];

    /** Adds a set; its slope is added to that of its car. */
    void addSet(double logOfSet, double[] slopeOfSet, double[] slopeOfCar) {
        log += logOfSet;
        addOuter(outerOfSets, slopeOfSet);
        add(slopeOfCar, slopeOfSet);
    }

    /** Adds a car whose sets were added. */
    void addCar(double[] slopeOfCar) {
        addOuter(outerOfCars, slopeOfCar);
        add(slope, slopeOfCar);
    }

    void add(CarSums other) {
        log += other.log;
        add(slope, other.slope);
        add(outerOfSets, other.outerOfSets);
        add(outerOfCars, other.outerOfCars);
    }

    double log() {
        return log;
    }

    double[] slope() {
        return slope;
    }

    double[] outerOfSets() {
        return outerOfSets;
    }

    double[] outerOfCars() {
        return outerOfCars;
    }

    private static void add(double[] sum, double[] more) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
    }

    private static void addOuter(double[] sum, double[] slope) {
        for (int i = 0; i < PARAMETERS; i++) {
            for (int j = 0; j < PARAMETERS; j++) {
                sum[i * PARAMETERS + j] += slope[i] * slope[j];
            }
        }
    }
}
