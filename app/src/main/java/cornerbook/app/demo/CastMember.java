package cornerbook.app.demo;

import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.Map;

/**
 * One car of the cast, as it was when it came to the shop for the first time: a row of the table of the cast.
 *
 * @param sets summer and winter set, or one all-season set
 * @param odometerKm at the first visit
 * @param kmPerDay mean distance per day
 * @param wearMmPer1000Km wear of the tread at each corner
 * @param frontPadMm friction material in front at the first visit
 */
record CastMember(
        int number,
        Vehicle vehicle,
        Customer customer,
        List<WheelSet> sets,
        double odometerKm,
        double kmPerDay,
        Map<Corner, Double> wearMmPer1000Km,
        double frontPadMm,
        Trouble trouble,
        LatestVisit latestVisit) {
    CastMember {
        sets = List.copyOf(sets);
        wearMmPer1000Km = Map.copyOf(wearMmPer1000Km);
    }

    /** What is wrong with the car. */
    enum Trouble {
        NONE,
        SEIZED_PAD,
        UNEVEN_SHOULDER,
        TIRED_BATTERY,
        SLOW_LEAK,
        WET_BRAKE_FLUID
    }

    /** How far the visit of the present season has come. */
    enum LatestVisit {
        /** The car has not come yet. */
        AWAITED,
        /** Today: the car is on the hoist, pressures and the first two wheels are read. */
        ARRIVED,
        /** Today: brakes and the set coming off are read, nothing is fitted yet. */
        MEASURED,
        /** Some days ago, all done. */
        FINISHED
    }
}
