package cornerbook.core.air;

import org.jspecify.annotations.Nullable;

/** How the car warns of low pressure, and what it needs to learn other wheels; null where it is not known. */
public record PressureWarning(@Nullable Kind kind, @Nullable Learning learning) {
    /** Nothing is known. */
    public static final PressureWarning NOT_KNOWN = new PressureWarning(null, null);

    /** Where the warning comes from. */
    public enum Kind {
        /** A sensor in each wheel. */
        DIRECT,
        /** The turning of the wheels. */
        INDIRECT
    }

    /** How the car learns new sensors, or new wheels. */
    public enum Learning {
        BY_ITSELF,
        BY_TOOL,
        BY_DRIVING
    }
}
