package cornerbook.core.brake.burnish;

import cornerbook.core.quantity.Range;

/**
 * What a burnish drive is to reach.
 *
 * @param airC temperature of the air, and of the disc before the first stop
 * @param lowestC peak at which the pads begin to bed in
 * @param highestC peak that the drive is to stay at or below
 * @param limitC temperature that no stop may exceed
 * @param fewestStops stops to make in any case
 * @param shortestSpacingS shortest time from the end of one stop to the start of the next
 * @param longestSpacingS longest that a person would wait
 */
public record BurnishTarget(
        double airC,
        double lowestC,
        double highestC,
        double limitC,
        int fewestStops,
        double shortestSpacingS,
        double longestSpacingS) {
    public BurnishTarget {
        Range.check(BurnishSaid.Part.AIR_TEMPERATURE, airC, -50, 50, "°C");
        Range.check("lowest peak", lowestC, airC + 1, 600, "°C");
        Range.check("highest peak", highestC, lowestC, 700, "°C");
        Range.check(BurnishSaid.Part.LIMIT, limitC, highestC, 800, "°C");
        Range.check("fewest stops", fewestStops, 1, 200, "");
        Range.check("shortest spacing", shortestSpacingS, 1, 600, "s");
        Range.check("longest spacing", longestSpacingS, shortestSpacingS, 3600, "s");
    }

    /**
     * Eight stops or more with 15 to 30 s between. Source of stops and spacing: a parts maker's service bulletin for everyday
     * cars (8 to 10 moderate stops from 65 to 15 km/h, 15 to 30 s between, then cooling for 15 minutes). The band of 100 to 200 °C
     * and the limit of 300 °C: common practice, no source.
     */
    public static BurnishTarget everyday(double airC) {
        return new BurnishTarget(airC, 100, 200, 300, 8, 15, 30);
    }

    /** The same with the disc's own limit; the band gives way to it. */
    public BurnishTarget withLimit(double ownLimitC) {
        return new BurnishTarget(
                airC,
                Math.min(lowestC, ownLimitC),
                Math.min(highestC, ownLimitC),
                ownLimitC,
                fewestStops,
                shortestSpacingS,
                longestSpacingS);
    }
}
