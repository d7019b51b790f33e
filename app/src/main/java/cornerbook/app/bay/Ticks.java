package cornerbook.app.bay;

import cornerbook.app.book.record.LeavingCheck;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Names of the steps that are ticked: those of the work that no reading records. */
final class Ticks {
    static final String RECEIVED = "RECEIVED";
    static final String ROCKED = "ROCKED";
    static final String BURNISHED = "BURNISHED";

    private Ticks() {}

    /** Every tick that a car can have. */
    static Set<String> of(Vehicle vehicle) {
        var ticks = new HashSet<>(List.of(RECEIVED, ROCKED, LeavingCheck.SECOND_CHECK, BURNISHED));
        for (var corner : Corner.values()) {
            for (int number = 1; number <= vehicle.fastener().count(); number++) {
                ticks.add(WorkTick.FASTENER + corner + "." + number);
            }
        }
        return Set.copyOf(ticks);
    }
}
