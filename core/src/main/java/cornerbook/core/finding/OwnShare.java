package cornerbook.core.finding;

import cornerbook.core.say.Said;

/**
 * How much of a number that rests on readings and on what is usual comes from this car's own readings.
 *
 * @param percent 0 to 100 in tens: nobody's readings tell it finer
 */
public record OwnShare(int percent) implements Said {
    private static final int TENS = 10;

    public OwnShare {
        if (percent < 0 || percent > TENS * TENS || percent % TENS != 0) {
            throw new IllegalArgumentException("share is %s %%, expected 0 to 100 in tens".formatted(percent));
        }
    }

    /**
     * Rounded to tens.
     *
     * @param share 0 to 1
     */
    public static OwnShare of(double share) {
        return new OwnShare(TENS * Math.toIntExact(Math.round(TENS * share)));
    }
}
