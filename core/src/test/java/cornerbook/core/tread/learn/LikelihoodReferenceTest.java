package cornerbook.core.tread.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import cornerbook.core.tread.CornerDistances;
import cornerbook.core.tread.NewDepth;
import cornerbook.core.tread.TreadReading;
import cornerbook.core.tread.TreadScale;
import cornerbook.core.tread.WearHistory;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hipparchus.distribution.multivariate.MultivariateNormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against the density of all readings of a set together by Hipparchus, with their means and covariances written out reading
 * by reading from the model's equations: whichever grooves were read, so whichever parts the set falls into.
 */
class LikelihoodReferenceTest {
    private static final double NEW_MM = 8;
    private static final double STEP = 1e-5;
    private static final double UNKNOWN_SD_MM = 3;

    /** Slopes by differences of the library's densities. */
    private static final double SLOPE_PRECISION = 1e-4;

    static Stream<Arguments> sets() {
        return Stream.of(
                Arguments.of("all grooves", List.of(GroovePart.SUM, GroovePart.DIFFERENCE), set(reading -> true, 4)),
                Arguments.of(
                        "all grooves, a tyre that came used",
                        List.of(GroovePart.SUM, GroovePart.DIFFERENCE),
                        set(reading -> true, 3)),
                Arguments.of(
                        "only the centre at one visit",
                        List.of(GroovePart.DIFFERENCE, GroovePart.CENTRE_WITH_SHOULDERS),
                        set(reading -> reading.visit() != 1 || reading.groove() == Spot.CENTRE, 4)),
                Arguments.of(
                        "no centre at one visit, a tyre that came used",
                        List.of(GroovePart.DIFFERENCE, GroovePart.CENTRE_WITH_SHOULDERS),
                        set(reading -> reading.visit() != 1 || reading.groove() != Spot.CENTRE, 3)),
                Arguments.of(
                        "only the shoulders",
                        List.of(GroovePart.DIFFERENCE, GroovePart.SHOULDERS),
                        set(reading -> reading.groove() != Spot.CENTRE, 4)),
                Arguments.of(
                        "only the centre", List.of(GroovePart.ONE), set(reading -> reading.groove() == Spot.CENTRE, 4)),
                Arguments.of(
                        "inner and centre", List.of(GroovePart.TWO), set(reading -> reading.groove() != Spot.OUTER, 3)),
                Arguments.of(
                        "a shoulder left out once",
                        List.of(GroovePart.THREE),
                        set(
                                reading ->
                                        reading.visit() != 1 || reading.tyre() != 2 || reading.groove() != Spot.OUTER,
                                4)),
                Arguments.of(
                        "a tyre that was never read",
                        List.of(GroovePart.SUM, GroovePart.DIFFERENCE),
                        set(reading -> reading.tyre() != 1, 4)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sets")
    void isTheDensityOfAllReadings(String what, List<GroovePart> parts, WearHistory set) {
        var proportions = WearParameters.defaults(DriveLayout.FRONT);
        var likelihood = new SetLikelihood(set, proportions);
        assertThat(likelihood.parts().stream().map(PartSums::part))
                .containsExactlyElementsOf(parts.stream().sorted().toList());
        var place = LearningScale.place(proportions
                .with(WearParameter.REAR_RATE, 0.14)
                .with(WearParameter.SLOWING, 0.08)
                .with(WearParameter.VISIT_SD, 0.13));
        var slope = new double[LearningScale.PARAMETERS];
        double log = new LikelihoodAt(LearningScale.parameters(place)).log(likelihood, slope);

        assertThat(log).isCloseTo(byLibrary(set, proportions, place), within(1e-8));
        for (int i = 0; i < slope.length; i++) {
            var above = place.clone();
            above[i] += STEP;
            var below = place.clone();
            below[i] -= STEP;
            double difference = (byLibrary(set, proportions, above) - byLibrary(set, proportions, below)) / (2 * STEP);
            assertThat(slope[i])
                    .as(LearningScale.parameter(i).name())
                    .isCloseTo(difference, within(SLOPE_PRECISION * (1 + Math.abs(difference))));
        }
    }

    private static double byLibrary(WearHistory set, WearParameters proportions, double[] place) {
        var parameters = LearningScale.parameters(place);
        var readings = set.readings();
        var effective = new double[readings.size()];
        var means = new double[readings.size()];
        var covariances = new double[readings.size()][readings.size()];
        double stretch = 0;
        for (int i = 0; i < readings.size(); i++) {
            var one = readings.get(i);
            var scale = new TreadScale(NEW_MM, parameters.of(WearParameter.SLOWING));
            effective[i] = scale.effective(one.depthMm());
            stretch += Math.log(1 + parameters.of(WearParameter.SLOWING) * (1 - 2 * one.depthMm() / NEW_MM));
            means[i] = NEW_MM;
            for (var leg : one.run().legs()) {
                means[i] -= leg.thousandKm() * parameters.rate(leg.corner().axle());
            }
            for (int j = 0; j <= i; j++) {
                covariances[i][j] = covariance(set, parameters, proportions, one, readings.get(j), i == j);
                covariances[j][i] = covariances[i][j];
            }
        }
        return Math.log(new MultivariateNormalDistribution(means, covariances).density(effective)) + stretch;
    }

    private static double covariance(
            WearHistory set,
            WearParameters parameters,
            WearParameters proportions,
            TreadReading one,
            TreadReading other,
            boolean same) {
        double covariance = same ? square(parameters.readingSdMm()) : 0;
        covariance += one.visit() == other.visit() ? square(parameters.of(WearParameter.VISIT_SD)) : 0;
        boolean sameGroove = one.groove() == other.groove();
        if (one.tyre() == other.tyre()) {
            boolean known = set.newDepths().get(one.tyre()).known();
            covariance += square(known ? parameters.newDepthSdMm() : UNKNOWN_SD_MM) * (sameGroove ? 1 : 0.5);
        }
        for (var leg : one.run().legs()) {
            for (var beside : other.run().legs()) {
                double together = leg.thousandKm() * beside.thousandKm();
                double relative = square(parameters.vehicleSpread());
                if (leg.corner() == beside.corner()) {
                    relative += square(parameters.of(WearParameter.CORNER_SPREAD));
                    relative += sameGroove ? square(parameters.of(WearParameter.GROOVE_SPREAD)) : 0;
                }
                covariance += together
                        * relative
                        * parameters.rate(leg.corner().axle())
                        * parameters.rate(beside.corner().axle());
                if (leg.season() == beside.season()) {
                    covariance += together
                            * square(parameters.of(WearParameter.SEASON_SD))
                            * share(proportions, leg.corner().axle())
                            * share(proportions, beside.corner().axle());
                }
            }
        }
        return covariance;
    }

    private static double share(WearParameters proportions, Axle axle) {
        double rate = axle == Axle.FRONT ? proportions.frontRateMmPer1000Km() : proportions.rearRateMmPer1000Km();
        return 2 * rate / (proportions.frontRateMmPer1000Km() + proportions.rearRateMmPer1000Km());
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * Three visits of an invented set, its wheels moved between them.
     *
     * @param known how many of its tyres came new
     */
    private static WearHistory set(Predicate<TreadReading> read, int known) {
        var random = new SplittableRandom(5);
        var readings = new ArrayList<TreadReading>();
        for (int tyre = 0; tyre < 4; tyre++) {
            var run = CornerDistances.NONE;
            for (int visit = 0; visit < 3; visit++) {
                run = run.plus(visit, Corner.values()[(tyre + visit * visit) % 4], 3 + 4 * random.nextDouble());
                for (var groove : Spot.values()) {
                    double depthMm = NEW_MM - 0.17 * run.total() + 0.4 * (random.nextDouble() - 0.5);
                    readings.add(new TreadReading(visit, tyre, groove, run, depthMm));
                }
            }
        }
        var newDepths = new ArrayList<NewDepth>();
        for (int tyre = 0; tyre < 4; tyre++) {
            newDepths.add(tyre < known ? NewDepth.stated(NEW_MM) : NewDepth.unknown(NEW_MM));
        }
        return new WearHistory(
                "invented",
                DriveLayout.FRONT,
                SeasonKind.WINTER,
                null,
                newDepths,
                readings.stream().filter(read).toList());
    }
}
