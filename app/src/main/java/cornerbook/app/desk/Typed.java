package cornerbook.app.desk;

import cornerbook.app.request.Told;
import cornerbook.core.car.Measure;
import cornerbook.core.car.WrittenReading;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.words.UnitSystem;
import java.util.Locale;

/** Values as people type them: a bare number is in the book's unit, another unit may be written behind it. */
public final class Typed {
    private static final int MOST_DIGITS = 6;

    private Typed() {}

    /**
     * The value in the measure's unit.
     *
     * @throws IllegalArgumentException with one sentence when it cannot be a reading
     */
    public static double valueOf(Measure measure, String text) {
        double value = WrittenReading.valueOf(measure, text);
        if (!(value >= measure.lowest() && value <= measure.highest())) {
            throw new Refused(new DeskSaid.CannotBe(
                    Double.isFinite(value)
                            ? Amount.significant(value, measure.unit(), MOST_DIGITS)
                            : Said.verbatim(text),
                    Between.exact(measure.lowest(), measure.highest(), measure.unit())));
        }
        return value;
    }

    /** The value in this unit of the book, which stands beside the field. */
    public static double valueOf(String text, String unit) {
        return Quantities.parse(text, unit);
    }

    /** The value in the book's unit; a bare number is in the person's. */
    public static double valueOf(String text, String unit, UnitSystem system) {
        return Quantities.parse(system.withUnit(text, unit), unit);
    }

    /** What was typed, with the unit that it was meant in. */
    public static String withUnit(String text, Measure measure) {
        return measure.scale() == null && text.matches("[0-9.,;\\s+−-]+") ? text + " " + measure.unit() : text;
    }

    /** What was written without the unit at its end, for a field where that stands beside it. */
    public static String withoutUnit(String asWritten, String unit) {
        return asWritten.endsWith(" " + unit)
                ? asWritten.substring(0, asWritten.length() - unit.length() - 1)
                : asWritten;
    }

    /** Why something was refused, with a capital and a full stop. */
    public static String sentence(RuntimeException refusal) {
        return sentence(Told.say(refusal));
    }

    /** With a capital and a full stop. */
    public static String sentence(String message) {
        return message.isEmpty()
                ? message
                : message.substring(0, 1).toUpperCase(Locale.ROOT)
                        + message.substring(1)
                        + (message.endsWith(".") ? "" : ".");
    }
}
