package cornerbook.core.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * What new tyres come to in years and for each distance:
 *
 * <pre>
 *   life L = (d₀ − d₁) / w           d₀ new, d₁ replaced, w worn for each km   (1)
 *   years = L / k                    k driven on them in a year               (2)
 *   cost for each km = price / L                                              (3)
 * </pre>
 *
 * As in docs/methods/cost.md, without the energy that rolling takes. Assumes that new tyres wear as those of today did on this car.
 *
 * @param lifeKm (1)
 * @param years (2)
 * @param per100Km (3) for 100 km, to the smallest coin
 */
public record TyreWorth(double lifeKm, double years, Money per100Km) {
    private static final double HUNDRED_KM = 100;

    /**
     * Of tyres that are bought together.
     *
     * @param price of all of them
     * @param newMm tread when new, above {@code endMm}
     * @param endMm tread at which they are replaced
     * @param wearMmPer1000Km above 0
     * @param kmPerYear driven on them, above 0
     */
    public static TyreWorth of(Money price, double newMm, double endMm, double wearMmPer1000Km, double kmPerYear) {
        if (!(newMm > endMm && wearMmPer1000Km > 0 && kmPerYear > 0)) {
            throw new IllegalArgumentException("tread %s mm to %s mm, wear %s mm/1000 km, %s km a year, expected a tread to wear"
                    .formatted(newMm, endMm, wearMmPer1000Km, kmPerYear));
        }
        double lifeKm = (newMm - endMm) / wearMmPer1000Km * 1000;
        return new TyreWorth(
                lifeKm,
                lifeKm / kmPerYear,
                price.multipliedBy(BigDecimal.valueOf(HUNDRED_KM / lifeKm), RoundingMode.HALF_UP));
    }
}
