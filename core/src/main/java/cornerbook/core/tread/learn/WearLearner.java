package cornerbook.core.tread.learn;

import cornerbook.core.numeric.CholeskyFactor;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.TreadScale;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearPrior;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Learns the wear parameters of cars that are alike from all their readings: empirical Bayes by maximum marginal
 * likelihood, pulled towards a prior where data are few. Maximised is the sum of {@link LikelihoodAt} over the sets plus
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
 * <p>Of many cars the search begins with {@link #FEW_CARS} of them, and goes on with all from where those ended and with the
 * curvature that they had there, so that few steps are left to take with all. Where it ends is the same.
 *
 * <p>Standard errors allow for what the sum leaves out, that grooves of one car are alike: with J the outer products of
 * whole cars' slopes and H the curvature, they are the roots of the diagonal of H⁻¹ (J + P) H⁻¹ (Huber 1967; Liang and
 * Zeger 1986, Biometrika 73:13). Where the sum has no maximum of its own, as in a book of cars that are all alike, H is not
 * positive definite, and what (2) starts from stands in its place. No standard error is greater than the prior's spread: a
 * book cannot know less than was known without it. Checked against R's lme4.
 */
public final class WearLearner {
    private static final int PARAMETERS = LearningScale.PARAMETERS;
    private static final int MOST_STEPS = 200;
    private static final int MOST_HALVINGS = 12;
    /** Rise that the next step promises, below which the search ends. */
    private static final double PRECISE = 1e-6;

    private static final double MOST_SPREADS = 8;
    /** What every parameter stays below, on its scale. */
    private static final double HIGHEST = Math.log(9);
    /** How far from 0 the slowing stays. */
    private static final double MOST_SLOWING = 0.9 * TreadScale.MOST_SLOWING;
    /** Cars from which a search begins. */
    private static final int FEW_CARS = 256;

    private final AlikeCars cars;
    private final WearPrior prior;
    private final double[] centre;
    private final double[] priorPrecision = new double[PARAMETERS];

    WearLearner(AlikeCars cars, WearPrior prior) {
        this.cars = cars;
        this.prior = prior;
        centre = LearningScale.place(prior.centre());
        Arrays.setAll(priorPrecision, place -> 1 / (spread(place) * spread(place)));
    }

    /** Where a search begins, or ended. */
    static final class Place {
        private final double[] at;
        private final double @Nullable [] curvatureOfCar;

        /**
         * A place.
         *
         * @param at of the parameters on their scales
         * @param curvatureOfCar of the likelihood there, of one car on average; null where it is not known
         */
        private Place(double[] at, double @Nullable [] curvatureOfCar) {
            this.at = at;
            this.curvatureOfCar = curvatureOfCar;
        }

        double[] at() {
            return at;
        }
    }

    /**
     * The parameters that make the readings likeliest, given the prior.
     *
     * @param histories of cars that are taken to be alike; none gives the prior's centre
     */
    public static LearnedWear learn(List<WearHistory> histories, WearPrior prior) {
        var learner = new WearLearner(AlikeCars.of(histories, prior.centre()), prior);
        return learner.learned(learner.maximise());
    }

    /** The prior's centre, to begin from where nothing better is known. */
    Place centre() {
        return new Place(centre, null);
    }

    /** The maximum, searched from the prior's centre. */
    Place maximise() {
        var few = cars.some(FEW_CARS);
        if (few == cars) {
            return maximise(centre());
        }
        var ofFew = new WearLearner(few, prior);
        return maximise(ofFew.withCurvature(ofFew.maximise()));
    }

