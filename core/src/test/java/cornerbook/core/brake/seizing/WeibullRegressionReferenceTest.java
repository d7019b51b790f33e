package cornerbook.core.brake.seizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against R's survreg (survival.R beside the data says how and with which version) and against printed fits. */
class WeibullRegressionReferenceTest {
    private static final Percentage SIX_DIGITS = Percentage.withPercentage(1e-4);
    /** R's errors come from the same curvature; a coefficient near 0 is compared on the scale of its error. */
    private static final double SHARE_OF_ERROR = 1e-5;

    @ParameterizedTest
    @ValueSource(strings = {"shock", "nist", "cracks", "wheels", "pads"})
    void maximumLikelihoodEqualsSurvreg(String set) {
        var reference = SurvivalReference.of(set);
        int covariates = reference.covariates().getFirst().size();

        var fit = WeibullRegression.withoutPriors(covariates).fit(reference.times(), reference.covariates());

        for (int j = 0; j <= covariates; j++) {
            double error = reference.get("error" + j);
            assertThat(fit.coefficients().get(j))
                    .isCloseTo(reference.get("coefficient" + j), within(SHARE_OF_ERROR * error));
            assertThat(fit.standardError(j)).isCloseTo(error, SIX_DIGITS);
        }
        assertThat(fit.scale()).isCloseTo(reference.get("scale"), SIX_DIGITS);
        assertThat(fit.standardErrorOfLogScale()).isCloseTo(reference.get("errorLogScale"), SIX_DIGITS);
        assertThat(fit.logLikelihood()).isCloseTo(reference.get("logLikelihood"), within(1e-6));
    }

    /** R's optim on the penalised likelihood; it stops at four to five digits. */
    @ParameterizedTest
    @ValueSource(ints = {8, 300})
    void priorsPullAsTheyDoForAGeneralOptimiser(int pads) {
        var reference = SurvivalReference.of("pads");
        var results = SurvivalReference.resultsOf("prior" + pads);
        var regression = new WeibullRegression(
                List.of(
                        new NormalPrior(4, 0.5),
                        new NormalPrior(-0.8, 0.4),
                        new NormalPrior(0, 0.3),
                        new NormalPrior(0, 0.2),
                        new NormalPrior(0.5, 0.4)),
                new NormalPrior(Math.log(0.5), 0.25));

        var fit = regression.fit(
                reference.times().subList(0, pads), reference.covariates().subList(0, pads));

        for (int j = 0; j < 5; j++) {
            assertThat(fit.coefficients().get(j)).isCloseTo(results.get("coefficient" + j), within(5e-4));
            assertThat(fit.standardError(j)).isCloseTo(results.get("error" + j), Percentage.withPercentage(0.05));
        }
        assertThat(Math.log(fit.scale())).isCloseTo(results.get("logScale"), within(5e-4));
        assertThat(fit.standardErrorOfLogScale())
                .isCloseTo(results.get("errorLogScale"), Percentage.withPercentage(0.05));
    }

    /** Meeker and Escobar 1998, shock absorbers: µ 10.2299 (10.0145–10.4452), σ 0.3164 (0.2011–0.4978), normal 95 % limits. */
    @Test
    void shockAbsorbersAsPrinted() {
        var reference = SurvivalReference.of("shock");
        var fit = WeibullRegression.withoutPriors(0).fit(reference.times(), reference.covariates());
        Offset<Double> printed = within(0.5e-4);
        double location = fit.coefficients().getFirst();
        assertThat(location).isCloseTo(10.2299, printed);
        assertThat(location - 1.959964 * fit.standardError(0)).isCloseTo(10.0145, printed);
        assertThat(location + 1.959964 * fit.standardError(0)).isCloseTo(10.4452, printed);
        assertThat(fit.scale()).isCloseTo(0.3164, printed);
        assertThat(fit.scale() * Math.exp(-1.959964 * fit.standardErrorOfLogScale()))
                .isCloseTo(0.2011, printed);
        assertThat(fit.scale() * Math.exp(1.959964 * fit.standardErrorOfLogScale()))
                .isCloseTo(0.4978, printed);
    }

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3: η 606.5280, β 1.7208, −log likelihood 75.135. */
    @Test
    void handbookFitAsPrinted() {
        var reference = SurvivalReference.of("nist");
        var fit = WeibullRegression.withoutPriors(0).fit(reference.times(), reference.covariates());
        assertThat(Math.exp(fit.coefficients().getFirst())).isCloseTo(606.5280, within(0.005));
        assertThat(1 / fit.scale()).isCloseTo(1.7208, within(0.5e-4));
        assertThat(-fit.logLikelihood()).isCloseTo(75.135, within(0.5e-3));
    }

