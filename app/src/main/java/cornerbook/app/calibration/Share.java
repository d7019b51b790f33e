package cornerbook.app.calibration;

import java.util.Optional;
import java.util.stream.Stream;

/** How many of how many; what comes of one car hangs together and is counted by car. */
final class Share {
    /** A share of fewer tells nothing. */
    private static final int FEWEST = 30;

    private static final double PERCENT = 100;

    private int hits;
    private int all;
    private int hitsOfCar;
    private int allOfCar;
    private double squaredHits;
    private double squaredAll;
    private double product;

    void add(boolean hit) {
        hitsOfCar += hit ? 1 : 0;
        allOfCar++;
    }

    /** How many of how many there are of all cars. */
    Stream<Double> numbers() {
        return Stream.of((double) hits, (double) all);
    }

    /** Adds a car of which others have counted. */
    void addCar(double hitsOfIt, double allOfIt) {
        hitsOfCar = (int) hitsOfIt;
        allOfCar = (int) allOfIt;
        endCar();
    }

    void endCar() {
        hits += hitsOfCar;
        all += allOfCar;
        squaredHits += (double) hitsOfCar * hitsOfCar;
        squaredAll += (double) allOfCar * allOfCar;
        product += (double) hitsOfCar * allOfCar;
        hitsOfCar = 0;
        allOfCar = 0;
    }

    /** In percent, with the standard error of a ratio over cars; empty of too few. */
    Optional<Measured> percent() {
        if (all < FEWEST) {
            return Optional.empty();
        }
        double share = (double) hits / all;
        double squares = squaredHits - 2 * share * product + share * share * squaredAll;
        // Where all hit or none, one more might not have (Agresti and Coull 1998, The American Statistician 52:119).
        double likely = (hits + 1.0) / (all + 2);
        double least = Math.sqrt(likely * (1 - likely) / all);
        return Optional.of(new Measured(
                PERCENT * share, PERCENT * Math.max(least, Math.sqrt(Math.max(0, squares)) / all)));
    }
}
