package cornerbook.core.tread.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.RunHistory;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.tread.CornerDistances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * What the wear model expected of a visit's tread readings from all visits before it, beside what was read.
 *
 * @param expectedMm mean and standard deviation of the reading to come, its own error included; 0 for a worn-out tread
 */
public record TreadPrediction(Reading reading, Estimate expectedMm) {
    /** A reading further off than this many standard deviations is questioned. Common practice, no source. */
    private static final double INCREDIBLE = 3.5;

    /** Predictions of all tread readings of a visit whose set was read before; others cannot be predicted. */
    public static List<TreadPrediction> of(CarHistory history, String visitId, Knowledge knowledge) {
        var visit = history.getVisit(visitId);
        int place = history.visits().indexOf(visit);
        if (place == 0) {
            return List.of();
        }
        var before = history.visits().subList(0, place);
        var runs = new RunHistory(history, history.visits().subList(0, place + 1), knowledge);
        var forecaster = new TreadForecaster(history, before, before.getLast(), runs, knowledge);
        var predictions = new ArrayList<TreadPrediction>();
        // The order of the sets says nothing.
        var sets = history.sets().stream()
                .sorted(Comparator.comparing(WheelSet::id))
                .toList();
        for (var set : sets) {
            if (!forecaster.wasRead(set)) {
                continue;
            }
            var posterior = forecaster.posterior(set);
            double gaugeSdMm = forecaster.parameters(set).readingErrorMm();
            var tags = set.wheels().stream().map(Wheel::tag).toList();
            for (var reading : new StandingReadings(visit).all(Measure.TREAD_DEPTH)) {
                int tyre = tags.indexOf(reading.wheelTag());
                if (tyre >= 0) {
                    CornerDistances run = runs.run(visit, tags.get(tyre));
                    var depth = posterior
                            .depth(Objects.requireNonNull(reading.spot()), tyre, run)
                            .left();
                    predictions.add(new TreadPrediction(
                            reading, new Estimate(depth.mean(), Math.hypot(depth.sd(), gaugeSdMm))));
                }
            }
        }
        return predictions;
    }

    /** How far the reading is off, in standard deviations; above 0 when deeper than expected. */
    public double deviations() {
        return (reading.value() - expectedMm.mean()) / expectedMm.sd();
    }

    /** Whether the reading is so far off that it should be taken again; what a gauge may err by is never too far. */
    public boolean incredible() {
        return Math.abs(reading.value() - expectedMm.mean()) > credibleWithinMm();
    }

    /** How far from the mean a reading may be and still be believed. */
    public double credibleWithinMm() {
        return Math.max(INCREDIBLE * expectedMm.sd(), StoredWheelCheck.GAUGE_ERROR_MM);
    }

    /** Asks to read again. */
    public TreadSaid.ReadAgain question() {
        return new TreadSaid.ReadAgain(
                Objects.requireNonNull(reading.wheelTag()),
                Objects.requireNonNull(reading.corner()),
                Objects.requireNonNull(reading.spot()),
                new Amount(reading.value(), "mm", 1),
                expected());
    }

    /** What was expected, and what to do about a reading that is not: the same for every incredible value. */
    public TreadSaid.Expected asks() {
        return new TreadSaid.Expected(expected());
    }

    private Between expected() {
        return new Between(
                Math.max(0, expectedMm.mean() - 2 * expectedMm.sd()), expectedMm.mean() + 2 * expectedMm.sd(), "mm", 1);
    }
}
