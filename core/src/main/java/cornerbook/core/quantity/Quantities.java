package cornerbook.core.quantity;

import cornerbook.core.say.Refused;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import javax.measure.UnitConverter;
import javax.measure.format.UnitFormat;
import org.jspecify.annotations.Nullable;
import systems.uom.ucum.format.UCUMFormat;

/**
 * Reads and shows quantities. A number may have a decimal point or comma, or be a fraction ("9/32 in", "6.5/32 in", "1 1/4 in"); a
 * bare number is in the book's unit, a fraction needs its own. Factors are those of UCUM as the units library has them; checked against NIST SP 811.
 */
public final class Quantities {
    private static final Pattern WRITTEN = Pattern.compile(
            "(?<sign>[+\\-−]?)\\s*(?:(?:(?<whole>\\d+)\\s+)?(?<top>\\d+(?:[.,]\\d+)?)\\s*/\\s*(?<bottom>\\d+)|(?<number>\\d+(?: \\d{3})*(?:[.,]\\d+)?))\\s*(?<unit>[^\\d\\s].*)?");
    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern OTHER_BLANKS = Pattern.compile("[\\s\\u00a0\\u2007\\u2009\\u202f]+");

    /** Book units of numbers so large that a separator before three digits groups thousands: odometer, mass, cranking current, clamp load, altitude. */
    private static final Set<String> GROUPED_UNITS = Set.of("km", "kg", "A", "mA", "N", "m");

    private static final Map<String, UnitConverter> CONVERTERS = new ConcurrentHashMap<>();

    /** So few have no value without end. */
    private static final int MOST_PLAIN_DIGITS = 30;

    /** Whole numbers of so many digits are below 2^53. */
    private static final int MOST_EXACT_DIGITS = 15;

