package cornerbook.app.calibration;

import cornerbook.app.calibration.fleet.SimulatedCar;
import cornerbook.app.calibration.fleet.Truth;
import cornerbook.core.assess.Assessor;
import cornerbook.core.brake.seizing.judge.SeizingFindings;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.stream.Stream;

/** What came of what was forecast, over all visits of the cars that were added. */
final class ForecastScores {
    private static final double LOWER = 0.05;
    private static final double UPPER = 0.95;
    private static final double BAND_Z = 1.6448536269514722;
    private static final double EVEN = 0.5;

    /** Readings of tread at the last visit, inside their 90 % band. */
    final Share bands = new Share();
    /** That a set holds until the day asked. */
    final Reliability holds = new Reliability();

    final Reliability holdsGoingOn = new Reliability();
    final Reliability holdsStored = new Reliability();
    /** Days at a confidence of 90 % on which it did hold. */
    final Share horizons = new Share();

    final Share firstHorizons = new Share();
    final Share laterHorizons = new Share();
    /** The same, were the horizon counted in days on the car. */
    final Share horizonsOnTheCar = new Share();

    final Share firstHorizonsOnTheCar = new Share();
    /** Horizons before the car comes again. */
    final Share horizonsOfSeason = new Share();

    final Share holdsFailed = new Share();
    final Share spentHeld = new Share();
    final Share unlikelyHeld = new Share();
    final Share pads = new Share();
    /** That a pad seizes before the next visit. */
    final Reliability seizing = new Reliability();

    final Share distances = new Share();

    private final Assessor assessor;

    /** @param assessor with what it has learned of other cars */
    ForecastScores(Assessor assessor) {
        this.assessor = assessor;
    }

    void add(SimulatedCar car) {
        var history = car.history();
        for (var visit : history.visits()) {
            score(assessor.caseOf(history, visit.id()), car.truth());
        }
        lastReadings(history, history.visits().getLast());
        Stream.of(holds, holdsGoingOn, holdsStored, seizing).forEach(Reliability::endCar);
    }

    private void lastReadings(CarHistory history, Visit last) {
        for (var prediction : assessor.predictions(history, last.id())) {
            double below = prediction.expectedMm().probabilityBelow(prediction.reading().value());
            bands.add(below >= LOWER && below <= UPPER);
        }
        var read = new StandingReadings(last);
        for (var expected : assessor.thicknessPredictions(history, last.id())) {
            read.ofCorner(Measure.PAD_THICKNESS, expected.corner(), expected.side())
                    .filter(reading -> expected.measure() == Measure.PAD_THICKNESS)
                    .ifPresent(reading -> {
                        double below = expected.expectedMm().probabilityBelow(reading.value());
                        pads.add(below >= LOWER && below <= UPPER);
                    });
        }
    }

    private void score(Case given, Truth truth) {
        var forecasts = TreadFindings.forecasts(given, new TreadForecaster(given));
        var findings = TreadFindings.judge(given, forecasts).findings();
        for (var forecast : forecasts) {
            var verdict = findings.stream()
                    .filter(finding -> isOf(finding, forecast))
                    .map(Finding::verdict)
                    .findFirst()
                    .orElseThrow();
            tread(given.visit().date(), given.nextVisit(), forecast, verdict, truth);
        }
        SeizingFindings.judge(given)
                .findings()
                .forEach(finding -> seizing.add(
                        1 - finding.probability(), truth.padSticks(given.visit().id(), given.nextVisit())));
        given.goingOn().ifPresent(set -> {
            var today = given.visit().date();
            var next = given.runs().next(set.season());
            double kmPerDay = truth.km(today, given.nextVisit()) / ChronoUnit.DAYS.between(today, given.nextVisit());
            distances.add(Math.abs(kmPerDay - next.meanKm()) <= BAND_Z * next.sdKm());
        });
    }

    private static boolean isOf(Finding finding, SetForecast forecast) {
        return finding.subject()
                .equals(new Subject(Subject.Part.WHEEL_SET, null, null, forecast.set().id()));
    }

    private void tread(LocalDate today, LocalDate nextVisit, SetForecast forecast, Verdict verdict, Truth truth) {
        boolean held = truth.holds(forecast.set(), forecast.limitMm(), forecast.until());
        double chance = forecast.probabilityHolds();
        holds.add(chance, held);
        (forecast.role() == SetSpan.Role.GOING_ON ? holdsGoingOn : holdsStored).add(chance, held);
        if (verdict == Verdict.HOLDS) {
            holdsFailed.add(!held);
        }
        if (verdict == Verdict.SPENT && lowestReadingMm(forecast) >= forecast.limitMm()) {
            spentHeld.add(held);
        }
        if (chance < EVEN) {
            unlikelyHeld.add(held);
        }
        var horizon = forecast.horizon();
        // A set that is worn out today has no day to come.
        if (horizon == null || !horizon.isAfter(forecast.from())) {
            return;
        }
        boolean kept = truth.holds(forecast.set(), forecast.limitMm(), horizon);
        horizons.add(kept);
        (forecast.wearWasSeen() ? laterHorizons : firstHorizons).add(kept);
        var onTheCar = truth.afterDaysOnTheCar(
                forecast.set().season(), forecast.from(), ChronoUnit.DAYS.between(forecast.from(), horizon));
        boolean keptOnTheCar = truth.holds(forecast.set(), forecast.limitMm(), onTheCar);
        horizonsOnTheCar.add(keptOnTheCar);
        if (!forecast.wearWasSeen()) {
            firstHorizonsOnTheCar.add(keptOnTheCar);
        }
        if (!horizon.isAfter(nextVisit) && forecast.from().equals(today)) {
            horizonsOfSeason.add(kept);
        }
    }

    private static double lowestReadingMm(SetForecast forecast) {
        return forecast.tyres().stream()
                .flatMap(tyre -> tyre.grooves().stream())
                .filter(groove -> !groove.readings().isEmpty())
                .mapToDouble(groove -> groove.readings().getLast().depthMm())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
