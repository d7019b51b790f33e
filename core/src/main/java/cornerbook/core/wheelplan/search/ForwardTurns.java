package cornerbook.core.wheelplan.search;

import java.util.Optional;

/**
 * Drives forward in turns that may look at more states each, aiming first at nearly what nothing gets beyond and then lower:
 * the nearer the aim is to the longest distance, the fewer states may still reach it.
 */
final class ForwardTurns {
    private static final int DRIVEN_TO = 500;
    /** Aims of a turn between the bound and the distance that is sure; any number finds the same plan. */
    private static final int AIMS = 4;

    private final SetNumbers numbers;
    /** Where the search may end: a distance that is sure to be reached, or the floor. */
    private double sureThousandKm = -1;

    /** Nothing that keeps the rules gets here, as far as driving has shown. */
    private double missedThousandKm = Double.POSITIVE_INFINITY;

    /**
     * Turns down to a floor.
     *
     * @param floorThousandKm what is no longer is of no interest; 0 for any
     */
    ForwardTurns(SetNumbers numbers, double floorThousandKm) {
        this.numbers = numbers;
        if (floorThousandKm > 0) {
            sureThousandKm = floorThousandKm;
        }
    }

    /**
     * All that reaches the longest distance, nothing when that is below the floor; empty when too many states would have to be looked at.
     *
     * @param boundThousandKm which no sequence within the rules exceeds
     */
    Optional<ForwardSearch> within(int limit, double boundThousandKm) {
        if (sureThousandKm < 0) {
            sureThousandKm = ForwardSearch.reachable(numbers);
        }
        double bound = Math.max(sureThousandKm, Math.min(missedThousandKm, boundThousandKm));
        for (int aim = 1; aim <= AIMS; aim++) {
            double thousandKm = bound - (bound - sureThousandKm) * aim / AIMS;
            var driven = ForwardSearch.within(numbers, thousandKm - PlanSearch.SAME_THOUSAND_KM, DRIVEN_TO * limit);
            if (driven.isEmpty() || aim == AIMS || driven.get().longestThousandKm() >= thousandKm) {
                return driven;
            }
            missedThousandKm = thousandKm;
        }
        return Optional.empty();
    }
}
