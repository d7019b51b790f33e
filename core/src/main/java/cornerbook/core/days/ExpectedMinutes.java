package cornerbook.core.days;

import cornerbook.core.numeric.NormalDistribution;
import cornerbook.core.numeric.StudentDistribution;
import java.util.List;

/**
 * How long one kind of work takes in this shop: what is usual anywhere, drawn to what was clocked here.
 *
 * <p>The logarithms y of the minutes are normal, mean and variance unknown. Before a visit is clocked their mean is worth k visits
 * at the logarithm m of the usual minutes, their variance n degrees of freedom at s². With N visits of mean ȳ and sum of squares S
 * about it (conjugate normal model; Gelman et al., Bayesian Data Analysis, section 3.3, from memory):
 *
 * <pre>
 *   kN = k + N,  mN = (k m + N ȳ) / kN,  nN = n + N
 *   nN sN² = n s² + S + k N / kN · (ȳ − m)²
 *   next visit: Student with nN degrees of freedom about mN, scale sN √(1 + 1/kN)
 * </pre>
 *
 * <p>Breaks are part of a clocked time. Assumes that visits of one kind hang together by nothing else, as who works, or the car.
 *
 * @param usual half of such visits take less, min
 * @param nineInTen so many are done in this, min
 * @param visits how many were clocked here
 */
public record ExpectedMinutes(double usual, double nineInTen, int visits) {
    /** Shorter than this nobody works on a car, longer it was left standing, min. Common practice, no source. */
    public static final double SHORTEST = 3;

    public static final double LONGEST = 600;

    /** What the usual minutes are worth. Common practice, no source. */
    private static final double WORTH_VISITS = 4;

    private static final int WORTH_DEGREES = 4;

    /** Of the logarithm: two of three visits within a factor of 1.4. Common practice, no source. */
    private static final double SPREAD = 0.35;

    /** The middle that leaves a tenth above it, and a tenth below. */
    private static final double WITHOUT_TAILS = 0.8;

    /** Standard deviations that leave a tenth above them: the 0.9 quantile of the normal distribution. */
    private static final double NINE_IN_TEN = 1.2815515655446004;

    private static final int HALVINGS = 60;

    /**
     * What to expect of the next visit.
     *
     * @param clocked minutes of visits for this work; those outside 3 to 600 min are left out
     */
    public static ExpectedMinutes of(PlannedWork work, List<Double> clocked) {
        var logs = clocked.stream()
                .filter(minutes -> minutes >= SHORTEST && minutes <= LONGEST)
                .mapToDouble(Math::log)
                .sorted()
                .toArray();
        int n = logs.length;
        double start = Math.log(work.usualMinutes());
        double mean = start;
        for (double log : logs) {
            mean += (log - start) / n;
        }
        double squares = 0;
        for (double log : logs) {
            squares += (log - mean) * (log - mean);
        }
        double worth = WORTH_VISITS + n;
        double centre = (WORTH_VISITS * start + n * mean) / worth;
        int degrees = WORTH_DEGREES + n;
        double variance =
                (WORTH_DEGREES * SPREAD * SPREAD + squares + WORTH_VISITS * n / worth * (mean - start) * (mean - start))
                        / degrees;
        double scale = Math.sqrt(variance * (1 + 1 / worth));
        return new ExpectedMinutes(
                Math.exp(centre), Math.exp(centre + StudentDistribution.within(WITHOUT_TAILS, degrees) * scale), n);
    }

    /**
     * How much longer a visit takes that has taken so long already: half of those that have are done in so much more. The logarithm of
     * the time is taken as normal about the expected time, with the spread that leaves a tenth above {@link #nineInTen}; t solves
     *
     * <pre>
     *   P(T > elapsed + t) = P(T > elapsed) / 2
     * </pre>
     *
     * <p>So a visit that goes on beyond its time is not done at once: some time is always still to come.
     *
     * @param expected how long this visit was expected to take, min
     * @param elapsed since its work began, 0 and more, min; beyond {@link #LONGEST} it counts as that
     * @return min, above 0
     */
    public double left(double expected, double elapsed) {
        double begun = Math.min(elapsed, LONGEST);
        if (begun <= 0) {
            return expected;
        }
        double spread = Math.log(nineInTen / usual) / NINE_IN_TEN;
        double low = Math.log(begun / expected) / spread;
        double half = NormalDistribution.cumulative(-low) / 2;
        // Above the middle less than one standard deviation halves what is left.
        double high = Math.max(low, 0) + 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (NormalDistribution.cumulative(-middle) > half) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return expected * Math.exp(spread * high) - begun;
    }
}
