package cornerbook.core.brake;

import cornerbook.core.quantity.Range;

/**
 * A drum with its two shoes, a part for each line of the vehicle manufacturer's data.
 *
 * @param drumNewMm inside diameter when new, 100 to 500 mm
 * @param drumDiscardMm inside diameter beyond which the drum is discarded, as it is marked on the drum; 0.1 to 10 mm above new
 * @param liningNewMm friction material of a new shoe, 1 to 20 mm
 * @param liningMinimumMm friction material left at which the shoes are to be replaced
 */
public record DrumBrake(double drumNewMm, double drumDiscardMm, double liningNewMm, double liningMinimumMm)
        implements FrictionBrake {
    private static final double LEAST_WEAR_MM = 0.1;
    private static final double MOST_WEAR_MM = 10;

    public DrumBrake {
        Range.check(BrakePart.DRUM_NEW, drumNewMm, 100, 500, "mm");
        Range.check(BrakePart.DRUM_DISCARD, drumDiscardMm, drumNewMm + LEAST_WEAR_MM, drumNewMm + MOST_WEAR_MM, "mm");
        Range.check(BrakePart.LINING_NEW, liningNewMm, 1, 20, "mm");
        Range.check(BrakePart.LINING_MINIMUM, liningMinimumMm, 0, liningNewMm, "mm");
    }
}
