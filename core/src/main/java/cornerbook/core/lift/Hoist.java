package cornerbook.core.lift;

import cornerbook.core.quantity.Range;
import java.util.List;

/**
 * A hoist that lifts a car by arms with pads.
 *
 * @param armCount 2 to 8; the loads are computed for four
 * @param rating by its plates
 * @param adapterHeightsMm what each adapter adds to the pad, 0 to 500 mm
 * @param blockHeightsMm blocks that the shop puts under all four wheels, 0 to 300 mm
 */
public record Hoist(int armCount, HoistRating rating, List<Double> adapterHeightsMm, List<Double> blockHeightsMm) {
    public Hoist {
        Range.check(LiftSaid.Part.ARM_COUNT, armCount, 2, 8, "");
        adapterHeightsMm = List.copyOf(adapterHeightsMm);
        blockHeightsMm = List.copyOf(blockHeightsMm);
        adapterHeightsMm.forEach(heightMm -> Range.check(LiftSaid.Part.ADAPTER_HEIGHT, heightMm, 0, 500, "mm"));
        blockHeightsMm.forEach(heightMm -> Range.check(LiftSaid.Part.BLOCK_HEIGHT, heightMm, 0, 300, "mm"));
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
