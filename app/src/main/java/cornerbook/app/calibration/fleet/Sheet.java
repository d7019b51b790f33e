package cornerbook.app.calibration.fleet;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What is written down at one visit: the truth, with the error of hand and gauge, as finely as the gauge shows it. */
final class Sheet {
    /** Of one reading of a groove. Common practice, no source. */
    static final double TREAD_SD_MM = 0.15;

    static final double OFFSET_SD_MM = 0.15;
    static final double DEEPER_THAN_NEW_MM = 0.45;
    static final double GROSS_SHARE = 0.05;
    static final double GROSS_SD_MM = 0.6;
    /** Of a pad, read through the wheel or beside the caliper. Common practice, no source. */
    private static final double PAD_SD_MM = 0.25;

    private static final double FREE = 0;
    private static final double TIGHT = 1;
    private static final double SEIZED = 2;

    private final String visitId;
    private final Scenario scenario;
    private final Dice dice;
    private final double offsetMm;
    private final List<Reading> readings = new ArrayList<>();

    Sheet(String visitId, Scenario scenario, Dice dice) {
        this.visitId = visitId;
        this.scenario = scenario;
        this.dice = dice;
        double drawn = dice.slips().nextGaussian();
        offsetMm = scenario.has(Effect.GAUGE_OFFSET) ? OFFSET_SD_MM * drawn : 0;
    }

    /** Reads all grooves of a set; the lowest that was read, mm. */
    double read(Tread tread) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int tyre = 0; tyre < Corner.values().length; tyre++) {
            for (var groove : Spot.values()) {
                double shown = shownMm(tread.depthMm(tyre, groove));
                // Nobody writes down a tread that is deeper than new: it is read again.
                while (shown
                        > Objects.requireNonNull(
                                        tread.set().wheels().get(tyre).tyre().newDepthMm())
                                + DEEPER_THAN_NEW_MM) {
                    shown = shownMm(tread.depthMm(tyre, groove));
                }
                lowest = Math.min(lowest, shown);
                add(
                        Measure.TREAD_DEPTH,
                        tread.cornerOf(tyre),
                        tread.set().wheels().get(tyre).tag(),
                        groove,
                        shown,
                        shown + " mm");
            }
        }
        return lowest;
    }

    private double shownMm(double depthMm) {
        double error = TREAD_SD_MM * dice.gauge().nextGaussian();
        boolean gross = dice.slips().nextDouble() < GROSS_SHARE;
        double slip = GROSS_SD_MM * dice.slips().nextGaussian();
        double off = offsetMm + (scenario.has(Effect.GROSS_ERRORS) && gross ? slip : error);
        return Math.max(0, Math.rint((depthMm + off) * 10) / 10);
    }

    /** Reads one pad; what was read, mm. */
    double read(Corner corner, Spot side, Pad pad) {
        double shown = Math.max(
                0, Math.rint((pad.thicknessMm() + PAD_SD_MM * dice.gauge().nextGaussian()) * 10) / 10);
        add(Measure.PAD_THICKNESS, corner, null, side, shown, shown + " mm");
        double movement = pad.isStuck() ? SEIZED : pad.isTight() ? TIGHT : FREE;
        add(Measure.PAD_MOVEMENT, corner, null, side, movement, Scale.MOVEMENT.wordOf(movement));
        return shown;
    }

    void padsReplaced(Corner corner) {
        add(Measure.PADS_REPLACED, corner, null, null, 1, "done");
    }

    void cleaned(Corner corner) {
        add(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner, null, null, FREE, "free");
    }

    void anotherDriver() {
        add(Measure.ANOTHER_DRIVER, null, null, null, 1, "yes");
    }

    List<Reading> readings() {
        return List.copyOf(readings);
    }

    private void add(
            Measure measure,
            @Nullable Corner corner,
            @Nullable String tag,
            @Nullable Spot spot,
            double value,
            String written) {
        readings.add(new Reading(
                "%s-%s".formatted(visitId, readings.size()), measure, corner, tag, spot, value, written, null, null));
    }
}
