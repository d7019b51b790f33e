package cornerbook.core.brake.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import cornerbook.core.brake.WearPrior;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Cars;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ThicknessPredictionReferenceTest {
    private static final double TOLERANCE_MM = 1e-9;

    /** Generalized least squares of Hipparchus (hipparchus-stat 4.0.3) with the prior as two pseudo-observations. */
    @Test
    void expectedReadingEqualsTheOneOfGeneralizedLeastSquares() {
        var prior = WearPrior.pad(11);
        double[] runs = {8, 17, 25};
        double[] read = {10.4, 9.6, 9.1};
        double asked = 34;
        var visits = new ArrayList<>(List.of(visit(0, pads(Measure.PADS_REPLACED, null, 1))));
        for (int i = 0; i < runs.length; i++) {
            visits.add(visit(runs[i], pads(Measure.PAD_THICKNESS, Spot.INNER, read[i])));
        }
        // What is read at the visit itself has no say in what was expected there.
        visits.add(visit(asked, pads(Measure.PAD_THICKNESS, Spot.INNER, 4)));

        var regression = new GLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(
                new double[] {read[0], read[1], read[2], prior.newMm(), prior.rateMmPer1000Km()},
                new double[][] {{1, -runs[0]}, {1, -runs[1]}, {1, -runs[2]}, {1, 0}, {0, 1}},
                diagonal(
                        prior.readingSdMm(),
                        prior.readingSdMm(),
                        prior.readingSdMm(),
                        prior.newSdMm(),
                        prior.rateSdMmPer1000Km()));
        var mean = regression.estimateRegressionParameters();
        var covariance = regression.estimateRegressionParametersVariance();
        double variance = covariance[0][0]
                - 2 * asked * covariance[0][1]
                + asked * asked * covariance[1][1]
                + prior.readingSdMm() * prior.readingSdMm();

        var prediction = predict(visits, Measure.PAD_THICKNESS, Spot.INNER);
        assertThat(prediction.expectedMm().mean()).isCloseTo(mean[0] - asked * mean[1], within(TOLERANCE_MM));
        assertThat(prediction.expectedMm().sd()).isCloseTo(Math.sqrt(variance), within(TOLERANCE_MM));
        assertThat(prediction.asks()).isInstanceOfSatisfying(BrakeSaid.NotAsExpected.class, told -> {
            assertThat(told.expected().lowest())
                    .isCloseTo(prediction.expectedMm().mean() - 2 * Math.sqrt(variance), within(TOLERANCE_MM));
            assertThat(told.expected().highest())
                    .isCloseTo(prediction.expectedMm().mean() + 2 * Math.sqrt(variance), within(TOLERANCE_MM));
        });
    }

    @Test
    void whatWasNeverReadIsNotExpectedAndAnotherDiscStartsAnew() {
        var first = visit(0, pads(Measure.DISC_THICKNESS, null, 26.5));
        var replaced = visit(10, pads(Measure.DISC_REPLACED, null, 1));
        var now = visit(20, List.of());
        assertThat(ThicknessPrediction.of(history(List.of(first, now)), now.id()))
                .singleElement()
                .satisfies(only -> {
                    assertThat(only.corner()).isEqualTo(Corner.LF);
                    assertThat(only.measure()).isEqualTo(Measure.DISC_THICKNESS);
                    assertThat(only.expectedMm().mean()).isBetween(26.1, 26.5);
                });
        assertThat(predict(List.of(first, replaced, now), Measure.DISC_THICKNESS, null)
                        .expectedMm()
                        .mean())
                .as("new discs are 28 mm")
                .isBetween(27.8, 28.0);
        assertThat(ThicknessPrediction.of(history(List.of(first)), first.id())).isEmpty();
    }

    private static ThicknessPrediction predict(List<Visit> visits, Measure measure, @Nullable Spot side) {
        return ThicknessPrediction.of(history(visits), visits.getLast().id()).stream()
                .filter(each -> each.measure() == measure && each.side() == side)
                .findFirst()
                .orElseThrow();
    }

    private static CarHistory history(List<Visit> visits) {
        return Cars.history(visits.toArray(Visit[]::new));
    }

    private static Visit visit(double run1000Km, List<Reading> readings) {
        return new Visit(
                "v" + run1000Km,
                Cars.AUTUMN.plusDays(Math.round(20 * run1000Km)),
                40_000 + 1000 * run1000Km,
                Cars.at("S-"),
                Cars.at("S-"),
                readings);
    }

    private static List<Reading> pads(Measure measure, @Nullable Spot spot, double value) {
        return List.of(Cars.reading(measure, Corner.LF, null, spot, value));
    }

    private static double[][] diagonal(double... deviations) {
        var matrix = new double[deviations.length][deviations.length];
        for (int i = 0; i < deviations.length; i++) {
            matrix[i][i] = deviations[i] * deviations[i];
        }
        return matrix;
    }
}
