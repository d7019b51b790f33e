package cornerbook.core.wheelplan;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What a plan is asked for: one wheel set over its own coming seasons. Another set of the same car wears only in its own
 * seasons and is planned on its own.
 *
 * @param wheels the four wheels, or five of which the last lies as the spare now: it wears at no corner until it changes places
 * @param ratesMmPer1000Km wear rate by groove at each corner, grooves in the order of {@link WheelState#depthsMm}
 * @param sizeAt tyre size that each axle takes; an axle that is not named takes any
 * @param limitMm depth that ends a groove's life
 * @param seasonsThousandKm distance of each season, 1 to 10 of them, 1 to 8 with five wheels; thousand km
 */
public record PlanRequest(
        List<WheelState> wheels,
        Map<Corner, List<Double>> ratesMmPer1000Km,
        Map<Axle, String> sizeAt,
        double limitMm,
        List<Double> seasonsThousandKm,
        PlanRules rules) {
    /** Most seasons that are planned ahead. */
    public static final int MOST_SEASONS = 10;
    /** The same with five wheels. */
    public static final int MOST_SEASONS_OF_FIVE = 8;

    private static final int CORNERS = Corner.values().length;

    public PlanRequest {
        wheels = List.copyOf(wheels);
        ratesMmPer1000Km = Map.copyOf(ratesMmPer1000Km);
        sizeAt = Map.copyOf(sizeAt);
        seasonsThousandKm = List.copyOf(seasonsThousandKm);
        if (wheels.size() != CORNERS && wheels.size() != CORNERS + 1) {
            throw new IllegalArgumentException(wheels.size() + " wheels, expected 4 or 5");
        }
        int mostSeasons = wheels.size() == CORNERS ? MOST_SEASONS : MOST_SEASONS_OF_FIVE;
        if (seasonsThousandKm.isEmpty() || seasonsThousandKm.size() > mostSeasons) {
            throw new IllegalArgumentException(seasonsThousandKm.size() + " seasons, expected 1 to " + mostSeasons);
        }
        for (double season : seasonsThousandKm) {
            positive("distance of a season", season, "thousand km");
        }
        int grooves = wheels.getFirst().depthsMm().size();
        for (var wheel : wheels) {
            sameGrooves("wheel " + wheel.tag(), wheel.depthsMm(), grooves);
        }
        for (var corner : Corner.values()) {
            var rates = ratesMmPer1000Km.getOrDefault(corner, List.of());
            sameGrooves("rates at " + corner, rates, grooves);
            rates.forEach(rate -> positive("wear rate at " + corner, rate, "mm per 1000 km"));
        }
    }

    /** Wear rate at a corner, mm per 1000 km. */
    public double rate(Corner corner, int groove) {
        return Objects.requireNonNull(ratesMmPer1000Km.get(corner)).get(groove);
    }

    /** The same with other rules. */
    public PlanRequest withRules(PlanRules other) {
        return new PlanRequest(wheels, ratesMmPer1000Km, sizeAt, limitMm, seasonsThousandKm, other);
    }

    /** The same with only the first seasons. */
    public PlanRequest withSeasons(int seasons) {
        return new PlanRequest(wheels, ratesMmPer1000Km, sizeAt, limitMm, seasonsThousandKm.subList(0, seasons), rules);
    }

    private static void sameGrooves(String what, List<Double> values, int grooves) {
        if (values.size() != grooves) {
            throw new IllegalArgumentException("%s: %s grooves, expected %s".formatted(what, values.size(), grooves));
        }
    }

    private static void positive(String what, double value, String unit) {
        if (!(value > 0 && value < 1000)) {
            throw new IllegalArgumentException(
                    "%s is %s %s, expected above 0 and below 1000".formatted(what, value, unit));
        }
    }
}
