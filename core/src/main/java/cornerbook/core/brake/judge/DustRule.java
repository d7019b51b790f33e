package cornerbook.core.brake.judge;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How much brake work the simple wet method may do in a week. Source: 29 CFR 1910.1001 App. F, a shop with no more than five pairs of
 * brakes a week may wet the parts and wipe the dust up; beyond, an enclosure with a vacuum, a low-pressure wet wash or an equivalent.
 */
public final class DustRule {
    /** Pairs of brakes, one pair to an axle, in a calendar week. */
    public static final int MOST_PAIRS_A_WEEK = 5;

    private DustRule() {}

    /** The measures that tell of work at a brake. */
    public static Set<Measure> measures() {
        var measures = EnumSet.copyOf(BrakeWork.WORK);
        measures.add(Measure.PAD_MOVEMENT_AFTER_SERVICE);
        return measures;
    }

    /** Axles whose brakes were worked on at one visit, by its readings. */
    public static int pairsServiced(List<Reading> readings) {
        var current = new StandingReadings(readings);
        return (int) Arrays.stream(Axle.values())
                .filter(axle -> Arrays.stream(Corner.values())
                        .anyMatch(corner -> corner.axle() == axle && BrakeWork.wasServiced(corner, current)))
                .count();
    }
}
