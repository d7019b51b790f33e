package cornerbook.core.car;

import cornerbook.core.quantity.Range;
import cornerbook.core.tyre.TyreSize;
import org.jspecify.annotations.Nullable;

/**
 * One tyre as its sidewall says; null for what nobody has read there yet.
 *
 * @param tin tyre identification number or its date code, or null when it was not read
 * @param newDepthMm tread depth when it was new to the book: the design depth, or the first estimate of a used tyre
 */
public record Tyre(
        @Nullable String model,
        String size,
        @Nullable Integer loadIndex,
        @Nullable String speedSymbol,
        @Nullable String tin,
        @Nullable Boolean directional,
        @Nullable Boolean asymmetric,
        @Nullable Double newDepthMm) {
    /** Depth of a usual car tyre when it is new. Common practice, no source. */
    public static final double USUAL_NEW_DEPTH_MM = 8;

    public Tyre {
        Range.checkKnown(CarSaid.CarNumber.DEPTH_WHEN_NEW, newDepthMm, 2, 20, "mm");
    }

    /** A tyre of which nothing but its size is known. */
    public static Tyre ofSize(String size) {
        return new Tyre(null, size, null, null, null, null, null, null);
    }

    /** Whether it must not change sides, as far as anybody knows. */
    public boolean mayBeDirectional() {
        return !Boolean.FALSE.equals(directional);
    }

    /** Its depth when new: as stated, or while nobody said that of a usual one, from which only the mark is filled. */
    public double newDepthOrUsualMm() {
        return newDepthMm == null ? USUAL_NEW_DEPTH_MM : newDepthMm;
    }

    /** Whether it is a spare for the way to the next shop by its size; one whose size cannot be read is taken for none. */
    public boolean isTemporarySpare() {
        return TyreSize.find(size).filter(TyreSize::temporary).isPresent();
    }
}
