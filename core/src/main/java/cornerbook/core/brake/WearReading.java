package cornerbook.core.brake;

import cornerbook.core.quantity.Range;

/** A thickness that was measured after a distance since the part was new. */
public record WearReading(double run1000Km, double thicknessMm) {
    public WearReading {
        Range.check("distance since new", run1000Km, 0, 2000, "thousand km");
        Range.check("thickness", thicknessMm, 0, 60, "mm");
    }
}
