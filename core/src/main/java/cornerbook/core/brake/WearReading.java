package cornerbook.core.brake;

/** A thickness that was measured after a distance since the part was new. */
public record WearReading(double run1000Km, double thicknessMm) {
    public WearReading {
        Checks.range("distance since new", run1000Km, 0, 2000, " thousand km");
        Checks.range("thickness", thicknessMm, 0, 60, " mm");
    }
}
