package cornerbook.app.calibration;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Chances that were said, by tenths, beside how often it came true: of honest ones, as often as was said. */
final class Reliability {
    private static final int TENTHS = 10;
    /** Numbers of a tenth. */
    private static final int OF_TENTH = 3;
    /** Fewer forecasts tell nothing. */
    private static final int FEWEST = 30;

    private static final double PERCENT = 100;
    private static final double TWICE = 2;

    /** How many numbers there are of a car. */
    static final int NUMBERS = TENTHS * OF_TENTH;

    private final int[] count = new int[TENTHS];
    private final double[] said = new double[TENTHS];
    private final int[] came = new int[TENTHS];
    private final double[] ofCar = new double[TENTHS];
    /** Sums over cars of what came less what was said, each tenth times each: forecasts of one car hang together. */
    private final double[][] products = new double[TENTHS][TENTHS];

    /**
     * The chances from a tenth to another.
     *
     * @param from lowest, 0 to 0.9
     * @param until highest, 0.1 to 1
     * @param said mean of the chances
     * @param came share of those that came true
     * @param sd standard error of the difference
     */
    record Stretch(double from, double until, int count, double said, double came, double sd) {
        /** Whether it said too little: more came true. */
        boolean low() {
            return came > said;
        }

        double surelyOff() {
            return Math.abs(came - said) - TWICE * sd;
        }

        /** By how many points it is off. */
        Measured points() {
            return new Measured(PERCENT * Math.abs(came - said), PERCENT * sd);
        }
    }

    void add(double chance, boolean cameTrue) {
        int tenth = Math.min(TENTHS - 1, (int) (chance * TENTHS));
        count[tenth]++;
        said[tenth] += chance;
        came[tenth] += cameTrue ? 1 : 0;
        ofCar[tenth] += (cameTrue ? 1 : 0) - chance;
    }

    /** Of each tenth how often it was said, the sum of what was said, and how often it came true. */
    Stream<Double> numbers() {
        return IntStream.range(0, TENTHS)
                .boxed()
                .flatMap(tenth -> Stream.of((double) count[tenth], said[tenth], (double) came[tenth]));
    }

    /** Adds a car of which others have noted {@link #numbers}. */
    void addCar(List<Double> numbers) {
        for (int tenth = 0; tenth < TENTHS; tenth++) {
            int place = tenth * OF_TENTH;
            double trueOnes = numbers.get(place + 2);
            count[tenth] += numbers.get(place).intValue();
            said[tenth] += numbers.get(place + 1);
            came[tenth] += (int) trueOnes;
            ofCar[tenth] = trueOnes - numbers.get(place + 1);
        }
        endCar();
    }

    void endCar() {
        for (int one = 0; one < TENTHS; one++) {
            for (int other = 0; other < TENTHS; other++) {
                products[one][other] += ofCar[one] * ofCar[other];
            }
        }
        Arrays.fill(ofCar, 0);
    }

    /** Each tenth with enough forecasts. */
    List<Stretch> tenths() {
        return IntStream.range(0, TENTHS)
                .mapToObj(tenth -> stretch(tenth, tenth))
                .flatMap(Optional::stream)
                .toList();
    }

    /**
     * The tenths, one or several on end, that are off by most when twice the standard error is left out; empty of too few
     * forecasts.
     */
    Optional<Stretch> worst() {
        return IntStream.range(0, TENTHS)
                .boxed()
                .flatMap(first -> IntStream.range(first, TENTHS).mapToObj(last -> stretch(first, last)))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Stretch::surelyOff));
    }

    private Optional<Stretch> stretch(int first, int last) {
        int all = IntStream.rangeClosed(first, last).map(tenth -> count[tenth]).sum();
        if (all < FEWEST || count[first] == 0 || count[last] == 0) {
            return Optional.empty();
        }
        double square = IntStream.rangeClosed(first, last)
                .mapToDouble(one -> IntStream.rangeClosed(first, last)
                        .mapToDouble(other -> products[one][other])
                        .sum())
                .sum();
        double meanSaid = IntStream.rangeClosed(first, last)
                        .mapToDouble(tenth -> said[tenth])
                        .sum()
                / all;
        // Where all came true or none, cars differ by nothing but what was said: honest chances scatter by this at
        // least, and the
        // error is the one that they have (Agresti and Coull 1998, The American Statistician 52:119, score against
        // Wald).
        double ofHonest = Math.sqrt(meanSaid * (1 - meanSaid) / all);
        return Optional.of(new Stretch(
                first / (double) TENTHS,
                (last + 1) / (double) TENTHS,
                all,
                meanSaid,
                (double) IntStream.rangeClosed(first, last)
                                .map(tenth -> came[tenth])
                                .sum()
                        / all,
                Math.max(ofHonest, Math.sqrt(Math.max(0, square)) / all)));
    }
}
