package cornerbook.core.cost;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.cost.CostSaid.Input;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;

/**
 * How tyres are used.
 *
 * @param carriedKg what they carry together, 100 to 10 000 kg
 * @param tyres how many are bought, 1 to 8
 * @param endMm tread at which they are replaced, 1 to 8 mm
 */
public record TyreUse(double carriedKg, int tyres, double endMm) {
    /** Least tread by law in many places; the limits file has each with its source. */
    public static final double USUAL_END_MM = 1.6;

    public TyreUse {
        check(Input.CARRIED, carriedKg, 100, 10_000, "kg");
        check(Input.TYRES, tyres, 1, 8, "");
        check(Input.END_TREAD, endMm, 1, 8, "mm");
    }

    /**
     * Refuses a tyre that would be replaced when new.
     *
     * @throws IllegalArgumentException with one sentence
     */
    public void checkWears(TyreOffer offer) {
        if (offer.newMm() <= endMm) {
            throw new Refused(new CostSaid.NothingToWear(Amount.exact(offer.newMm(), "mm"), Amount.exact(endMm, "mm")));
        }
    }
}
