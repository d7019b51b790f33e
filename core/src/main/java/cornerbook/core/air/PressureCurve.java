package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Input;
import org.jspecify.annotations.Nullable;

/**
 * Cold gauge pressure of a tyre over its temperature while no air is lost: the ideal gas, volume constant, through one known
 * reading ({@link GasLaw}).
 *
 * @param pressureKpa the known reading, 0 to 1000 kPa gauge
 * @param atC the tyre's temperature then, −60 to 90 °C
 * @param airKpa absolute pressure of the air around
 * @param placardKpa cold, 100 to 800 kPa gauge
 * @param coldestC coldest morning, −60 to 60 °C; null where it is not known
 */
public record PressureCurve(
        double pressureKpa,
        double atC,
        double airKpa,
        double placardKpa,
        @Nullable Double coldestC) {
    /** Share of the placard's pressure below which the pressure warning has to come (49 CFR 571.138, S4.2). */
    public static final double WARNING_SHARE = 0.75;

    public PressureCurve {
        check(Input.PRESSURE_READ, pressureKpa, 0, 1000, "kPa");
        check(Input.TYRE_TEMPERATURE, atC, -60, 90, "°C");
        check(Input.PLACARD_PRESSURE, placardKpa, 100, 800, "kPa");
        if (coldestC != null) {
            check(Input.COLDEST_MORNING, coldestC, -60, 60, "°C");
        }
    }

    /** The same with the air of sea level around. */
    public static PressureCurve atSeaLevel(
            double pressureKpa, double atC, double placardKpa, @Nullable Double coldestC) {
        return new PressureCurve(pressureKpa, atC, GasLaw.STANDARD_ATMOSPHERE_KPA, placardKpa, coldestC);
    }

    /** The reading at another temperature, not below 0 kPa. */
    public double atKpa(double temperatureC) {
        return Math.max(0, GasLaw.gaugePressureKpa(pressureKpa, atC, airKpa, temperatureC, airKpa));
    }

    /** Below it the pressure warning comes. */
    public double warningKpa() {
        return WARNING_SHARE * placardKpa;
    }
}