    /** The same place with the curvature that these cars have there. */
    Place withCurvature(Place place) {
        var curvature = cars.curvature(place.at);
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] /= cars.cars();
        }
        return new Place(place.at, curvature);
    }

    /** The maximum, searched from a place; its curvature is still that of where the search began. */
    Place maximise(Place start) {
        var at = moved(start.at, new double[PARAMETERS], 0);
        var sums = cars.sums(at);
        var slope = penalisedSlope(at, sums);
        var guessed = guessed(start);
        boolean fresh = guessed == null;
        var curvature = guessed == null ? information(sums) : guessed;
        for (int step = 0; step < MOST_STEPS; step++) {
            var direction = direction(at, curvature, slope);
            if (dot(slope, direction) < PRECISE) {
                break;
            }
            double share = 1;
            var next = moved(at, direction, share);
            var sumsNext = cars.sums(next);
            for (int halving = 0;
                    halving < MOST_HALVINGS && !(penalised(next, sumsNext) >= penalised(at, sums));
                    halving++) {
                share /= 2;
                next = moved(at, direction, share);
                sumsNext = cars.sums(next);
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
        return new Place(at, start.curvatureOfCar);
    }

    /** The curvature that all of these cars would have if each had that of the place; null where that is none. */
    private double @Nullable [] guessed(Place place) {
        if (place.curvatureOfCar == null) {
            return null;
        }
        var curvature = place.curvatureOfCar.clone();
        for (int i = 0; i < curvature.length; i++) {
            curvature[i] *= cars.cars();
        }
        addPrior(curvature);
        return CholeskyFactor.find(curvature, PARAMETERS).isPresent() ? curvature : null;
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
    private double[] information(CarSums sums) {
        var information = sums.outerOfSets().clone();
        addPrior(information);
        return information;
    }

    private void addPrior(double[] matrix) {
        for (int i = 0; i < PARAMETERS; i++) {
            matrix[i * PARAMETERS + i] += priorPrecision[i];
        }
    }

    /** What a maximum says, with its standard errors. */
    LearnedWear learned(Place found) {
        var sums = cars.sums(found.at);
        var curvature = cars.curvature(found.at).clone();
        addPrior(curvature);
        var inverse = CholeskyFactor.find(curvature, PARAMETERS)
                .orElseGet(() -> CholeskyFactor.nearest(information(sums), PARAMETERS))
                .inverse();
        var middle = sums.outerOfCars().clone();
        addPrior(middle);
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
        return new LearnedWear(LearningScale.parameters(found.at), byParameter, cars.cars(), cars.readings(), 1);
    }

    private double penalised(double[] at, CarSums sums) {
        double log = sums.log();
        for (int i = 0; i < PARAMETERS; i++) {
            log -= 0.5 * priorPrecision[i] * (at[i] - centre[i]) * (at[i] - centre[i]);
        }
        return log;
    }

    private double[] penalisedSlope(double[] at, CarSums sums) {
        var slope = sums.slope().clone();
        for (int i = 0; i < PARAMETERS; i++) {
            slope[i] -= priorPrecision[i] * (at[i] - centre[i]);
        }
        return slope;
    }

    /** B⁻¹ g of (1) among the parameters that do not stand at a bound that the slope would have them pass. */
    private double[] direction(double[] at, double[] curvature, double[] slope) {
        var free = curvature.clone();
        var pull = slope.clone();
        for (int i = 0; i < PARAMETERS; i++) {
            if (slope[i] < 0 ? at[i] > least(i) : at[i] < most(i)) {
                continue;
            }
            pull[i] = 0;
            for (int j = 0; j < PARAMETERS; j++) {
                free[i * PARAMETERS + j] = 0;
                free[j * PARAMETERS + i] = 0;
            }
            free[i * PARAMETERS + i] = 1;
        }
        return CholeskyFactor.nearest(free, PARAMETERS).solve(pull);
    }

    private double[] moved(double[] at, double[] direction, double share) {
        var next = at.clone();
        // No parameter changes by more than a factor of e in one step.
        double longest = Arrays.stream(direction).map(Math::abs).max().orElse(0);
        double step = share / Math.max(1, longest);
        for (int i = 0; i < PARAMETERS; i++) {
            next[i] = Math.clamp(next[i] + step * direction[i], least(i), most(i));
        }
        return next;
    }

    private double least(int i) {
        return LearningScale.parameter(i) == WearParameter.SLOWING
                ? -MOST_SLOWING
                : centre[i] - MOST_SPREADS * spread(i);
    }

    private double most(int i) {
        return LearningScale.parameter(i) == WearParameter.SLOWING
                ? MOST_SLOWING
                : Math.min(centre[i] + MOST_SPREADS * spread(i), HIGHEST);
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

    private double spread(int place) {
        return prior.spread(LearningScale.parameter(place));
    }
}
