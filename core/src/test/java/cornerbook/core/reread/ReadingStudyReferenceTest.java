package cornerbook.core.reread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import org.hipparchus.stat.descriptive.moment.Variance;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class ReadingStudyReferenceTest {
    /** As grams less 1500, over 1000: yields become differences that two readings may have. */
    private static final double SCALE = 1000;

    private static final double SHIFT = 1500;

    /**
     * Yield of dyestuff from five preparations of each of six batches: Davies and Goldsmith, Statistical Methods in Research and
     * Production (1972), section 6.4, the data set Dyestuff of R's lme4.
     */
    private static final double[][] DYESTUFF = {
        {1545, 1440, 1440, 1520, 1580},
        {1540, 1555, 1490, 1560, 1495},
        {1595, 1550, 1605, 1510, 1560},
        {1445, 1440, 1595, 1465, 1545},
        {1595, 1630, 1515, 1635, 1625},
        {1520, 1455, 1450, 1480, 1445}
    };

    private static ReadTwice batch(double[] yields) {
        return new ReadTwice(
                "A",
                "B",
                Arrays.stream(yields)
                        .map(each -> (each - SHIFT) / SCALE)
                        .boxed()
                        .toList());
    }

    /**
     * lmer(Yield ~ 1 + (1 | Batch), Dyestuff), as lme4's documentation prints it: variance of batches 1764, residual 2451,
     * intercept 1527.50 with a standard error of 19.38. A batch is an occasion, its yields are differences, and each variance of a
     * difference is two of a reading; with 5 degrees of freedom t is 2.571.
     */
    @Test
    void dyestuff() {
        var study = Objects.requireNonNull(ReadingStudy.find(
                Arrays.stream(DYESTUFF).map(ReadingStudyReferenceTest::batch).toList()));
        assertThat(2 * square(study.repeatabilityMm() * SCALE)).isCloseTo(2451, within(0.5));
        assertThat(2 * square(Objects.requireNonNull(study.occasionsMm()) * SCALE))
                .isCloseTo(1764, within(0.5));
        var offset = Objects.requireNonNull(study.persons().getLast().offset());
        assertThat(study.persons().getLast().person()).isEqualTo("B");
        assertThat(SHIFT + offset.mm() * SCALE).isCloseTo(1527.5, within(1e-9));
        assertThat(offset.errorMm() * SCALE).isCloseTo(2.571 * 19.38, within(0.02));
    }

    private static double square(double value) {
        return value * value;
    }

    /** Pooled variance of occasions against Variance of hipparchus-stat 4.0.3, weighted with its degrees of freedom. */
    @Test
    void repeatabilityIsThePooledVariance() {
        var occasions = List.of(
                new ReadTwice("A", "A", List.of(0.1, 0.0, -0.2, 0.1)),
                new ReadTwice("A", "A", List.of(0.3, 0.2, 0.2)),
                new ReadTwice("B", "B", List.of(-0.1, 0.1)));
        double pooled = occasions.stream()
                        .mapToDouble(occasion ->
                                (occasion.differencesMm().size() - 1) * new Variance().evaluate(doubles(occasion)))
                        .sum()
                / 6;
        var study = Objects.requireNonNull(ReadingStudy.find(occasions));
        assertThat(study.repeatabilityMm()).isCloseTo(Math.sqrt(pooled / 2), within(1e-12));
        // 2.8 times it: ISO 5725-6.
        assertThat(study.repeatabilityLimitMm()).isCloseTo(2.8 * Math.sqrt(pooled / 2), within(1e-12));
    }

    private static double[] doubles(ReadTwice occasion) {
        return occasion.differencesMm().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    /**
     * Offsets of three persons of unbalanced occasions against GLSMultipleLinearRegression of hipparchus-stat 4.0.3 with the variance
     * that was found, and that variance against its own condition: squares left are as many as degrees of freedom.
     */
    @Test
    void offsetsOfThreePersons() {
        var occasions = List.of(
                new ReadTwice("A", "B", List.of(0.3, 0.2, 0.4, 0.3)),
                new ReadTwice("B", "A", List.of(-0.1, -0.1, 0.0)),
                new ReadTwice("B", "C", List.of(-0.5, -0.3, -0.4, -0.3, -0.4, -0.5)),
                new ReadTwice("C", "A", List.of(0.3, 0.3)),
                new ReadTwice("A", "C", List.of(-0.1, 0.1, 0.0)),
                new ReadTwice("A", "A", List.of(0.2, 0.1, 0.1)));
        var persons = List.of("A", "B", "C");
        double withinMm2 = 0.006;
        var ours = new ReadingOffsets(occasions, persons, withinMm2);
        assertThat(ours.freedom()).isEqualTo(4);
        int count = occasions.size();
        var means = new double[count];
        var design = new double[count][2];
        var covariance = new double[count][count];
        for (int k = 0; k < count; k++) {
            var occasion = occasions.get(k);
            means[k] = DoubleStream.of(doubles(occasion)).average().orElseThrow();
            for (int p = 1; p < 3; p++) {
                design[k][p - 1] = (occasion.second().equals(persons.get(p)) ? 1 : 0)
                        - (occasion.first().equals(persons.get(p)) ? 1 : 0);
            }
            covariance[k][k] =
                    ours.betweenMm2() + withinMm2 / occasion.differencesMm().size();
        }
        var library = new GLSMultipleLinearRegression();
        library.setNoIntercept(true);
        library.newSampleData(means, design, covariance);
        // Of the library A is 0; ours is against the mean of the two others.
        var fitted = library.estimateRegressionParameters();
        assertThat(Objects.requireNonNull(ours.offset("B")).mm()).isCloseTo(fitted[0] - fitted[1] / 2, within(1e-6));
        assertThat(Objects.requireNonNull(ours.offset("A")).mm()).isCloseTo(-(fitted[0] + fitted[1]) / 2, within(1e-6));
        var left = library.estimateResiduals();
        double squares = 0;
        for (int k = 0; k < count; k++) {
            squares += left[k] * left[k] / covariance[k][k];
        }
        assertThat(ours.betweenMm2()).isPositive();
        assertThat(squares).isCloseTo(4, within(1e-4));
    }
}
