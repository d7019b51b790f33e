package cornerbook.core.order;

/**
 * What one car may need of an article: nothing, {@code pieces} of it, or twice as many.
 *
 * @param pieces that go together, 1 to 100: two tyres of an axle, one set of pads
 * @param once chance that it needs so many, 0 to 1
 * @param twice chance that it needs twice as many, 0 to 1; both together are at most 1
 */
public record Need(int pieces, double once, double twice) {
    private static final int MOST_PIECES = 100;
    /** What rounding may leave above 1. */
    private static final double ROUNDING = 1e-12;

    public Need {
        if (pieces < 1 || pieces > MOST_PIECES) {
            throw new IllegalArgumentException("pieces is %s, expected 1 to %s".formatted(pieces, MOST_PIECES));
        }
        if (!(once >= 0 && twice >= 0 && once + twice <= 1 + ROUNDING)) {
            throw new IllegalArgumentException(
                    "chances are %s and %s, expected 0 or more and at most 1 together".formatted(once, twice));
        }
    }

    /** All pieces or none. */
    public static Need of(int pieces, double chance) {
        return new Need(pieces, chance, 0);
    }

    /** Chance that it needs any, 0 to 1. */
    public double any() {
        return Math.min(1, once + twice);
    }

    /** Pieces to be expected. */
    public double mean() {
        return pieces * (once + 2 * twice);
    }
}
