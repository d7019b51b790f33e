package cornerbook.words;

import cornerbook.core.quantity.Quantities;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The units of one person. What the book keeps in metric units is shown in these, and a bare number that the person types
 * is meant in these; a unit that is written is always understood.
 */
public enum UnitSystem {
    METRIC("Metric"),
    US("US customary");

    private static final Map<String, String> US_UNITS = Map.of(
            "mm", "in",
            "m", "ft",
            "kPa", "psi",
            "N·m", "lbf·ft",
            "N", "lbf",
            "°C", "°F",
            "km", "mi",
            "km/h", "mph",
            "kg", "lb");

    /** Digits after the point where they are not whole: as the trade reads them. */
    private static final Map<String, Integer> DIGITS = Map.of("in", 1, "psi", 1, "V", 2);

    private static final Set<String> GROUPED_UNITS = Set.of("km", "kg", "A", "N", "m");

    private static final Pattern BARE = Pattern.compile("[+\\-−]?[\\d\\s.,]*\\d[.,]?");

    private final String title;

    UnitSystem(String title) {
        this.title = title;
    }

    /** The system by its name in addresses, "metric" or "us"; empty for anything else. */
    public static Optional<UnitSystem> find(String word) {
        return Arrays.stream(values())
                .filter(system -> system.word().equals(word))
                .findFirst();
    }

    /** Its name in addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Its name for people. */
    public String title() {
        return title;
    }

    /** The unit in which this person reads and writes what the book keeps in {@code bookUnit}. */
    public String unitOf(String bookUnit) {
        return this == US ? US_UNITS.getOrDefault(bookUnit, bookUnit) : bookUnit;
    }

    /** The value in this person's unit. */
    public double in(double value, String bookUnit) {
        return unitOf(bookUnit).equals(bookUnit) ? value : Quantities.in(unitOf(bookUnit), value, bookUnit);
    }

    public String show(double value, String bookUnit) {
        var unit = unitOf(bookUnit);
        return "%s %s".formatted(digits(in(value, bookUnit), DIGITS.getOrDefault(unit, 0)), unit);
    }

    /**
     * The value for a field that has its unit beside it: up to three digits after the point, none without need; two
     * where three would read as thousands.
     */
    public String field(double value, String bookUnit) {
        return digits(in(value, bookUnit), GROUPED_UNITS.contains(bookUnit) ? 2 : 3)
                .replaceFirst("(\\.\\d*?)0+$", "$1")
                .replaceFirst("\\.$", "");
    }

    /** What was typed, a bare number with the unit that this person meant. */
    public String withUnit(String typed, String bookUnit) {
        return BARE.matcher(typed.strip()).matches() ? typed.strip() + " " + unitOf(bookUnit) : typed;
    }

    private static String digits(double value, int afterPoint) {
        var shown = String.format(Locale.ROOT, "%." + afterPoint + "f", value);
        return shown.matches("-0(\\.0*)?") ? shown.substring(1) : shown.replace('-', '−');
    }
}
