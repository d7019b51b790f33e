package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Caution;
import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the gauge has to show now so that the tyre has the placard's cold pressure where it will stand:
 * p = (placard + air there) T now / T there − air here + gauge offset (ideal gas, volume constant; ISO 2533 for the air). The
 * temperature is the tyre's, which for a stored wheel is the store's.
 *
 * @param gaugeOffsetKpa what this gauge shows too much against a master
 * @param gaugeErrorKpa how far it may be off beyond that, either way
 * @param nowKpa what the tyre has to have now
 * @param setKpa to be shown by this gauge: {@code nowKpa} and what the gauge shows too much
 * @param standing the pressures where the car will stand
 */
public record PressureSetting(
        double placardKpa,
        double tyreC,
        double standingC,
        double gaugeOffsetKpa,
        double gaugeErrorKpa,
        double nowKpa,
        double setKpa,
        PressureCurve standing,
        Explanation explanation)
        implements Explained {
    private static final double ROOM_C = 20;

    /**
     * Where and how the tyre is measured and will stand; altitudes in m, driven within about three hours.
     *
     * @param coldestC coldest morning where it will stand; null where it is not known
     */
    public record Circumstances(
            double tyreC,
            double standingC,
            double altitudeM,
            double standingAltitudeM,
            boolean driven,
            @Nullable Double coldestC) {
        public Circumstances {
            check(Input.TYRE_TEMPERATURE, tyreC, -50, 90, "°C");
            check(Input.STANDING_TEMPERATURE, standingC, -50, 60, "°C");
        }
    }

    /** A gauge against its master, kPa. */
    public record Gauge(double offsetKpa, double errorKpa) {
        public Gauge {
            check(Input.GAUGE_OFFSET, offsetKpa, -50, 50, "kPa");
            check(Input.GAUGE_ERROR, errorKpa, 0, 50, "kPa");
        }
    }

    /** The setting for a placard of 100 to 800 kPa. */
    public static PressureSetting of(double placardKpa, Circumstances at, Gauge gauge) {
        check(Input.PLACARD_PRESSURE, placardKpa, 100, 800, "kPa");
        double airHereKpa = GasLaw.airPressureKpa(at.altitudeM());
        double airThereKpa = GasLaw.airPressureKpa(at.standingAltitudeM());
        double trueKpa = GasLaw.gaugePressureKpa(placardKpa, at.standingC(), airThereKpa, at.tyreC(), airHereKpa);
        double setKpa = trueKpa + gauge.offsetKpa();
        return new PressureSetting(
                placardKpa,
                at.tyreC(),
                at.standingC(),
                gauge.offsetKpa(),
                gauge.errorKpa(),
                trueKpa,
                setKpa,
                new PressureCurve(placardKpa, at.standingC(), airThereKpa, placardKpa, at.coldestC()),
                new Explanation(
                        at.driven() ? List.of(Caution.WARM_TYRE) : List.of(),
                        List.of(
                                new Step(
                                        Computed.AIR_HERE,
                                        new AirSaid.AtAltitude(Amount.significant(at.altitudeM(), "m", 4)),
                                        airHereKpa,
                                        "kPa",
                                        Origin.STANDARD_AIR),
                                new Step(
                                        Computed.AIR_THERE,
                                        new AirSaid.AtAltitude(Amount.significant(at.standingAltitudeM(), "m", 4)),
                                        airThereKpa,
                                        "kPa",
                                        Origin.STANDARD_AIR),
                                new Step(
                                        Computed.PRESSURE_NOW,
                                        new AirSaid.PressureNowFormula(
                                                Amount.significant(placardKpa, "", 4),
                                                Amount.significant(at.tyreC(), "", 4),
                                                Amount.significant(at.standingC(), "", 4),
                                                GasLaw.ZERO_CELSIUS),
                                        trueKpa,
                                        "kPa",
                                        Origin.IDEAL_GAS),
                                new Step(
                                        Computed.SHOWN_BY_GAUGE,
                                        new AirSaid.ShownFormula(
                                                Amount.significant(gauge.offsetKpa(), "kPa", 4),
                                                Amount.significant(gauge.errorKpa(), "kPa", 4)),
                                        setKpa,
                                        "kPa",
                                        Origin.GAUGE_AGAINST_MASTER))));
    }

    /**
     * Refuses a setting with which the tyre would pass the maximum on its sidewall in a room of 20 °C; the maximum is meant
     * cold (49 CFR 571.139, from memory).
     *
     * @param maximumKpa 150 to 900 kPa
     * @throws IllegalArgumentException with one sentence
     */
    public void requireAtMost(double maximumKpa) {
        check(Input.MAXIMUM_PRESSURE, maximumKpa, 150, 900, "kPa");
        double inRoomKpa = Math.max(placardKpa, GasLaw.gaugePressureKpa(placardKpa, standingC, ROOM_C));
        if (inRoomKpa > maximumKpa) {
            throw new Refused(new AirSaid.AboveMaximum(
                    Amount.of(inRoomKpa, "kPa"), Amount.of(ROOM_C, "°C"), Amount.of(maximumKpa, "kPa")));
        }
    }
}
