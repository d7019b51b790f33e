package cornerbook.core.lift;

import cornerbook.core.quantity.Range;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A hoist that lifts a car by arms with pads; null for what the shop has not measured or read.
 *
 * @param armCount 2 to 8; the loads are computed for four
 * @param rating by its plates
 * @param adapterHeightsMm what each adapter adds to the pad, 0 to 500 mm
 * @param adapterRatingKg of one adapter, the weakest of them, 200 to 5000 kg
 * @param blockHeightsMm blocks that the shop puts under all four wheels, 0 to 300 mm
 * @param driveOverMm height of what a car drives over to stand on it, base plate or lowered arms, 5 to 300 mm
 * @param ceilingMm floor to the lowest thing above it, ceiling, lamp or bar, 1800 to 10000 mm
 */
public record Hoist(
        int armCount,
        HoistRating rating,
        List<Double> adapterHeightsMm,
        @Nullable Double adapterRatingKg,
        List<Double> blockHeightsMm,
        @Nullable Double driveOverMm,
        @Nullable Double ceilingMm) {
    public Hoist {
        Range.check(LiftSaid.Part.ARM_COUNT, armCount, 2, 8, "");
        adapterHeightsMm = List.copyOf(adapterHeightsMm);
        blockHeightsMm = List.copyOf(blockHeightsMm);
        adapterHeightsMm.forEach(heightMm -> Range.check(LiftSaid.Part.ADAPTER_HEIGHT, heightMm, 0, 500, "mm"));
        blockHeightsMm.forEach(heightMm -> Range.check(LiftSaid.Part.BLOCK_HEIGHT, heightMm, 0, 300, "mm"));
        Range.checkKnown(LiftSaid.Part.ADAPTER_RATING, adapterRatingKg, 200, 5000, "kg");
        Range.checkKnown(LiftSaid.Part.DRIVE_OVER_HEIGHT, driveOverMm, 5, 300, "mm");
        Range.checkKnown(LiftSaid.Part.CEILING, ceilingMm, 1800, 10000, "mm");
    }

    /** A hoist of which no more was measured. */
    public Hoist(int armCount, HoistRating rating, List<Double> adapterHeightsMm, List<Double> blockHeightsMm) {
        this(armCount, rating, adapterHeightsMm, null, blockHeightsMm, null, null);
    }

    /** What the lowest adapter adds; 0 for a hoist without any. */
    public double lowestAdapterMm() {
        return adapterHeightsMm.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    /** The highest blocks; 0 for a shop without any. */
    public double highestBlocksMm() {
        return blockHeightsMm.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
}
