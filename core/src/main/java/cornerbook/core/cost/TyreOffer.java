package cornerbook.core.cost;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.cost.CostSaid.Input;

/**
 * A tyre that may be bought.
 *
 * @param price of one, mounted, 0 to 1 000 000
 * @param newMm its tread when new, 4 to 25 mm
 * @param wearMmPer1000Km 0.01 to 5 mm in 1000 km
 */
public record TyreOffer(double price, double newMm, double wearMmPer1000Km, RollingResistance rolling) {
    public TyreOffer {
        check(Input.PRICE, price, 0, 1_000_000, "");
        check(Input.NEW_TREAD, newMm, 4, 25, "mm");
        check(Input.WEAR, wearMmPer1000Km, 0.01, 5, "mm/1000 km");
    }

    double lifeKm(double endMm) {
        return (newMm - endMm) / wearMmPer1000Km * 1000;
    }
}
