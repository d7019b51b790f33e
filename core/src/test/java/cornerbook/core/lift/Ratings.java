package cornerbook.core.lift;

/** Plates of invented hoists whose arms are all alike. */
public final class Ratings {
    private Ratings() {}

    public static HoistRating rated(double armKg, double hoistKg) {
        return new HoistRating(hoistKg, armKg, armKg);
    }
}
