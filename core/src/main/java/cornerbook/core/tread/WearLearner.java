package cornerbook.core.tread;

import cornerbook.core.numeric.CholeskyFactor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Learns the wear parameters of cars that are alike from all their readings: empirical Bayes by maximum marginal
 * likelihood, pulled towards a prior where data are few. Maximised is the sum of {@link SetLikelihood} over the sets plus
 * the log-normal prior, in the logarithms θ of the parameters, by scoring with the outer product of the sets' slopes
 * (Berndt, Hall, Hall and Hausman 1974, Annals of Economic and Social Measurement 3:653):
 *
 * <pre>  θ ← θ + s (Σ g gᵀ + P)⁻¹ (Σ g − P (θ − θ0)),   s halved until the sum rises                       (1)</pre>
 *
 * within {@link #MOST_SPREADS} spreads of the prior and below what a parameter can be: readings that contradict each other
 * are no reason to go farther.
 *
 * <p>Standard errors allow for what the sum leaves out, that grooves of one car are alike: with J the outer products of
 * whole cars' slopes and H the curvature, they are the roots of the diagonal of H⁻¹ (J + P) H⁻¹ (Huber 1967; Liang and
 * Zeger 1986, Biometrika 73:13). Where the sum has no maximum of its own, as in a book of cars that are all alike, H is not
 * positive definite, and Σ g gᵀ + P stands in its place, as in (1). No standard error is greater than the prior's spread: a
 * book cannot know less than was known without it. Checked against R's lme4.
 */
public final class WearLearner {
    private static final int PARAMETERS = SetLikelihood.PARAMETERS;
    private static final int MOST_STEPS = 200;
    private static final int MOST_HALVINGS = 12;
    /** Rise that the next step promises, below which the search ends. */
    private static final double PRECISE = 1e-6;

    private static final double CURVATURE_STEP = 1e-4;
    private static final double MOST_SPREADS = 8;
    /** Logarithm of what every parameter stays below, in its own unit. */
    private static final double HIGHEST = Math.log(9);

    /** Cars that one task sums; fixed, so that the sums do not depend on the number of processors. */
    private static final int CARS_PER_TASK = 64;

    private final List<List<SetLikelihood>> cars;
    private final double[] centre;
    private final WearPrior prior;
    private final double[] priorPrecision = new double[PARAMETERS];

    private WearLearner(List<WearHistory> histories, WearPrior prior) {
        Map<String, List<SetLikelihood>> byCar = new TreeMap<>();
        for (var history : histories) {
            byCar.computeIfAbsent(history.car(), car -> new ArrayList<>()).add(new SetLikelihood(history));
        }
        cars = List.copyOf(byCar.values());
        this.prior = prior;
        centre = logarithms(prior.centre());
        Arrays.setAll(priorPrecision, place -> 1 / (prior.spread(place) * prior.spread(place)));
    }

    /**
     * The parameters that make the readings likeliest, given the prior.
     *
     * @param histories of cars that are taken to be alike; none gives the prior's centre
     */
    public static LearnedWear learn(List<WearHistory> histories, WearPrior prior) {
        var learner = new WearLearner(histories, prior);
        var found = learner.maximise();
        int readings = histories.stream()
                .mapToInt(history -> history.readings().size())
                .sum();
        return new LearnedWear(parameters(found), learner.standardErrors(found), learner.cars.size(), readings);
    }

    /** The sum over all cars at one place, its slope, and the outer products of the slopes of sets and of cars. */
    private static final class Sums {
        private double log;
        private final double[] slope = new double[PARAMETERS];
        private final double[] outerOfSets = new double[PARAMETERS * PARAMETERS];
        private final double[] outerOfCars = new double[PARAMETERS * PARAMETERS];

        void add(Sums other) {
            log += other.log;
            addTo(slope, other.slope);
            addTo(outerOfSets, other.outerOfSets);
            addTo(outerOfCars, other.outerOfCars);
        }
    }

    private double[] maximise() {
        var at = centre.clone();
        var sums = sums(at);
        for (int step = 0; step < MOST_STEPS; step++) {
            var slope = penalisedSlope(at, sums);
            var direction =
                    CholeskyFactor.nearest(information(sums), PARAMETERS).solve(slope);
            double promise = dot(slope, direction);
            if (promise < PRECISE) {
                break;
            }
            double share = 1;
            var next = moved(at, direction, share);
            var sumsNext = sums(next);
            for (int halving = 0;
                    halving < MOST_HALVINGS && !(penalised(next, sumsNext) >= penalised(at, sums));
                    halving++) {
                share /= 2;
                next = moved(at, direction, share);
                sumsNext = sums(next);
            }
            if (!(penalised(next, sumsNext) > penalised(at, sums))) {
                break;
            }
            at = next;
            sums = sumsNext;
        }
        return at;
    }

    /** Outer products of the sets' slopes, and the prior's precision. */
    private double[] information(Sums sums) {
        var information = sums.outerOfSets.clone();
        for (int i = 0; i < PARAMETERS; i++) {
            information[i * PARAMETERS + i] += priorPrecision[i];
        }
        return information;
    }