    private static final double[] POWERS_OF_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14
    };

    private Quantities() {}

    /**
     * The value of what a person wrote.
     *
     * @param text as "32 psi", "9/32 in", "7,2"
     * @param bookUnit mm, m, kPa (gauge), N·m, N, °C, ° (angle), V, A, mA, A·h, km, km/h, kg, %, or studs (a count)
     * @return in the book's unit
     * @throws Refused with one sentence, when the text is not a number with a unit that fits
     */
    public static double parse(String text, String bookUnit) {
        var plain = plain(text, bookUnit);
        return plain.isPresent() ? plain.getAsDouble() : parseAny(text, bookUnit);
    }

    /**
     * What nearly every quantity is written as: digits, at most one separator, and a unit as it is listed. A file of a car has
     * some thousand. Empty for all else, which {@link #parseAny} reads, and for what it refuses.
     */
    private static OptionalDouble plain(String text, String bookUnit) {
        int end = 0;
        int separator = -1;
        while (end < text.length() && (isDigit(text.charAt(end)) || isSeparator(text.charAt(end)))) {
            if (isSeparator(text.charAt(end))) {
                if (separator >= 0) {
                    return OptionalDouble.empty();
                }
                separator = end;
            }
            end++;
        }
        boolean grouped = separator >= 0 && GROUPED_UNITS.contains(bookUnit);
        if (end == 0 || end > MOST_PLAIN_DIGITS || separator == 0 || separator == end - 1 || grouped) {
            return OptionalDouble.empty();
        }
        int unitAt = end < text.length() && text.charAt(end) == ' ' ? end + 1 : end;
        boolean fits = unitAt == text.length()
                || (text.length() - unitAt == bookUnit.length() && text.startsWith(bookUnit, unitAt));
        return fits ? OptionalDouble.of(decimal(text, end, separator)) : OptionalDouble.empty();
    }

    /**
     * The decimal that a text begins with. Of few digits it is a whole number over a power of ten, both of which a double has
     * exactly, so that one division rounds as parsing would (Clinger, How to Read Floating Point Numbers Accurately, 1990).
     */
    private static double decimal(String text, int end, int separator) {
        if (end > MOST_EXACT_DIGITS) {
            return Double.parseDouble(text.substring(0, end).replace(',', '.'));
        }
        long digits = 0;
        for (int at = 0; at < end; at++) {
            digits = at == separator ? digits : digits * 10 + (text.charAt(at) - '0');
        }
        return separator < 0 ? digits : digits / POWERS_OF_TEN[end - separator - 1];
    }

    private static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }

    private static boolean isSeparator(char character) {
        return character == '.' || character == ',';
    }

    private static double parseAny(String text, String bookUnit) {
        var written = OTHER_BLANKS.matcher(text).replaceAll(" ").strip();
        var match = WRITTEN.matcher(written);
        if (!match.matches()) {
            throw new Refused(new QuantitySaid.NotAQuantity(Quoted.of(written), UnitSpelling.expected(bookUnit)));
        }
        var unit = match.group("unit");
        double size = match.group("number") != null
                ? number(match.group("number"), bookUnit, written)
                : fraction(match, unit, written);
        boolean negative =
                !match.group("sign").isEmpty() && !match.group("sign").equals("+") && size != 0;
        double value = negative ? -size : size;
        double inBook = unit == null ? value : convert(value, unit, bookUnit, written);
        if (!Double.isFinite(inBook)) {
            throw new Refused(new QuantitySaid.TooLarge(Quoted.of(written)));
        }
        // Nothing has no sign: −0 is 0.
        return inBook + 0.0;
    }

    /**
     * The value in the book's unit with all its digits, for {@link #parse} to read as the very same value; a minus before zero
     * is left out. A very large or very small value has up to some 330 digits.
     */
    public static String write(double value, String bookUnit) {
        var digits = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        boolean seemsGrouped = GROUPED_UNITS.contains(bookUnit)
                && THOUSANDS.matcher(digits.replaceFirst("-", "")).matches();
        return (seemsGrouped ? digits + "0" : digits) + " " + bookUnit;
    }

    /** The value with its unit, digits as the trade reads them: "7.2 mm", "250 kPa", "12.65 V". */
    public static String show(double value, String bookUnit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value is %s %s, expected a finite number".formatted(value, bookUnit));
        }
        var digits = switch (bookUnit) {
            case "mm" -> Math.abs(value) < 1 && value != 0 ? "%.3f" : "%.1f";
            case "V" -> "%.2f";
            default -> "%.0f";
        };
        var shown = String.format(Locale.ROOT, digits, value);
        var signed = shown.matches("-0(\\.0*)?") ? shown.substring(1) : shown.replace('-', '−');
        return signed + " " + bookUnit;
    }

    /** The value, which is in the book's unit, in another unit as people write it: 250 kPa in "psi" is 36.26. */
    public static double in(String unit, double value, String bookUnit) {
        var ucum = UnitSpelling.findUcum(unit, bookUnit)
                .orElseThrow(() ->
                        new IllegalArgumentException("unit is %s, expected one for %s".formatted(unit, bookUnit)));
        return change(value, UnitSpelling.ucumOf(bookUnit), ucum);
    }

    private static double number(String digits, String bookUnit, String written) {
        var plain = digits.replace(" ", "");
        if (!GROUPED_UNITS.contains(bookUnit) || !THOUSANDS.matcher(plain).matches()) {
            return Double.parseDouble(plain.replace(',', '.'));
        }
        if (plain.indexOf('.') >= 0) {
            throw new Refused(new QuantitySaid.TwoWays(Quoted.of(written)));
        }
        return Double.parseDouble(plain.replace(",", ""));
    }

    /** A fraction needs its unit: a bare "9/32" means inches in the trade, and would be a plausible depth in mm too. */
    private static double fraction(Matcher match, @Nullable String unit, String written) {
        double bottom = Double.parseDouble(match.group("bottom"));
        if (bottom == 0) {
            throw new Refused(new QuantitySaid.DividesByZero(Quoted.of(written)));
        }
        if (unit == null) {
            throw new Refused(new QuantitySaid.FractionWithoutUnit(Quoted.of(written)));
        }
        double part = Double.parseDouble(match.group("top").replace(',', '.')) / bottom;
        return match.group("whole") == null ? part : part + Double.parseDouble(match.group("whole"));
    }

    private static double convert(double value, String unit, String bookUnit, String written) {
        var ucum = UnitSpelling.findUcum(unit, bookUnit)
                .orElseThrow(() -> new Refused(new QuantitySaid.OtherUnit(
                        Quoted.of(written), Quoted.of(unit), UnitSpelling.expected(bookUnit))));
        return change(value, ucum, UnitSpelling.ucumOf(bookUnit));
    }

    private static double change(double value, String from, String to) {
        // The units library knows nothing without end; it is refused in every unit.
        return from.equals(to) || !Double.isFinite(value)
                ? value
                : CONVERTERS
                        .computeIfAbsent(from + " " + to, key -> converter(from, to))
                        .convert(value);
    }

    private static UnitConverter converter(String ucum, String target) {
        UnitFormat format = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
        try {
            return format.parse(ucum).getConverterToAny(format.parse(target));
        } catch (IncommensurableException e) {
            throw new IllegalStateException("no way from " + ucum + " to " + target, e);
        }
    }
}
