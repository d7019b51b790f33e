package cornerbook.core.say;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A quantity as it is told to a person, who may read it in other units.
 *
 * @param value finite, in {@code unit}
 * @param unit a unit of the book ("mm", "kPa", "N·m", "°C", "km", "mm/1000 km", …); empty for a bare number
 * @param decimals digits after the point that are told in that unit, 0 to 9
 */
public record Amount(double value, String unit, int decimals) implements Said {
    private static final int MOST_DECIMALS = 9;

    public Amount {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value is %s %s, expected a finite number".formatted(value, unit));
        }
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw new IllegalArgumentException("decimals are %s, expected 0 to %s".formatted(decimals, MOST_DECIMALS));
        }
    }

    /** With the digits that the trade reads: "7.2 mm", "0.042 mm", "250 kPa", "12.65 V". */
    public static Amount of(double value, String unit) {
        return new Amount(value, unit, usualDecimals(value, unit));
    }

    /** With up to so many significant digits, none of them a zero at the end behind the point. */
    public static Amount significant(double value, String unit, int digits) {
        if (!Double.isFinite(value)) {
            return new Amount(value, unit, 0);
        }
        var rounded = new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
        return new Amount(rounded.doubleValue(), unit, Math.clamp(rounded.scale(), 0, MOST_DECIMALS));
    }

    /** With all digits that the value has, as a limit that a person wrote. */
    public static Amount exact(double value, String unit) {
        var digits = BigDecimal.valueOf(value).stripTrailingZeros();
        return new Amount(value, unit, Math.clamp(digits.scale(), 0, MOST_DECIMALS));
    }

    static int usualDecimals(double value, String unit) {
        return switch (unit) {
            case "mm" -> Math.abs(value) < 1 && value != 0 ? 3 : 1;
            case "V" -> 2;
            default -> 0;
        };
    }
}
