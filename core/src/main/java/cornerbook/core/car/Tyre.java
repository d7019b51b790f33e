package cornerbook.core.car;

import cornerbook.core.quantity.Range;
import cornerbook.core.tyre.TyreSize;
import org.jspecify.annotations.Nullable;

/**
 * One tyre as its sidewall says.
 *
 * @param tin tyre identification number or its date code, or null when it was not read
 * @param newDepthMm tread depth when it was new to the book: the design depth, or the first estimate of a used tyre
 */
public record Tyre(
        String model,
        String size,
        int loadIndex,
        String speedSymbol,
        @Nullable String tin,
        boolean directional,
        boolean asymmetric,
        double newDepthMm) {
    public Tyre {
        Range.check(CarSaid.CarNumber.DEPTH_WHEN_NEW, newDepthMm, 2, 20, "mm");
    }

    /** Whether it is a spare for the way to the next shop by its size; one whose size cannot be read is taken for none. */
    public boolean isTemporarySpare() {
        return TyreSize.find(size).filter(TyreSize::temporary).isPresent();
    }
}
