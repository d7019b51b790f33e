package cornerbook.core.brake.seizing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Weibull regression on censored times, as an accelerated failure time model: log T = β₀ + β₁x₁ + … + σ W with W standard
 * smallest extreme value, so that S(t) = exp(−(t/e^(xβ))^(1/σ)). It finds the maximum of the log-likelihood plus the
 * logarithms of normal priors on β and log σ by Newton's method with the analytic gradient and Hessian; a step that does
 * not climb is halved, and a Hessian that is not negative definite is shifted until it is. With a proper prior on every
 * parameter it always ends with the highest point that it found.
 *
 * <p>Assumes independent times and covariates that do not change with time. Sources: Meeker and Escobar, Statistical
 * Methods for Reliability Data, 1998, chapters 8 and 17; Kalbfleisch and Prentice, The Statistical Analysis of Failure Time
 * Data. Agrees with R's survreg to six digits (docs/methods/brakes.md).
 */
public final class WeibullRegression {
    private static final int MOST_STEPS = 100;
    private static final int MOST_HALVINGS = 60;
    /** Newton stops when the gain that the quadratic model still promises falls below this. */
    private static final double PROMISED_GAIN = 1e-14;

    private static final double EXTREME_VALUE_SD = Math.PI / Math.sqrt(6);

    private final List<NormalPrior> coefficientPriors;
    private final NormalPrior logScalePrior;

    /**
     * A regression with these priors.
     *
     * @param coefficientPriors of β₀, β₁, …: one more than there are covariates
     */
    public WeibullRegression(List<NormalPrior> coefficientPriors, NormalPrior logScalePrior) {
        if (coefficientPriors.isEmpty()) {
            throw new IllegalArgumentException("no prior, expected at least that of the intercept");
        }
        this.coefficientPriors = List.copyOf(coefficientPriors);
        this.logScalePrior = logScalePrior;
    }

    /** A regression by maximum likelihood alone, without priors. */
    public static WeibullRegression withoutPriors(int covariates) {
        return new WeibullRegression(Collections.nCopies(covariates + 1, NormalPrior.FLAT), NormalPrior.FLAT);
    }

    /**
     * The fit.
     *
     * @param times may be empty when every prior is proper: then the priors are the result
     * @param covariates of each time, in the order of the priors after the first
     * @throws IllegalArgumentException when the numbers of rows or covariates do not match, or when data and priors leave a
     *     coefficient open
     */
    public WeibullFit fit(List<CensoredTime> times, List<List<Double>> covariates) {
        return fit(times, covariates, List.of());
    }

    /**
     * The same of times that hang together in groups, as the pads of a car: the same coefficients, and the covariance that
     * holds whatever they have in common (Huber 1967; Liang and Zeger 1986, Biometrika 73:13). It takes many groups.
     *
     * @param groups rows of each; none when each row stands by itself
     */
    WeibullFit fit(List<CensoredTime> times, List<List<Double>> covariates, List<int[]> groups) {
        var data = new CensoredSample(times, covariates, coefficientPriors.size());
        var here = new Objective(data, coefficientPriors, logScalePrior, start(data));
        for (int step = 0; step < MOST_STEPS; step++) {
            var direction = here.curvature().solve(here.gradient());
            double promised = 0;
            for (int j = 0; j < direction.length; j++) {
                promised += 0.5 * direction[j] * here.gradient()[j];
            }
            if (promised < PROMISED_GAIN * (1 + Math.abs(here.value()))) {
                break;
            }
            var higher = climb(data, here, direction);
            if (higher.isEmpty()) {
                break;
            }
            here = higher.get();
        }
        return here.toFit(data, groups);
    }

    /** A point along the direction that is no lower; empty where rounding hides every rise. */
    private Optional<Objective> climb(CensoredSample data, Objective here, double[] direction) {
        double length = 1;
        for (int halving = 0; halving < MOST_HALVINGS; halving++) {
            var there = here.moved(direction, length);
            var next = new Objective(data, coefficientPriors, logScalePrior, there);
            if (next.value() >= here.value()) {
                return Optional.of(next);
            }
            length /= 2;
        }
        return Optional.empty();
    }

    /** Mean and spread of the logarithms for the parameters without a prior; the prior's mean for the others. */
    private double[] start(CensoredSample data) {
        var middle = new ArrayList<Double>();
        for (int i = 0; i < data.size(); i++) {
            middle.add(data.logMiddle(i));
        }
        double mean = middle.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double variance = middle.stream()
                .mapToDouble(value -> (value - mean) * (value - mean))
                .average()
                .orElse(1);
        int unknowns = coefficientPriors.size() + 1;
        var start = new double[unknowns];
        for (int j = 0; j < unknowns - 1; j++) {
            var prior = coefficientPriors.get(j);
            start[j] = prior.equals(NormalPrior.FLAT) && j == 0 ? mean : prior.mean();
        }
        double logSpread = Math.log(Math.max(0.05, Math.sqrt(variance) / EXTREME_VALUE_SD));
        start[unknowns - 1] = logScalePrior.equals(NormalPrior.FLAT) ? logSpread : logScalePrior.mean();
        return start;
    }
}
