package cornerbook.core.why;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One step of a calculation.
 *
 * @param what what was computed, as "clamp load at the highest friction"
 * @param formula with the numbers that went in, or the words "given" or "table"
 * @param value finite, in {@code unit}
 * @param unit as shown; empty for a bare number
 * @param source standard, handbook or rule with its place; or "common practice, no source", or "from memory"
 */
public record Step(Said what, Said formula, double value, String unit, Said source) {
    private static final MathContext SHOWN_DIGITS = new MathContext(4);

    /** Refuses what is no number. */
    public Step {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s is %s %s, expected a finite number".formatted(what, value, unit));
        }
    }

    /** The value with its unit, four digits: "70.5 kN". */
    public Amount shown() {
        return Amount.significant(value, unit, 4);
    }

    /** A number with four significant digits and without zeros at its end. */
    public static String digits(double value) {
        var rounded = new BigDecimal(value).round(SHOWN_DIGITS).stripTrailingZeros();
        return rounded.toPlainString().replace('-', '−');
    }
}
