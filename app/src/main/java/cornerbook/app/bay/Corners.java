package cornerbook.app.bay;

import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Where wheels ran. */
final class Corners {
    private Corners() {}

    /** The corner that a wheel last left the shop on, or came on when leaving was not recorded; empty when it never ran. */
    static Optional<Corner> last(List<Visit> visits, String tag) {
        return visits.reversed().stream()
                .flatMap(visit -> Stream.of(visit.leftOn(), visit.arrivedOn()))
                .flatMap(wheelAt -> wheelAt.entrySet().stream())
                .filter(entry -> entry.getValue().equals(tag))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
