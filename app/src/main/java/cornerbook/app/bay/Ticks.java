package cornerbook.app.bay;

import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Vehicle;
import cornerbook.core.corner.Corner;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Names of the steps that are ticked: those of the work that no reading records. */
final class Ticks {
    private Ticks() {}

    /** Every tick that a car can have. */
    static Set<String> of(Vehicle vehicle) {
        var ticks =
                new HashSet<>(List.of(WorkTick.RECEIVED, WorkTick.ROCKED, WorkTick.SECOND_CHECK, WorkTick.BURNISHED));
        for (var corner : Corner.values()) {
            for (int number = 1; number <= vehicle.fastenerCount(); number++) {
                ticks.add(WorkTick.FASTENER + corner + "." + number);
            }
        }
        return Set.copyOf(ticks);
    }
}
