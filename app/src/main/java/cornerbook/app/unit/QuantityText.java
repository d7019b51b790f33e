package cornerbook.app.unit;

import cornerbook.words.UnitSystem;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the quantities inside sentences and pages, which are metric, in US customary units: "4.0 to 5.2 mm" is
 * "5.0 to 6.6/32 in". What was written by a person, in quotation marks, and what is marked as not to be translated stays.
 */
public final class QuantityText {
    private static final String NUMBER = "[−+±-]?\\d+(?:\u202f\\d{3})*(?:\\.\\d+)?";
    private static final String BLANK = "(?:&nbsp;|\u00a0|\u202f| )";
    private static final Pattern QUANTITY = Pattern.compile("(?<![\\p{L}\\d.,×/\"“−-])(?<numbers>"
            + NUMBER
            + "(?:(?:,? (?:to|and|or) |, | ± ?|–|±)" + NUMBER + ")*)"
            + "(?<blank>" + BLANK + ")"
            + "(?<unit>mm per 1,?[\u202f]?000" + BLANK + "km|mm|kPa|N·m|°C|km/h|km|kg|kN)(?![\\p{L}\\d/·²³])");
    private static final Pattern ONE = Pattern.compile("(?<before>± ?)?(?<number>" + NUMBER + ")");
    private static final Pattern TAG = Pattern.compile("<(?:[^>\"']|\"[^\"]*\"|'[^']*')*>");
    private static final Pattern SPOKEN = Pattern.compile("(?<=\\b(?:aria-label|title)=\")[^\"]*(?=\")");

    /** Trade practice: what is worn and thinner than this is read in 32nds of an inch. */
    private static final double READ_IN_32NDS_BELOW_MM = 13;

    private static final double MM_PER_INCH = 25.4;
    private static final double MM_PER_32ND = MM_PER_INCH / 32;
    private static final double KM_PER_MILE = 1.609344;
    private static final double POUNDS_FORCE_PER_KN = 1000 / 4.4482216152605;

    private QuantityText() {}

    /** A page's HTML with its text in these units; fields keep what stands in them. */
    public static String page(String html, UnitSystem system) {
        if (system == UnitSystem.METRIC) {
            return html;
        }
        var page = new StringBuilder(html.length() + 256);
        var tag = TAG.matcher(html);
        int from = 0;
        boolean kept = false;
        while (tag.find()) {
            var text = html.substring(from, tag.start());
            page.append(kept ? text : sentence(text, system));
            page.append(SPOKEN.matcher(tag.group()).replaceAll(match -> quoted(sentence(match.group(), system))));
            kept = tag.group().contains(" translate=\"no\"");
            from = tag.end();
        }
        return page.append(html, from, html.length()).toString();
    }

    /** A sentence with its quantities in these units. */
    public static String sentence(String text, UnitSystem system) {
        return system == UnitSystem.METRIC || text.isBlank()
                ? text
                : QUANTITY.matcher(text).replaceAll(match -> quoted(usOf(match)));
    }

    private static String usOf(MatchResult match) {
        var numbers = match.group("numbers");
        var blank = match.group("blank");
        var unit = match.group("unit");
        return switch (unit) {
            case "mm" -> lengths(numbers, blank);
            case "kPa" -> each(numbers, "kPa", 1) + blank + "psi";
            case "N·m" -> each(numbers, "N·m", 0) + blank + "lbf·ft";
            case "°C" -> each(numbers, "°C", 0) + blank + "°F";
            case "km/h" -> each(numbers, "km/h", 0) + blank + "mph";
            case "km" -> each(numbers, "km", 0) + blank + "mi";
            case "kg" -> each(numbers, "kg", 0) + blank + "lb";
            case "kN" -> scaled(numbers, value -> value * POUNDS_FORCE_PER_KN, 0) + blank + "lbf";
            default ->
                scaled(numbers, value -> value / MM_PER_32ND * KM_PER_MILE, 2) + "/32" + blank + "in per 1\u202f000"
                        + blank + "mi";
        };
    }

    /** Thin things in 32nds as they are read, others in inches with the digits that the millimetres had. */
    private static String lengths(String numbers, String blank) {
        var one = ONE.matcher(numbers);
        double largest = 0;
        int afterPoint = 0;
        while (one.find()) {
            var number = one.group("number");
            largest = Math.max(largest, Math.abs(value(number)));
            afterPoint = Math.max(afterPoint, digitsAfterPoint(number));
        }
        if (largest < READ_IN_32NDS_BELOW_MM && afterPoint <= 1) {
            return scaled(numbers, value -> value / MM_PER_32ND, 1) + "/32" + blank + "in";
        }
        int digits = afterPoint >= 2 ? afterPoint + 2 : afterPoint == 1 ? 3 : largest < 100 ? 2 : 1;
        return scaled(numbers, value -> value / MM_PER_INCH, digits) + blank + "in";
    }

    private static String each(String numbers, String bookUnit, int digits) {
        return scaled(numbers, value -> UnitSystem.US.in(value, bookUnit), digits);
    }

    /** A number behind ± is a difference: it has no zero of its own. */
    private static String scaled(String numbers, DoubleUnaryOperator convert, int digits) {
        return ONE.matcher(numbers).replaceAll(match -> {
            var number = match.group(2);
            boolean difference = match.group(1) != null || number.startsWith("±");
            double value = value(number);
            double converted =
                    difference ? convert.applyAsDouble(value) - convert.applyAsDouble(0) : convert.applyAsDouble(value);
            var sign = match.group(1) != null
                    ? match.group(1)
                    : number.startsWith("±") ? "±" : number.startsWith("+") ? "+" : "";
            return quoted(sign + shown(converted, digits));
        });
    }

    private static double value(String number) {
        return Double.parseDouble(number.replace("\u202f", "").replace('−', '-').replaceFirst("^[±+]", ""));
    }

    private static int digitsAfterPoint(String number) {
        int point = number.indexOf('.');
        return point < 0 ? 0 : number.length() - point - 1;
    }

    private static String shown(double value, int digits) {
        var text = String.format(Locale.ROOT, "%,." + digits + "f", value).replace(',', '\u202f');
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text.replace('-', '−');
    }

    private static String quoted(String text) {
        return Matcher.quoteReplacement(text);
    }
}
