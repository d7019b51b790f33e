package cornerbook.app.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.calibration.fleet.Fleet;
import cornerbook.app.calibration.fleet.Oracle;
import cornerbook.app.calibration.fleet.Scenario;
import cornerbook.app.calibration.fleet.SimulatedCar;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * How close one could come who knows the simulator's own law and the same readings: docs/methods/wear.md has the figures of 160
 * cars, with {@link #CARS} and the samples of a visit set to those.
 */
@Tag("long")
class OracleTest {
    private static final int CARS = 40;
    private static final long SEED = 20_261_129;
    private static final int BURN = 40;
    private static final int SAMPLES = 80;

    private final Assessor assessor = new Assessor(LimitsFile.load());
    private double squaresOfOracle;
    private double squaresByDefault;
    private final Reliability reliability = new Reliability();

    /** Whoever knows the law is honest, and tells more apart than the defaults. */
    @ParameterizedTest
    @EnumSource(
            value = Scenario.class,
            names = {"CONTROL", "ALL"})
    void whoKnowsTheLawIsHonestAndSharper(Scenario scenario) {
        Fleet.cars(scenario, CARS, SEED).forEach(car -> score(scenario, car));

        assertThat(squaresOfOracle).isLessThan(squaresByDefault);
        assertThat(reliability.worst())
                .hasValueSatisfying(worst -> assertThat(Figure.CHANCES
                                .asked(scenario == Scenario.CONTROL, true)
                                .hold(worst.points()))
                        .isTrue());
    }

    private void score(Scenario scenario, SimulatedCar car) {
        var history = car.history();
        var aftermath = Aftermath.of(car.truth());
        var oracle = new Oracle(scenario, history, history.vehicle().id().hashCode());
        for (var visit : history.visits()) {
            var given = assessor.caseOf(history, visit.id());
            List<SetForecast> forecasts = TreadFindings.forecasts(given, new TreadForecaster(given));
            var answers = oracle.next(
                    forecasts.stream()
                            .map(each -> new Oracle.Question(each.set(), each.limitMm(), each.until()))
                            .toList(),
                    BURN,
                    SAMPLES);
            for (int i = 0; i < answers.size(); i++) {
                var forecast = forecasts.get(i);
                boolean held = aftermath
                        .held(forecast.set(), forecast.limitMm(), visit, forecast.until())
                        .orElseThrow();
                double chance = answers.get(i).holds();
                reliability.add(chance, held);
                squaresOfOracle += Math.pow(chance - (held ? 1 : 0), 2);
                squaresByDefault += Math.pow(forecast.probabilityHolds() - (held ? 1 : 0), 2);
            }
        }
        reliability.endCar();
    }
}
