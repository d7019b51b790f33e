package cornerbook.app.calibration;

import cornerbook.app.calibration.fleet.Fleet;
import cornerbook.app.calibration.fleet.Scenario;
import cornerbook.app.calibration.fleet.SimulatedCar;
import cornerbook.core.assess.Assessor;
import cornerbook.core.assess.Learner;
import cornerbook.core.car.CarHistory;
import cornerbook.core.finding.Limit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The forecasts on trial: the same cars forecast from the defaults, and from what was learned of other cars.
 *
 * @param byDefault scores from the defaults
 * @param learned scores from what other cars taught
 */
record Trial(ForecastScores byDefault, ForecastScores learned) {
    private static final LocalDate LEARNED_ON = LocalDate.of(2026, 1, 1);

    /**
     * Simulated cars, taught by others of the same scenario.
     *
     * @param seed of the cars that are scored; those that teach have another
     */
    static Trial of(Scenario scenario, int cars, int teachers, long seed, List<Limit> limits) {
        var assessor = new Assessor(limits);
        var taught = assessor.with(Learner.learn(
                Fleet.cars(scenario, teachers, seed + 1)
                        .map(SimulatedCar::history)
                        .toList(),
                LEARNED_ON));
        var trial = new Trial(new ForecastScores(), new ForecastScores());
        Fleet.cars(scenario, cars, seed)
                .forEach(car -> trial.add(assessor, taught, car.history(), Aftermath.of(car.truth())));
        return trial;
    }

    /** The cars of a book: every second one is forecast from what the others taught, and the other way round. */
    static Trial ofBook(List<CarHistory> cars, List<Limit> limits) {
        var halves = List.of(new ArrayList<CarHistory>(), new ArrayList<CarHistory>());
        for (int car = 0; car < cars.size(); car++) {
            halves.get(car % 2).add(cars.get(car));
        }
        var assessor = new Assessor(limits);
        var trial = new Trial(new ForecastScores(), new ForecastScores());
        for (int half = 0; half < 2; half++) {
            var taught = assessor.with(Learner.learn(halves.get(1 - half), LEARNED_ON));
            for (var car : halves.get(half)) {
                trial.add(assessor, taught, car, new LaterVisits(car));
            }
        }
        return trial;
    }

    private void add(Assessor assessor, Assessor taught, CarHistory history, Aftermath aftermath) {
        byDefault.add(assessor, history, aftermath);
        learned.add(taught, history, aftermath);
    }

    ForecastScores scores(boolean fromOthers) {
        return fromOthers ? learned : byDefault;
    }
}
