package cornerbook.core.tread;

import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.List;

/**
 * How far one tyre has run since it was new to the book: season by season, at which corner.
 *
 * @param legs in the order in which they were run
 */
public record CornerDistances(List<Leg> legs) {
    /** A tyre that has not run yet. */
    public static final CornerDistances NONE = new CornerDistances(List.of());

    public CornerDistances {
        legs = List.copyOf(legs);
    }

    /**
     * A season at one corner.
     *
     * @param season number of the time between two visits, the same for all tyres that ran in it
     * @param thousandKm 0 or more
     */
    public record Leg(int season, Corner corner, double thousandKm) {
        public Leg {
            if (!(thousandKm >= 0)) {
                throw new IllegalArgumentException(
                        "distance run is %s thousand km, expected none below 0".formatted(thousandKm));
            }
        }
    }

    public double at(Corner corner) {
        double sum = 0;
        for (var leg : legs) {
            sum += leg.corner == corner ? leg.thousandKm : 0;
        }
        return sum;
    }

    /** The same with one more season. */
    public CornerDistances plus(int season, Corner corner, double thousandKm) {
        var more = new ArrayList<>(legs);
        more.add(new Leg(season, corner, thousandKm));
        return new CornerDistances(more);
    }

    /** What of it was run after a season. */
    CornerDistances after(int season) {
        return new CornerDistances(
                legs.stream().filter(leg -> leg.season() > season).toList());
    }

    /** Over all corners, in thousands of km. */
    public double total() {
        double sum = 0;
        for (var leg : legs) {
            sum += leg.thousandKm;
        }
        return sum;
    }
}
