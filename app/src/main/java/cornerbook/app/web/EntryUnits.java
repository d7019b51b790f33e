package cornerbook.app.web;

import cornerbook.app.unit.UnitSystem;
import cornerbook.core.visit.Measure;
import java.util.Set;
import java.util.regex.Pattern;

/** The units of a form's bare readings: those of the person who opened it. What is worn is read in 32nds of an inch. */
public record EntryUnits(UnitSystem system) {
    private static final Set<Measure> IN_32NDS = Set.of(Measure.TREAD_DEPTH, Measure.PAD_THICKNESS);
    private static final Pattern BARE = Pattern.compile("[0-9.,;\\s+−-]+");
    private static final Pattern BARE_FRACTION = Pattern.compile("(?:\\d+ )?\\d+\\s*/\\s*\\d+");
    private static final String UNIT_OF_32NDS = "/32 in";

    /** The units that a form was opened with; of a form not sent yet those of this request. */
    static EntryUnits of(Form form) {
        return new EntryUnits(UnitSystem.find(form.get("units")).orElseGet(UnitChoice::current));
    }

    /** Beside the field; empty for a measure in words. */
    String label(Measure measure) {
        return measure.scale() != null ? "" : in32nds(measure) ? "/32\u2033" : system.unitOf(measure.unit());
    }

    /** What was typed, with the unit that it was meant in. */
    String withUnit(String text, Measure measure) {
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
        return in32nds(measure) ? text + UNIT_OF_32NDS : text + " " + system.unitOf(measure.unit());
    }

    /** The inverse of {@link #withUnit}, for the field, where the unit stands beside it. */
    String withoutUnit(String asWritten, Measure measure) {
        var unit = in32nds(measure) ? UNIT_OF_32NDS : " " + system.unitOf(measure.unit());
        return asWritten.endsWith(unit) ? asWritten.substring(0, asWritten.length() - unit.length()) : asWritten;
    }

    private boolean in32nds(Measure measure) {
        return system == UnitSystem.US && IN_32NDS.contains(measure);
    }
}
