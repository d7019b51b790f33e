package cornerbook.core.order;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The chance with which what was ordered is to be enough, from what it costs to have one piece too few and one too many: the
 * critical ratio of the newsvendor problem,
 *
 * <pre>
 *   level = c_u / (c_u + c_o)
 * </pre>
 *
 * with the cost of underage c_u, what one missing piece costs (the margin that is lost, the second visit, the express delivery),
 * and the cost of overage c_o, what one piece too many costs (interest, space, what it loses until it is sold or goes back).
 * Source: Arrow, Harris and Marschak 1951, Econometrica 19:250; in any textbook of operations. Of a demand in whole pieces the
 * fewest whose chance to be enough reaches the level cost least.
 */
public final class ServiceLevel {
    /** Within which a chance is taken to reach a level. */
    static final double ROUNDING = 1e-12;

    private ServiceLevel() {}

    /**
     * The level for two costs of one coin.
     *
     * @param missing cost of one piece too few, above 0
     * @param left cost of one piece too many, above 0
     * @throws IllegalArgumentException when one of them is not above 0
     */
    public static double ofCosts(BigDecimal missing, BigDecimal left) {
        if (missing.signum() <= 0 || left.signum() <= 0) {
            throw new IllegalArgumentException("costs are %s and %s, expected above 0".formatted(missing, left));
        }
        return missing.divide(missing.add(left), MathContext.DECIMAL64).doubleValue();
    }
}
