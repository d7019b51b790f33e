package cornerbook.core.wheelplan.search;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Drives forward in turns that may look at more states each, aiming at a distance that is sure to be reached: what few states
 * of each season come to is mostly near the longest.
 */
final class ForwardTurns {
    private static final int DRIVEN_TO = 1000;

    private final SetNumbers numbers;
    private final double floorThousandKm;
    /** Not before the first turn: what is sure to be reached is looked for by driving, too. */
    private @Nullable ForwardSearch driving;

    /**
     * Turns down to a floor.
     *
     * @param floorThousandKm what is no longer is of no interest; 0 for any
     */
    ForwardTurns(SetNumbers numbers, double floorThousandKm) {
        this.numbers = numbers;
        this.floorThousandKm = floorThousandKm;
    }

    /**
     * All that reaches the longest distance, nothing when that is below the floor; empty when too many states would have to be
     * looked at.
     */
    Optional<ForwardSearch> within(int limit) {
        if (driving == null) {
            driving = ForwardSearch.aimingAt(numbers, Math.max(floorThousandKm, ForwardSearch.reachable(numbers)));
        }
        return driving.run(DRIVEN_TO * limit) ? Optional.of(driving) : Optional.empty();
    }
}
