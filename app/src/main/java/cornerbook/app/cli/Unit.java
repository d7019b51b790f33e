package cornerbook.app.cli;

import cornerbook.core.quantity.Quantities;
import java.util.Locale;
import picocli.CommandLine;

/** Reads the quantities of options into the book's units, and shows answers in these and in US units. */
final class Unit {
    private Unit() {}

    /** Reads one kind of quantity. */
    abstract static class Of implements CommandLine.ITypeConverter<Double> {
        private final String bookUnit;

        Of(String bookUnit) {
            this.bookUnit = bookUnit;
        }

        @Override
        public final Double convert(String text) {
            try {
                return Quantities.parse(text, bookUnit);
            } catch (IllegalArgumentException refused) {
                throw new CommandLine.TypeConversionException(String.valueOf(refused.getMessage()));
            }
        }
    }

    static final class Torque extends Of {
        Torque() {
            super("N·m");
        }
    }

    static final class Length extends Of {
        Length() {
            super("mm");
        }
    }

    static final class Angle extends Of {
        Angle() {
            super("°");
        }
    }

    /** As "133 N·m (98 lbf·ft)". */
    static String torque(double newtonMetres) {
        return both("%.0f N·m (%.0f lbf·ft)", newtonMetres, "N·m", "lbf·ft");
    }

    /** As "450 mm (17.7 in)". */
    static String length(double millimetres) {
        return both("%.0f mm (%.1f in)", millimetres, "mm", "in");
    }

    private static String both(String format, double value, String bookUnit, String unit) {
        return String.format(Locale.ROOT, format, value, Quantities.in(unit, value, bookUnit))
                .replace("-", "−");
    }
}
