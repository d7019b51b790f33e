package cornerbook.app.calibration;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;

/** What is off, and what follows from it. */
interface CalibrationSaid extends Said {
    /**
     * Too few or too many readings lie in their bands.
     *
     * @param narrow whether the bands are too narrow
     */
    record BandsOff(Amount share, boolean narrow) implements CalibrationSaid {}

    /**
     * A chance that a set holds comes true more or less often than it says.
     *
     * @param low whether it says too little
     * @param points by how many at most
     */
    record ChancesOff(boolean low, Amount points, Amount from, Amount until) implements CalibrationSaid {}

    /**
     * A day on which nine in ten should hold.
     *
     * @param first of sets whose wear nobody has seen yet
     * @param late whether it comes too late
     */
    record HorizonsOff(boolean first, Amount share, boolean late) implements CalibrationSaid {}

    record HoldsFailed(Amount share) implements CalibrationSaid {}

    record UnlikelyHeld(Amount share) implements CalibrationSaid {}

    record SpentHeld(Amount share) implements CalibrationSaid {}

    /** As {@link BandsOff}, of pads. */
    record PadsOff(Amount share, boolean narrow) implements CalibrationSaid {}

    /** As {@link ChancesOff}, of a pad that seizes. */
    record SeizingOff(boolean low, Amount points, Amount from, Amount until) implements CalibrationSaid {}

    /** As {@link BandsOff}, of the distance until the next visit. */
    record DistancesOff(Amount share, boolean narrow) implements CalibrationSaid {}

    record UnevenWear(Amount share) implements CalibrationSaid {}
}
