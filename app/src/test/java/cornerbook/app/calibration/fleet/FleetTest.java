package cornerbook.app.calibration.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.assess.VisitRules;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class FleetTest {
    private static final long SEED = 3;

    @Test
    void theSameSeedGivesTheSameCars() {
        assertThat(histories(Scenario.ALL)).isEqualTo(histories(Scenario.ALL));
    }

    /** A book would take them as they are. */
    @Test
    void everyHistoryKeepsTheRulesOfAVisit() {
        assertThat(histories(Scenario.ALL))
                .allSatisfy(car -> assertThat(VisitRules.check(car, LocalDate.of(2026, 1, 1)))
                        .isEmpty());
    }

    /** An error of the gauge changes what is read, and nothing that happens to the same tyres. */
    @Test
    void twoScenariosDifferByTheirEffectAlone() {
        var control = cars(Scenario.CONTROL);
        var offset = cars(Scenario.GAUGE_OFFSET);
        for (int car = 0; car < control.size(); car++) {
            var one = control.get(car);
            var other = offset.get(car);
            var first = one.history().visits().getFirst();
            for (var set : one.history().sets().subList(0, 2)) {
                assertThat(other.truth().lowestMm(set, first, first.date().plusYears(2)))
                        .isEqualTo(one.truth().lowestMm(set, first, first.date().plusYears(2)));
            }
            assertThat(depths(other.history())).isNotEqualTo(depths(one.history()));
        }
    }

    @Test
    void wearSlowsOnlyWhereItIsSwitchedOn() {
        assertThat(firstYearToFourth(Scenario.CONTROL)).isBetween(0.9, 1.1);
        assertThat(firstYearToFourth(Scenario.WEAR_SLOWS)).isGreaterThan(1.2);
    }

    @Test
    void aSetInTheStoreDoesNotWear() {
        for (var car : cars(Scenario.ALL)) {
            var visit = car.history().visits().getFirst();
            var stored = car.history().findSetOn(visit.arrivedOn()).orElseThrow();
            assertThat(car.truth().lowestMm(stored, visit, visit.date().plusDays(100)))
                    .isEqualTo(car.truth().lowestMm(stored, visit, visit.date()));
            assertThat(car.truth().lowestMm(stored, visit, visit.date().plusYears(1)))
                    .isLessThan(car.truth().lowestMm(stored, visit, visit.date()));
        }
    }

    /** Wear for the distance of sets in their first year against that in their fourth, of all that last as long. */
    private static double firstYearToFourth(Scenario scenario) {
        double first = 0;
        double fourth = 0;
        for (var car : Fleet.cars(scenario, 150, SEED).toList()) {
            var fitted = car.history().visits().getFirst();
            var set = car.history().findSetOn(fitted.leftOn()).orElseThrow();
            double newMm = Objects.requireNonNull(set.wheels().getFirst().tyre().newDepthMm());
            if (car.truth().lowestMm(set, fitted, fitted.date()) > newMm - 0.5
                    && car.truth().lowestMm(set, fitted, fitted.date().plusYears(4)) > 0) {
                first += worn(car, set, fitted, 0);
                fourth += worn(car, set, fitted, 3);
            }
        }
        return first / fourth;
    }

    private static double worn(SimulatedCar car, WheelSet set, Visit fitted, int years) {
        var truth = car.truth();
        var from = fitted.date().plusYears(years);
        return (truth.lowestMm(set, fitted, from) - truth.lowestMm(set, fitted, from.plusDays(330)))
                / truth.km(from, from.plusDays(330));
    }

    private static List<Double> depths(CarHistory car) {
        return new StandingReadings(car.visits().getFirst())
                .all(Measure.TREAD_DEPTH).stream()
                        .map(reading -> reading.value())
                        .toList();
    }

    private static List<SimulatedCar> cars(Scenario scenario) {
        return Fleet.cars(scenario, 20, SEED).toList();
    }

    private static List<CarHistory> histories(Scenario scenario) {
        return cars(scenario).stream().map(SimulatedCar::history).toList();
    }
}
