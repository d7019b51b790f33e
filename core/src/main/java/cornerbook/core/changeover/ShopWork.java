package cornerbook.core.changeover;

import cornerbook.core.changeover.ChangeOverSaid.Input;
import cornerbook.core.quantity.Range;

/**
 * What a shop has to change over in a season, and what it can do.
 *
 * @param cars 1 to 100,000
 * @param carsPerDay on a working day, Monday to Friday; 1 to 1000
 */
public record ShopWork(int cars, int carsPerDay) {
    private static final int MOST_CARS = 100_000;
    private static final int MOST_PER_DAY = 1000;

    public ShopWork {
        Range.check(Input.CARS, cars, 1, MOST_CARS, "");
        Range.check(Input.CARS_PER_DAY, carsPerDay, 1, MOST_PER_DAY, "");
    }

    /** Working days that it takes. */
    int days() {
        return Math.ceilDiv(cars, carsPerDay);
    }
}