    /** Analytic derivatives against central differences, for each kind of censoring. */
    @ParameterizedTest
    @CsvSource({"7,7", "7,Infinity", "0,7", "7,11", "7,7.001", "0.01,300", "0,Infinity"})
    void derivativesEqualDifferences(double after, double by) {
        double step = 1e-4;
        for (double location : new double[] {1.2, 2, 3.1}) {
            for (double logScale : new double[] {-1, -0.3, 0.4}) {
                var here = at(after, by, location, logScale);
                double[] up = values(after, by, location + step, logScale);
                double[] down = values(after, by, location - step, logScale);
                double[] wider = values(after, by, location, logScale + step);
                double[] narrower = values(after, by, location, logScale - step);
                double tolerance = 1e-5 * (1 + Math.abs(here.value) + Math.abs(here.byLogScaleTwice));
                assertThat(here.byLocation).isCloseTo((up[0] - down[0]) / (2 * step), within(tolerance));
                assertThat(here.byLogScale).isCloseTo((wider[0] - narrower[0]) / (2 * step), within(tolerance));
                assertThat(here.byLocationTwice).isCloseTo((up[1] - down[1]) / (2 * step), within(tolerance));
                assertThat(here.byBoth).isCloseTo((wider[1] - narrower[1]) / (2 * step), within(tolerance));
                assertThat(here.byLogScaleTwice).isCloseTo((wider[2] - narrower[2]) / (2 * step), within(tolerance));
            }
        }
    }

    /** How far the maximum follows priors that say a little more of the hazard until a month, all of them as they go along. */
    @ParameterizedTest
    @ValueSource(doubles = {4, 18, 60})
    void shareOfTimesIsWhatThePriorsDoNotPull(double month) {
        var usual = List.of(new NormalPrior(Math.log(60), 0.5), new NormalPrior(-0.8, 0.4));
        var logScale = new NormalPrior(Math.log(0.5), 0.25);
        var times = List.of(
                CensoredTime.between(6, 18),
                CensoredTime.notBy(30),
                CensoredTime.notBy(24),
                CensoredTime.between(0, 12));
        var covariates = List.of(List.of(0.6), List.of(0.2), List.of(0.9), List.of(0.5));
        var asked = List.of(0.4);
        var fit = new WeibullRegression(usual, logScale).fit(times, covariates);
        var before = new WeibullRegression(usual, logScale).fit(List.of(), List.of());

        var slope = fit.slope(0, month, asked);
        double variance = Math.pow(0.5 * slope[0], 2) + Math.pow(0.4 * slope[1], 2) + Math.pow(0.25 * slope[2], 2);
        double step = 1e-4 / variance;
        var moved = new WeibullRegression(
                        List.of(
                                new NormalPrior(Math.log(60) + step * 0.25 * slope[0], 0.5),
                                new NormalPrior(-0.8 + step * 0.16 * slope[1], 0.4)),
                        new NormalPrior(Math.log(0.5) + step * 0.0625 * slope[2], 0.25))
                .fit(times, covariates);
        double pull = Math.log(moved.cumulativeHazard(month, asked) / fit.cumulativeHazard(month, asked)) / 1e-4;

        assertThat(fit.shareOfTimes(before, month, asked)).isBetween(0.02, 0.98).isCloseTo(1 - pull, within(1e-3));
        assertThat(before.shareOfTimes(before, month, asked)).isCloseTo(0, within(1e-9));
    }

    @Test
    void withoutDataThePriorsAreTheFit() {
        var fit = new WeibullRegression(List.of(new NormalPrior(4, 0.5)), new NormalPrior(-0.7, 0.25))
                .fit(List.of(), List.of());
        assertThat(fit.coefficients().getFirst()).isCloseTo(4, within(1e-12));
        assertThat(fit.standardError(0)).isCloseTo(0.5, within(1e-12));
        assertThat(Math.log(fit.scale())).isCloseTo(-0.7, within(1e-12));
    }

    @Test
    void manyEqualPadsThatStayFreeNeedAPrior() {
        var times = Collections.nCopies(20, CensoredTime.notBy(12));
        var none = Collections.nCopies(20, List.<Double>of());
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> WeibullRegression.withoutPriors(0).fit(times, none))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("expected");
    }

    private static CensoredLikelihood at(double after, double by, double location, double logScale) {
        var one = new CensoredLikelihood();
        one.set(Math.log(after), Math.log(by), location, Math.exp(logScale));
        return one;
    }

    private static double[] values(double after, double by, double location, double logScale) {
        var one = at(after, by, location, logScale);
        return new double[] {one.value, one.byLocation, one.byLogScale};
    }
}
