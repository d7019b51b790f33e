package cornerbook.core.tread;

import cornerbook.core.numeric.CholeskyFactor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Learns the wear parameters of cars that are alike from all their readings: empirical Bayes by maximum marginal
 * likelihood, pulled towards a prior where data are few. Maximised is the sum of {@link SetLikelihood} over the sets plus
 * the prior, on the parameters' scales θ, by a quasi-Newton search: with g the slope of the sum and the prior's together,
 * B the curvature that its changes y over the steps s so far show (Broyden, Fletcher, Goldfarb and Shanno 1970; Nocedal and
 * Wright 2006, Numerical Optimization, equation 6.19), which starts as the outer product of the sets' slopes and the prior's
 * precision P (Berndt, Hall, Hall and Hausman 1974, Annals of Economic and Social Measurement 3:653):
 *
 * <pre>
 *   θ ← θ + s,   s = a B⁻¹ g,   a halved from 1 until the sum rises                                      (1)
 *   B ← B + yyᵀ/(yᵀs) − Bs sᵀB/(sᵀBs),   y = g before less g after                                       (2)
 * </pre>
 *
 * within {@link #MOST_SPREADS} spreads of the prior and below what a parameter can be: readings that contradict each other
 * are no reason to go farther.
 *
 * <p>Standard errors allow for what the sum leaves out, that grooves of one car are alike: with J the outer products of
 * whole cars' slopes and H the curvature, they are the roots of the diagonal of H⁻¹ (J + P) H⁻¹ (Huber 1967; Liang and
 * Zeger 1986, Biometrika 73:13). Where the sum has no maximum of its own, as in a book of cars that are all alike, H is not
 * positive definite, and what (2) starts from stands in its place. No standard error is greater than the prior's spread: a
 * book cannot know less than was known without it. Checked against R's lme4.
 */
public final class WearLearner {
    private static final int PARAMETERS = WearParameter.values().length;
    private static final int MOST_STEPS = 200;
    private static final int MOST_HALVINGS = 12;
    /** Rise that the next step promises, below which the search ends. */
    private static final double PRECISE = 1e-6;

    private static final double CURVATURE_STEP = 1e-4;
    private static final double MOST_SPREADS = 8;
    /** What every parameter stays below, on its scale. */
    private static final double HIGHEST = Math.log(9);
    /** How far from 0 the slowing stays. */
    private static final double MOST_SLOWING = 0.9 * TreadScale.MOST_SLOWING;

    /** Cars that one task sums; fixed, so that the sums do not depend on the number of processors. */
    private static final int CARS_PER_TASK = 64;

    private final List<List<SetLikelihood>> cars;
    private final double[] centre = new double[PARAMETERS];
    private final WearPrior prior;
    private final double[] priorPrecision = new double[PARAMETERS];

    private WearLearner(List<WearHistory> histories, WearPrior prior, WearParameters proportions) {
        Map<String, List<SetLikelihood>> byCar = new TreeMap<>();
        for (var history : histories) {
            byCar.computeIfAbsent(history.car(), car -> new ArrayList<>()).add(new SetLikelihood(history, proportions));
        }
        cars = List.copyOf(byCar.values());
        this.prior = prior;
        Arrays.setAll(centre, place -> parameter(place).onScale(prior.centre().of(parameter(place))));
        Arrays.setAll(priorPrecision, place -> 1 / (spread(place) * spread(place)));
    }

    /**
     * The parameters that make the readings likeliest, given the prior.
     *
     * @param histories of cars that are taken to be alike; none gives the prior's centre
     */
    public static LearnedWear learn(List<WearHistory> histories, WearPrior prior) {
        return learn(histories, prior, prior.centre());
    }

    /**
     * The same.
     *
     * @param proportions whose mean rates say how what a season adds is spread over the corners
     */
    static LearnedWear learn(List<WearHistory> histories, WearPrior prior, WearParameters proportions) {
        var learner = new WearLearner(histories, prior, proportions);
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
        var slope = penalisedSlope(at, sums);
        var curvature = information(sums);
        boolean fresh = true;
        for (int step = 0; step < MOST_STEPS; step++) {
            var direction = CholeskyFactor.nearest(curvature, PARAMETERS).solve(slope);
            if (dot(slope, direction) < PRECISE) {
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
                if (fresh) {
                    break;
                }
                curvature = information(sums);
                fresh = true;
                continue;
            }
            var slopeNext = penalisedSlope(next, sumsNext);
            bend(curvature, difference(next, at), difference(slope, slopeNext));
            fresh = false;
            at = next;
            sums = sumsNext;
            slope = slopeNext;
        }
        return at;
    }

    /** Equation (2). */
    private static void bend(double[] curvature, double[] step, double[] fall) {
        double along = dot(step, fall);
        if (!(along > 0)) {
            return;
        }
        var before = new double[PARAMETERS];
        for (int i = 0; i < PARAMETERS; i++) {
            for (int j = 0; j < PARAMETERS; j++) {
                before[i] += curvature[i * PARAMETERS + j] * step[j];
            }
        }
        double square = dot(step, before);
        for (int i = 0; i < PARAMETERS; i++) {
            for (int j = 0; j < PARAMETERS; j++) {
                curvature[i * PARAMETERS + j] += fall[i] * fall[j] / along - before[i] * before[j] / square;
            }
        }
    }

    /** Outer products of the sets' slopes, and the prior's precision. */
    private double[] information(Sums sums) {
        var information = sums.outerOfSets.clone();
        for (int i = 0; i < PARAMETERS; i++) {
            information[i * PARAMETERS + i] += priorPrecision[i];
        }
        return information;
    }

    private Map<WearParameter, Double> standardErrors(double[] at) {
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
            errors[i] = Math.min(Math.sqrt(variance), spread(i));
        }
        var byParameter = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            byParameter.put(parameter, errors[parameter.ordinal()]);
        }
        return byParameter;
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
        var model = new WearModel(parameters);
        for (var car : cars) {
            var ofCar = new double[PARAMETERS];
            for (var set : car) {
                var ofSet = new double[PARAMETERS];
                sums.log += set.log(model, ofSet);
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
        // No parameter changes by more than a factor of e in one step.
        double longest = Arrays.stream(direction).map(Math::abs).max().orElse(0);
        double step = share / Math.max(1, longest);
        for (int i = 0; i < PARAMETERS; i++) {
            double farthest = MOST_SPREADS * spread(i);
            boolean slowing = parameter(i) == WearParameter.SLOWING;
            double least = slowing ? -MOST_SLOWING : centre[i] - farthest;
            double most = slowing ? MOST_SLOWING : Math.min(centre[i] + farthest, HIGHEST);
            next[i] = Math.clamp(next[i] + step * direction[i], least, most);
        }
        return next;
    }

    private static double[] difference(double[] one, double[] other) {
        var difference = one.clone();
        for (int i = 0; i < one.length; i++) {
            difference[i] -= other[i];
        }
        return difference;
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

    private static WearParameter parameter(int place) {
        return WearParameter.values()[place];
    }

    private double spread(int place) {
        return prior.spread(parameter(place));
    }

    private static WearParameters parameters(double[] at) {
        var values = new EnumMap<WearParameter, Double>(WearParameter.class);
        for (var parameter : WearParameter.values()) {
            values.put(parameter, parameter.fromScale(at[parameter.ordinal()]));
        }
        return new WearParameters(values);
    }
}
