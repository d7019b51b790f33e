package cornerbook.app.calibration;

import cornerbook.core.assess.Assessor;
import cornerbook.core.brake.seizing.judge.SeizingFindings;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Judgement;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tread.judge.TreadForecaster;
import java.util.List;
import java.util.stream.Stream;

/** What came of all that was forecast at all visits of the cars that were added. */
final class ForecastScores {
    private static final double LOWER = 0.05;
    private static final double UPPER = 0.95;
    private static final double BAND_Z = 1.6448536269514722;
    private static final double EVEN = 0.5;

    /** Readings of tread at the last visit that lie in the band that should hold nine in ten. */
    final Share bands = new Share();
    /** That a set holds until the day asked. */
    final Reliability holds = new Reliability();
    /** Sets that did hold on the day until which they hold with 90 %. */
    final Share horizons = new Share();
    /** The same of sets whose wear had not been seen yet. */
    final Share firstHorizons = new Share();

    final Share holdsFailed = new Share();
    /** What was spent by the forecast alone, every groove read above the limit, and held. */
    final Share spentHeld = new Share();
    /** Less likely than not, and held. */
    final Share unlikelyHeld = new Share();
    /** Readings of pads at the last visit, as of tread. */
    final Share pads = new Share();
    /** That a pad seizes before the next visit. */
    final Reliability seizing = new Reliability();
    /** Distance until the next visit in the band that should hold nine in ten. */
    final Share distances = new Share();
    /** Sound cars of which uneven wear was told at the last visit. */
    final Share unevenWear = new Share();

    private int cars;

    int cars() {
        return cars;
    }

    void add(Assessor assessor, CarHistory history, Aftermath aftermath) {
        if (history.visits().isEmpty()) {
            return;
        }
        cars++;
        for (var visit : history.visits()) {
            score(assessor.caseOf(history, visit.id()), aftermath);
        }
        lastReadings(assessor, history, history.visits().getLast());
        shares().forEach(Share::endCar);
        reliabilities().forEach(Reliability::endCar);
    }

    /** All that was counted; of one car all that there is to know of it. */
    List<Double> numbers() {
        return Stream.concat(
                        shares().stream().flatMap(Share::numbers),
                        reliabilities().stream().flatMap(Reliability::numbers))
                .toList();
    }

    /** Adds a car of which others have noted {@link #numbers}. */
    void addCar(List<Double> numbers) {
        cars++;
        int place = 0;
        for (var share : shares()) {
            share.addCar(numbers.get(place), numbers.get(place + 1));
            place += 2;
        }
        for (var reliability : reliabilities()) {
            reliability.addCar(numbers.subList(place, place + Reliability.NUMBERS));
            place += Reliability.NUMBERS;
        }
    }

    private List<Share> shares() {
        return List.of(
                bands, horizons, firstHorizons, holdsFailed, spentHeld, unlikelyHeld, pads, distances, unevenWear);
    }

    private List<Reliability> reliabilities() {
        return List.of(holds, seizing);
    }

    private void lastReadings(Assessor assessor, CarHistory history, Visit last) {
        for (var prediction : assessor.predictions(history, last.id())) {
            bands.add(isInside(prediction
                    .expectedMm()
                    .probabilityBelow(prediction.reading().value())));
        }
        var read = new StandingReadings(last);
        for (var expected : assessor.thicknessPredictions(history, last.id())) {
            if (expected.measure() == Measure.PAD_THICKNESS) {
                read.ofCorner(Measure.PAD_THICKNESS, expected.corner(), expected.side())
                        .ifPresent(reading ->
                                pads.add(isInside(expected.expectedMm().probabilityBelow(reading.value()))));
            }
        }
    }

    private static boolean isInside(double below) {
        return below >= LOWER && below <= UPPER;
    }

    private void score(Case given, Aftermath aftermath) {
        var forecasts = TreadFindings.forecasts(given, new TreadForecaster(given));
        var judged = TreadFindings.judge(given, forecasts);
        for (var forecast : forecasts) {
            tread(given.visit(), forecast, verdict(judged, forecast), aftermath);
        }
        if (aftermath.isSound()
                && !forecasts.isEmpty()
                && given.visit().equals(given.history().visits().getLast())) {
            unevenWear.add(judged.findings().size() > forecasts.size());
        }
        SeizingFindings.judge(given).findings().forEach(finding -> {
            var chance = finding.probability();
            if (chance != null) {
                aftermath
                        .padSticks(given.visit(), given.nextVisit())
                        .ifPresent(stuck -> seizing.add(1 - chance, stuck));
            }
        });
        given.goingOn()
                .ifPresent(set -> aftermath
                        .kmPerDay(given.visit(), given.nextVisit())
                        .ifPresent(km -> {
                            var next = given.runs().next(set.season());
                            double off = Math.log(Math.max(Double.MIN_NORMAL, km)) - next.logMean();
                            distances.add(Math.abs(off) <= BAND_Z * Math.sqrt(next.logVariance()));
                        }));
    }

    private static Verdict verdict(Judgement judged, SetForecast forecast) {
        var set = new Subject(Subject.Part.WHEEL_SET, null, null, forecast.set().id());
        return judged.findings().stream()
                .filter(finding -> finding.subject().equals(set))
                .map(Finding::verdict)
                .findFirst()
                .orElseThrow();
    }

    private void tread(Visit visit, SetForecast forecast, Verdict verdict, Aftermath aftermath) {
        double chance = forecast.probabilityHolds();
        aftermath
                .held(forecast.set(), forecast.limitMm(), visit, forecast.until())
                .ifPresent(held -> {
                    holds.add(chance, held);
                    if (verdict == Verdict.HOLDS) {
                        holdsFailed.add(!held);
                    }
                    if (verdict == Verdict.SPENT && forecast.lowestReadingMm() >= forecast.limitMm()) {
                        spentHeld.add(held);
                    }
                    if (chance < EVEN) {
                        unlikelyHeld.add(held);
                    }
                });
        var horizon = forecast.horizon();
        // A set that is worn out today has no day to come.
        if (horizon != null && horizon.isAfter(forecast.from())) {
            aftermath.held(forecast.set(), forecast.limitMm(), visit, horizon).ifPresent(kept -> {
                horizons.add(kept);
                if (!forecast.wearWasSeen()) {
                    firstHorizons.add(kept);
                }
            });
        }
    }
}
