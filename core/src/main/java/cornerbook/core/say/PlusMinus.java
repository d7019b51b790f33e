package cornerbook.core.say;

/**
 * An estimate with its standard deviation, with the unit once: "6.7 ± 0.2 mm".
 *
 * @param unit as in {@link Amount}
 * @param sd standard deviation in {@code unit}, not negative
 */
public record PlusMinus(double value, double sd, String unit, int decimals) implements Said {}
