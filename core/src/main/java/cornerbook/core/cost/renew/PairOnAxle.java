package cornerbook.core.cost.renew;

import cornerbook.core.corner.Axle;
import cornerbook.core.cost.renew.RenewSaid.Input;
import cornerbook.core.quantity.Range;

/**
 * The two tyres of an axle.
 *
 * @param depthMm of their least groove, 0 to 25 mm
 * @param wearMmPer1000Km on this axle, of whichever tyres run there; 0.01 to 5 mm in 1000 km
 */
public record PairOnAxle(Axle axle, double depthMm, double wearMmPer1000Km) {
    public PairOnAxle {
        boolean front = axle == Axle.FRONT;
        Range.check(front ? Input.FRONT_DEPTH : Input.REAR_DEPTH, depthMm, 0, 25, "mm");
        Range.check(front ? Input.FRONT_WEAR : Input.REAR_WEAR, wearMmPer1000Km, 0.01, 5, "mm/1000 km");
    }
}
