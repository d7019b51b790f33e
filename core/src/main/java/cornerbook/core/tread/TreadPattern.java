package cornerbook.core.tread;

import cornerbook.core.numeric.Estimate;
import cornerbook.core.numeric.NormalDistribution;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Why a tyre wears unevenly across, as chances. With x = (inner − centre, outer − centre), mm,
 *
 * <pre>
 *   even:     x ~ N(0, S),   S from the depths' own errors and a natural spread of NATURAL × worn in each groove    (1)
 *   a cause:  x ~ N(b d, S), b ≥ 0 half-normal with s.d. τ = SIZE × worn, at least LEAST_SIZE_MM                    (2)
 *   p(x | cause) = 2 N(x; 0, S + τ² d dᵀ) Φ(µ_b / σ_b),  µ_b = τ² dᵀ (S + τ² d dᵀ)⁻¹ x,
 *   σ_b² = τ² − τ⁴ dᵀ (S + τ² d dᵀ)⁻¹ d                                                                             (3)
 * </pre>
 *
 * and Bayes' rule. A cause is named only where none of the three readings need be far off for it: each groove in turn may be
 * one of {@link DoubtfulReadings}, its error as many times as great, and the densities are those of the mixture. Directions d: both shoulders low (−1, −1), centre low (1, 1), inner shoulder low (−1, 0), outer shoulder
 * low (0, −1). Which cause shows as which pattern, how often, and all four constants: common practice, no source. The false
 * alarms on cars without fault are counted by a test.
 */
public final class TreadPattern {
    /** What the pattern points to. */
    public enum Cause {
        EVEN(0, 0),
        UNDER_INFLATION(-1, -1),
        OVER_INFLATION(1, 1),
        INNER_ALIGNMENT(-1, 0),
        OUTER_ALIGNMENT(0, -1);

        private final double inner;
        private final double outer;

        Cause(double inner, double outer) {
            this.inner = inner;
            this.outer = outer;
        }
    }

    static final double NATURAL = 0.05;
    static final double SIZE = 0.35;
    static final double LEAST_SIZE_MM = 0.3;
    static final double CHANCE_EVEN = 0.9;

    /** A cause is named from this chance. Common practice, no source. */
    public static final double NAMED_FROM = 0.9;

    /** ... and from this difference between the deepest and the shallowest groove. Common practice, no source. */
    public static final double UNEVEN_MM = 0.7;

    private TreadPattern() {}

    /** The cause that is likely enough to be named, with its chance. */
    public record Named(Cause cause, double chance) {}

    /** Names the cause when one is likely enough and the tyre uneven enough to matter. */
    public static Optional<Named> name(Estimate inner, Estimate centre, Estimate outer, double wornMm) {
        double deepest = Math.max(inner.mean(), Math.max(centre.mean(), outer.mean()));
        double shallowest = Math.min(inner.mean(), Math.min(centre.mean(), outer.mean()));
        if (deepest - shallowest < UNEVEN_MM) {
            return Optional.empty();
        }
        return chances(withSlips(inner, centre, outer, wornMm)).entrySet().stream()
                .filter(entry -> entry.getKey() != Cause.EVEN && entry.getValue() >= NAMED_FROM)
                .map(entry -> new Named(entry.getKey(), entry.getValue()))
                .findFirst();
    }

    /**
     * Chance of each cause; they sum to 1.
     *
     * @param wornMm how much of the tread is gone, mean over the grooves, 0 or more
     */
    public static Map<Cause, Double> chances(Estimate inner, Estimate centre, Estimate outer, double wornMm) {
        return chances(densities(inner, centre, outer, wornMm));
    }

    private static Map<Cause, Double> chances(Map<Cause, Double> densities) {
        double total =
                densities.values().stream().mapToDouble(Double::doubleValue).sum();
        var chances = new EnumMap<>(densities);
        chances.replaceAll((cause, density) -> density / total);
        return chances;
    }

    /** The same where one of the three depths may rest on a reading that is far off. */
    private static Map<Cause, Double> withSlips(Estimate inner, Estimate centre, Estimate outer, double wornMm) {
        var densities = new EnumMap<>(densities(inner, centre, outer, wornMm));
        densities.replaceAll((cause, density) -> (1 - 3 * DoubtfulReadings.SHARE) * density);
        for (var slipped : List.of(
                densities(slipped(inner), centre, outer, wornMm),
                densities(inner, slipped(centre), outer, wornMm),
                densities(inner, centre, slipped(outer), wornMm))) {
            slipped.forEach((cause, density) -> densities.merge(cause, DoubtfulReadings.SHARE * density, Double::sum));
        }
        return densities;
    }

    private static Estimate slipped(Estimate depth) {
        return new Estimate(depth.mean(), DoubtfulReadings.WIDER * depth.sd());
    }

    /** How likely each cause is times how likely it makes these depths. */
    private static Map<Cause, Double> densities(Estimate inner, Estimate centre, Estimate outer, double wornMm) {
        double natural = NATURAL * wornMm;
        double shared = square(centre.sd()) + square(natural);
        double innerVariance = square(inner.sd()) + square(natural) + shared;
        double outerVariance = square(outer.sd()) + square(natural) + shared;
        double innerMm = inner.mean() - centre.mean();
        double outerMm = outer.mean() - centre.mean();
        double size = Math.max(LEAST_SIZE_MM, SIZE * wornMm);
        var densities = new EnumMap<Cause, Double>(Cause.class);
        for (var cause : Cause.values()) {
            double prior = cause == Cause.EVEN ? CHANCE_EVEN : (1 - CHANCE_EVEN) / (Cause.values().length - 1);
            double ofSize = cause == Cause.EVEN ? 0 : size;
            densities.put(
                    cause, prior * density(cause, ofSize, innerMm, outerMm, innerVariance, shared, outerVariance));
        }
        return densities;
    }

    /** Equations (1) and (3). */
    private static double density(Cause cause, double size, double x, double y, double xx, double xy, double yy) {
        double variance = size * size;
        double a = xx + variance * cause.inner * cause.inner;
        double b = xy + variance * cause.inner * cause.outer;
        double c = yy + variance * cause.outer * cause.outer;
        double determinant = a * c - b * b;
        double quadratic = (c * x * x - 2 * b * x * y + a * y * y) / determinant;
        double density = Math.exp(-quadratic / 2) / (2 * Math.PI * Math.sqrt(determinant));
        if (size == 0) {
            return density;
        }
        double dx = (c * cause.inner - b * cause.outer) / determinant;
        double dy = (a * cause.outer - b * cause.inner) / determinant;
        double mean = variance * (dx * x + dy * y);
        double left = variance - variance * variance * (dx * cause.inner + dy * cause.outer);
        return 2 * density * NormalDistribution.cumulative(mean / Math.sqrt(left));
    }

    private static double square(double value) {
        return value * value;
    }
}
