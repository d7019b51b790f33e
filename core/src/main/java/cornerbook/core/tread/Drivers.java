package cornerbook.core.tread;

import java.util.List;

/**
 * Who drove a car in which season, as far as a shop was told. A car's factor is F = 1 + b + d, b the car's own part and d its
 * driver's, b ~ N(0, (1 − {@link #SHARE}) ω_u²), d ~ N(0, {@link #SHARE} ω_u²) anew for each driver: whoever comes is as far from
 * what is usual as whoever went, and what the car itself does to its tyres stays. A change is told at the visit after it, so that
 * in its season both drove, the earlier one for a part U of the distance of which nothing is known, U ~ uniform(0, 1):
 *
 * <pre>
 *   p_2k = d_k,   p_2k+1 = U d_k + (1 − U) d_k+1
 *   Cov(p, p) in units of {@link #SHARE} ω_u²:  1 a driver, 2/3 a season of two, 1/2 a driver and a season that he drove in
 *   part, 1/4 two such seasons of the same driver                                                      (1)
 * </pre>
 *
 * The model's rates are those of who drives now; in an earlier season they are higher by m_c g, g = p − p_now.
 *
 * @param changes numbers of the seasons in which another driver came, in ascending order
 */
public record Drivers(List<Integer> changes) {
    /** One driver, as far as anybody knows. */
    public static final Drivers ONE = new Drivers(List.of());

    /** Of the variance between cars that are alike: half of it is the driver's. Common practice, no source. */
    static final double SHARE = 0.5;

    private static final double SEASON_OF_TWO = 2.0 / 3;
    private static final double IN_PART = 1.0 / 2;
    private static final double BOTH_IN_PART = 1.0 / 4;

    public Drivers {
        changes = List.copyOf(changes);
    }

    /** How many drivers and seasons of two there were before who drives now. */
    int earlier() {
        return 2 * changes.size();
    }

    /** The place among them of who drove in a season; {@link #earlier} while it is who drives now. */
    int of(int season) {
        int place = 0;
        for (int change : changes) {
            place += season > change ? 2 : season == change ? 1 : 0;
        }
        return place;
    }

    /** Covariance of what two of them add to the factor against who drives now, in units of a driver's variance. */
    double covariance(int place, int other) {
        return parts(place, other) - parts(place, earlier()) - parts(other, earlier()) + 1;
    }

    /** Covariance of what one of them adds against who drives now, and the factor now, in units of a driver's variance. */
    double withFactor(int place) {
        return parts(place, earlier()) - 1;
    }

    /** Equation (1). */
    private static double parts(int place, int other) {
        boolean ofTwo = place % 2 == 1;
        return switch (Math.abs(place - other)) {
            case 0 -> ofTwo ? SEASON_OF_TWO : 1;
            case 1 -> IN_PART;
            case 2 -> ofTwo ? BOTH_IN_PART : 0;
            default -> 0;
        };
    }
}
