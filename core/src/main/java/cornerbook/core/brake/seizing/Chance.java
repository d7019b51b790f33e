package cornerbook.core.brake.seizing;

/** A probability with the 95 % limits within which the data leave it. */
public record Chance(double probability, double lower, double upper) {
    public Chance {
        if (!(0 <= lower && lower <= probability && probability <= upper && upper <= 1)) {
            throw new IllegalArgumentException("chance is %s (%s to %s), expected 0 <= lower <= it <= upper <= 1"
                    .formatted(probability, lower, upper));
        }
    }
}
