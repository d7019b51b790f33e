package cornerbook.core.brake.burnish;

import java.util.List;

/**
 * A burnish drive for the disc of one axle.
 *
 * @param stops how many
 * @param spacingS from the end of one stop to the start of the next, at the speed before the stop
 * @param energyPerStopJ heat into this disc
 * @param risePerStopK when nothing cools
 * @param peaksC disc temperature at the end of each stop
 * @param coolDownS driving at the same speed without braking until the disc is within 30 K of the air
 * @param warning what stands in the way, or that nothing does
 */
public record BurnishPlan(
        int stops,
        double spacingS,
        double energyPerStopJ,
        double risePerStopK,
        List<Double> peaksC,
        double coolDownS,
        Warning warning) {
    /** What a plan can run into. */
    public enum Warning {
        NONE,
        /** However many stops, the disc stays below the band: harder or faster stops are needed, or less regeneration. */
        STAYS_TOO_COLD,
        /** Even with the longest spacing the disc gets hotter than the band: milder or fewer stops are needed. */
        GETS_TOO_HOT,
        /** One of the stops exceeds the limit: do not drive this plan. */
        EXCEEDS_THE_LIMIT
    }

    public BurnishPlan {
        peaksC = List.copyOf(peaksC);
    }
}
