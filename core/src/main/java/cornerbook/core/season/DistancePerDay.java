package cornerbook.core.season;

/** Distance that the car covers in a day, km, averaged over the time looked at: mean and standard deviation. */
public record DistancePerDay(double meanKm, double sdKm) {
    public DistancePerDay {
        if (!(meanKm >= 0 && meanKm <= 2000 && sdKm >= 0 && sdKm <= 1000)) {
            throw new IllegalArgumentException(
                    "distance per day is %s ± %s km, expected 0 to 2000 ± 0 to 1000 km".formatted(meanKm, sdKm));
        }
    }
}
