package cornerbook.core.brake.seizing;

/**
 * Log-likelihood of one censored time under log T = η + σ W, W standard smallest extreme value, with its derivatives in η
 * and s = log σ. With z = (log t − η)/σ and u = eᶻ, survival is e⁻ᵘ and
 *
 * <pre>
 *   exact      ℓ = z − u − s − log t                                             (1)
 *   censored   ℓ = −u_a + log(1 − e^−(u_b − u_a)),  u_a = 0 at t = 0, the logarithm 0 when b is infinite   (2)
 *   u_η = −u/σ,  u_s = −z u,  u_ηη = u/σ²,  u_ηs = u (1 + z)/σ,  u_ss = u (z + z²)   (3)
 * </pre>
 *
 * Source: Meeker and Escobar, Statistical Methods for Reliability Data, 1998, sections 4.8 and 8.2; derivatives our own,
 * checked against finite differences. Holds one time at once so that a fit allocates nothing per observation.
 */
final class CensoredLikelihood {
    double value;
    double byLocation;
    double byLogScale;
    double byLocationTwice;
    double byBoth;
    double byLogScaleTwice;

    private double u;
    private double uLocation;
    private double uLogScale;
    private double uLocationTwice;
    private double uBoth;
    private double uLogScaleTwice;

    /** Sets the fields for one time, given by the logarithms of its ends. */
    void set(double logAfter, double logBy, double location, double scale) {
        if (logAfter == logBy) {
            double z = (logBy - location) / scale;
            cumulativeHazard(z, scale);
            value = z - u - Math.log(scale) - logBy;
            byLocation = -1 / scale - uLocation;
            byLogScale = -z - 1 - uLogScale;
            byLocationTwice = -uLocationTwice;
            byBoth = 1 / scale - uBoth;
            byLogScaleTwice = z - uLogScaleTwice;
            return;
        }
        clear();
        if (logAfter > Double.NEGATIVE_INFINITY) {
            cumulativeHazard((logAfter - location) / scale, scale);
            subtract();
        }
        if (logBy < Double.POSITIVE_INFINITY) {
            addChanceUntil(logBy, location, scale);
        }
    }

    /** The second term of (2): log(1 − e⁻ᴰ), D = u_b − u_a, with q = 1/(eᴰ − 1) as its derivative and q′ = −q (1 + q). */
    private void addChanceUntil(double logBy, double location, double scale) {
        double startU = -value;
        double startLocation = -byLocation;
        double startLogScale = -byLogScale;
        double startLocationTwice = -byLocationTwice;
        double startBoth = -byBoth;
        double startLogScaleTwice = -byLogScaleTwice;
        cumulativeHazard((logBy - location) / scale, scale);
        double difference = u - startU;
        double q = 1 / Math.expm1(difference);
        double bend = q * (1 + q);
        double differenceLocation = uLocation - startLocation;
        double differenceLogScale = uLogScale - startLogScale;
        value += Math.log(-Math.expm1(-difference));
        byLocation += q * differenceLocation;
        byLogScale += q * differenceLogScale;
        byLocationTwice += q * (uLocationTwice - startLocationTwice) - bend * differenceLocation * differenceLocation;
        byBoth += q * (uBoth - startBoth) - bend * differenceLocation * differenceLogScale;
        byLogScaleTwice += q * (uLogScaleTwice - startLogScaleTwice) - bend * differenceLogScale * differenceLogScale;
    }

    /** Equation (3). */
    private void cumulativeHazard(double z, double scale) {
        u = Math.exp(z);
        uLocation = -u / scale;
        uLogScale = -z * u;
        uLocationTwice = u / (scale * scale);
        uBoth = u * (1 + z) / scale;
        uLogScaleTwice = u * (z + z * z);
    }

    private void clear() {
        value = 0;
        byLocation = 0;
        byLogScale = 0;
        byLocationTwice = 0;
        byBoth = 0;
        byLogScaleTwice = 0;
    }

    private void subtract() {
        value -= u;
        byLocation -= uLocation;
        byLogScale -= uLogScale;
        byLocationTwice -= uLocationTwice;
        byBoth -= uBoth;
        byLogScaleTwice -= uLogScaleTwice;
    }
}
