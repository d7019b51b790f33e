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

    static final class Mass extends Of {
        Mass() {
            super("kg");
        }
    }

    static final class Pressure extends Of {
        Pressure() {
            super("kPa");
        }
    }

    static final class Temperature extends Of {
        Temperature() {
            super("°C");
        }
    }

    static final class Altitude extends Of {
        Altitude() {
            super("m");
        }
    }

    static final class Speed extends Of {
        Speed() {
            super("km/h");
        }
    }

    static final class Voltage extends Of {
        Voltage() {
            super("V");
        }
    }

    static final class Current extends Of {
        Current() {
            super("A");
        }
    }

    static final class Capacity extends Of {
        Capacity() {
            super("A·h");
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

    /** As "512 kg (1129 lb)". */
    static String mass(double kilograms) {
        return both("%.0f kg (%.0f lb)", kilograms, "kg", "lb");
    }

    /** As "250 kPa (36.3 psi)". */
    static String pressure(double kilopascals) {
        return both("%.0f kPa (%.1f psi)", kilopascals, "kPa", "psi");
    }

    /** As "−20 °C (−4 °F)". */
    static String temperature(double celsius) {
        return both("%.0f °C (%.0f °F)", celsius, "°C", "°F");
    }

    private static String both(String format, double value, String bookUnit, String unit) {
        return String.format(Locale.ROOT, format, value, Quantities.in(unit, value, bookUnit))
                .replace("-", "−");
    }
}
