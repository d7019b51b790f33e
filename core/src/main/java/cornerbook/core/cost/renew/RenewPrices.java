package cornerbook.core.cost.renew;

import cornerbook.core.cost.renew.RenewSaid.Input;
import cornerbook.core.quantity.Range;

/**
 * What is paid, in any one coin.
 *
 * @param tyre one tyre, mounted and balanced, 0 to 1 000 000
 * @param tyreOfFour the same where four are bought together
 * @param visit a visit that would not be made otherwise, with what it costs the customer; 0 to 1 000 000
 */
public record RenewPrices(double tyre, double tyreOfFour, double visit) {
    public RenewPrices {
        Range.check(Input.PRICE, tyre, 0, 1_000_000, "");
        Range.check(Input.PRICE_OF_FOUR, tyreOfFour, 0, 1_000_000, "");
        Range.check(Input.VISIT, visit, 0, 1_000_000, "");
    }
}
