package cornerbook.core.brake.judge;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.numeric.Estimate;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import cornerbook.core.season.DistancePerDay;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the brake wear model expects of the thickness of a pad or a disc at a visit, from all visits before it.
 *
 * @param measure pad thickness, at the leading or the trailing edge, or disc thickness
 * @param side of a pad; null for a disc
 * @param expectedMm mean and standard deviation of the reading to come, its own error included
 */
public record ThicknessPrediction(
        Measure measure, Corner corner, @Nullable Spot side, Estimate expectedMm) {
    /** A reading further off than this many standard deviations is questioned. Common practice, no source. */
    private static final double INCREDIBLE = 3.5;
    /** What a gauge through the wheel may err by is never too far. Common practice, no source. */
    private static final double PAD_GAUGE_ERROR_MM = 0.5;
    /** The same of a micrometer. Common practice, no source. */
    private static final double MICROMETER_ERROR_MM = 0.05;

    /** The odometer of the visit says how far the car ran until it. */
    private static final DistancePerDay NOTHING_TO_COME = new DistancePerDay(0, 0);

    private static final List<Measure> PAD_EDGES = List.of(Measure.PAD_THICKNESS, Measure.PAD_THICKNESS_TRAILING);

    /** Predictions of every pad and disc that was read or replaced before; others cannot be predicted. */
    public static List<ThicknessPrediction> of(CarHistory history, String visitId) {
        int place = history.visits().indexOf(history.getVisit(visitId));
        var wear = new BrakeWear(history.vehicle(), history.visits().subList(0, place + 1), NOTHING_TO_COME);
        var predictions = new ArrayList<ThicknessPrediction>();
        for (var corner : Corner.values()) {
            for (var measure : PAD_EDGES) {
                for (var side : BrakeCorner.SIDES) {
                    add(predictions, wear, measure, corner, side);
                }
            }
            add(predictions, wear, Measure.DISC_THICKNESS, corner, null);
        }
        return List.copyOf(predictions);
    }

    private static void add(
            List<ThicknessPrediction> predictions,
            BrakeWear wear,
            Measure measure,
            Corner corner,
            @Nullable Spot side) {
        wear.expectedMm(corner, measure, side)
                .ifPresent(expected -> predictions.add(new ThicknessPrediction(measure, corner, side, expected)));
    }

    /** How far from the mean a reading may be and still be believed. */
    public double credibleWithinMm() {
        return Math.max(
                INCREDIBLE * expectedMm.sd(),
                measure == Measure.DISC_THICKNESS ? MICROMETER_ERROR_MM : PAD_GAUGE_ERROR_MM);
    }

    /** What was expected, and what to do about a reading that is not: the same for every incredible value. */
    public Said asks() {
        return new BrakeSaid.NotAsExpected(new Between(
                Math.max(0, expectedMm.mean() - 2 * expectedMm.sd()),
                expectedMm.mean() + 2 * expectedMm.sd(),
                "mm",
                measure == Measure.DISC_THICKNESS ? 2 : 1));
    }
}