    private WearUncertainty standardErrors(double[] at) {
        var curvature = new double[PARAMETERS * PARAMETERS];
        var sums = sums(at);
        var slope = penalisedSlope(at, sums);
        for (int i = 0; i < PARAMETERS; i++) {
            var beside = at.clone();
            beside[i] += CURVATURE_STEP;
            var slopeBeside = penalisedSlope(beside, sums(beside));
            for (int j = 0; j < PARAMETERS; j++) {
                double second = (slope[j] - slopeBeside[j]) / CURVATURE_STEP;
                curvature[i * PARAMETERS + j] += second / 2;
                curvature[j * PARAMETERS + i] += second / 2;
            }
        }
        var inverse = CholeskyFactor.find(curvature, PARAMETERS)
                .orElseGet(() -> CholeskyFactor.nearest(information(sums), PARAMETERS))
                .inverse();
        var middle = sums.outerOfCars.clone();
        for (int i = 0; i < PARAMETERS; i++) {
            middle[i * PARAMETERS + i] += priorPrecision[i];
        }
        var errors = new double[PARAMETERS];
        for (int i = 0; i < PARAMETERS; i++) {
            double variance = 0;
            for (int j = 0; j < PARAMETERS; j++) {
                for (int k = 0; k < PARAMETERS; k++) {
                    variance += inverse[i * PARAMETERS + j] * middle[j * PARAMETERS + k] * inverse[k * PARAMETERS + i];
                }
            }
            errors[i] = Math.min(Math.sqrt(variance), prior.spread(i));
        }
        return new WearUncertainty(
                errors[SetLikelihood.READING_SD],
                errors[SetLikelihood.NEW_DEPTH_SD],
                errors[SetLikelihood.FRONT_RATE],
                errors[SetLikelihood.REAR_RATE],
                errors[SetLikelihood.VEHICLE_SPREAD],
                errors[SetLikelihood.CORNER_SPREAD]);
    }

    private Sums sums(double[] at) {
        var parameters = parameters(at);
        int tasks = (cars.size() + CARS_PER_TASK - 1) / CARS_PER_TASK;
        var total = new Sums();
        IntStream.range(0, tasks)
                .parallel()
                .mapToObj(task -> sums(
                        cars.subList(task * CARS_PER_TASK, Math.min(cars.size(), (task + 1) * CARS_PER_TASK)),
                        parameters))
                .toList()
                .forEach(total::add);
        return total;
    }

    private static Sums sums(List<List<SetLikelihood>> cars, WearParameters parameters) {
        var sums = new Sums();
        for (var car : cars) {
            var ofCar = new double[PARAMETERS];
            for (var set : car) {
                var ofSet = new double[PARAMETERS];
                sums.log += set.log(parameters, ofSet);
                addOuter(sums.outerOfSets, ofSet);
                addTo(ofCar, ofSet);
            }
            addOuter(sums.outerOfCars, ofCar);
            addTo(sums.slope, ofCar);
        }
        return sums;
    }

    private double penalised(double[] at, Sums sums) {
        double log = sums.log;
        for (int i = 0; i < PARAMETERS; i++) {
            log -= 0.5 * priorPrecision[i] * (at[i] - centre[i]) * (at[i] - centre[i]);
        }
        return log;
    }

    private double[] penalisedSlope(double[] at, Sums sums) {
        var slope = sums.slope.clone();
        for (int i = 0; i < PARAMETERS; i++) {
            slope[i] -= priorPrecision[i] * (at[i] - centre[i]);
        }
        return slope;
    }

    private double[] moved(double[] at, double[] direction, double share) {
        var next = at.clone();
        for (int i = 0; i < PARAMETERS; i++) {
            double farthest = MOST_SPREADS * prior.spread(i);
            // A parameter changes by no more than a factor of e in one step.
            next[i] = Math.clamp(
                    next[i] + share * Math.clamp(direction[i], -1, 1),
                    centre[i] - farthest,
                    Math.min(centre[i] + farthest, HIGHEST));
        }
        return next;
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private static void addTo(double[] sum, double[] more) {
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

    private static double[] logarithms(WearParameters parameters) {
        var at = new double[PARAMETERS];
        at[SetLikelihood.READING_SD] = Math.log(parameters.readingSdMm());
        at[SetLikelihood.NEW_DEPTH_SD] = Math.log(parameters.newDepthSdMm());
        at[SetLikelihood.FRONT_RATE] = Math.log(parameters.frontRateMmPer1000Km());
        at[SetLikelihood.REAR_RATE] = Math.log(parameters.rearRateMmPer1000Km());
        at[SetLikelihood.VEHICLE_SPREAD] = Math.log(parameters.vehicleSpread());
        at[SetLikelihood.CORNER_SPREAD] = Math.log(parameters.cornerSpread());
        return at;
    }

    private static WearParameters parameters(double[] at) {
        return new WearParameters(
                Math.exp(at[SetLikelihood.READING_SD]),
                Math.exp(at[SetLikelihood.NEW_DEPTH_SD]),
                Math.exp(at[SetLikelihood.FRONT_RATE]),
                Math.exp(at[SetLikelihood.REAR_RATE]),
                Math.exp(at[SetLikelihood.VEHICLE_SPREAD]),
                Math.exp(at[SetLikelihood.CORNER_SPREAD]));
    }
}
