package cornerbook.core.say;

/**
 * A probability as a person is told it: never more certain than "over 99 %" or "under 1 %".
 *
 * @param probability 0 to 1
 */
public record Chance(double probability) implements Said {
    public Chance {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability is %s, expected 0 to 1".formatted(probability));
        }
    }
}
