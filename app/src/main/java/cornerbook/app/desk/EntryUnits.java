package cornerbook.app.desk;

import cornerbook.app.request.Told;
import cornerbook.core.car.Measure;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** The units of a form's bare readings: those of the person who opened it. What is worn is read in 32nds of an inch. */
public record EntryUnits(UnitSystem system) {
    private static final Set<Measure> IN_32NDS = Set.of(Measure.TREAD_DEPTH, Measure.PAD_THICKNESS);
    private static final Pattern BARE = Pattern.compile("(?:(?i:stud|goujon)\\s*\\d+\\s*:)?[0-9.,;\\s+−-]+");
    private static final Pattern BARE_FRACTION = Pattern.compile("(?:\\d+ )?\\d+\\s*/\\s*\\d+");
    private static final String UNIT_OF_32NDS = "/32 in";
    private static final double MM_PER_32ND = 25.4 / 32;
    /** After the point, where it is not three. */
    private static final Map<String, Integer> DIGITS = Map.of("in", 4, "psi", 1, "lbf·ft", 0, "°F", 0);

    /** The units that a form was opened with; of a form not sent yet those of this request. */
    public static EntryUnits of(Form form) {
        return new EntryUnits(UnitSystem.find(form.get("units")).orElseGet(UnitChoice::current));
    }

    /** Beside the field; empty for a measure in words. */
    public String label(Measure measure) {
        return label(measure, Told.reader());
    }

    /** The same for another reader's language. */
    public String label(Measure measure, Reader reader) {
        return measure.scale() != null
                ? ""
                : in32nds(measure) ? "/32\u2033" : reader.in(system).unit(measure.unit());
    }

    /** What a bare number is written with: " mm", "/32 in"; empty for a measure in words. */
    public String suffix(Measure measure) {
        return measure.scale() != null ? "" : in32nds(measure) ? UNIT_OF_32NDS : " " + system.unitOf(measure.unit());
    }

    /** A value of the book as the number that stands before the suffix. */
    public double number(double value, Measure measure) {
        return measure.scale() != null || system.unitOf(measure.unit()).equals(measure.unit())
                ? value
                : in32nds(measure) ? value / MM_PER_32ND : system.in(value, measure.unit());
    }

    /** The same for people, with the digits that a tool of the trade shows; none without need. */
    public String written(double value, Measure measure) {
        int digits = in32nds(measure) ? 1 : DIGITS.getOrDefault(system.unitOf(measure.unit()), 3);
        return BigDecimal.valueOf(number(value, measure))
                .setScale(digits, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** What was typed, with the unit that it was meant in. */
    public String withUnit(String text, Measure measure) {
        if (measure.scale() != null) {
            return text;
        }
        if (system == UnitSystem.US
                && measure.unit().equals("mm")
                && BARE_FRACTION.matcher(text).matches()) {
            return text + " in";
        }
        if (!BARE.matcher(text).matches()) {
            return text;
        }
        return text + suffix(measure);
    }

    /** The inverse of {@link #withUnit}, for the field, where the unit stands beside it. */
    public String withoutUnit(String asWritten, Measure measure) {
        var unit = suffix(measure);
        return asWritten.endsWith(unit) ? asWritten.substring(0, asWritten.length() - unit.length()) : asWritten;
    }

    private boolean in32nds(Measure measure) {
        return system == UnitSystem.US && IN_32NDS.contains(measure);
    }
}
