package cornerbook.core.say;

/**
 * A difference between two quantities: a temperature's difference has no zero of its own in other units.
 *
 * @param unit as in {@link Amount}
 * @param signed whether a plus is written too
 */
public record Margin(double value, String unit, int decimals, boolean signed) implements Said {}
