package cornerbook.core.brake.interval;

import cornerbook.core.brake.interval.IntervalSaid.Input;
import cornerbook.core.quantity.Range;

/**
 * What is paid, in any one coin.
 *
 * @param service guides of the car cleaned and lubricated when it is planned, 1 to 1 000 000
 * @param seized what a pad that seized before costs beside it: pads, perhaps a disc, a visit more; 0 to 1 000 000
 */
public record ServicePrices(double service, double seized) {
    public ServicePrices {
        Range.check(Input.SERVICE_PRICE, service, 1, 1_000_000, "");
        Range.check(Input.SEIZED_PRICE, seized, 0, 1_000_000, "");
    }
}
