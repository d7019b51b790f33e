package cornerbook.core.air;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final double ROOM_C = 20;
    private static final String WARM =
            "The tyre was driven and is warm: never let air out of it now; add if it is low, and measure again cold.";

    public PressureSetting {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

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
            check("temperature of the tyre", tyreC, -50, 90, "°C");
            check("temperature where it will stand", standingC, -50, 60, "°C");
        }
    }

    /** A gauge against its master, kPa. */
    public record Gauge(double offsetKpa, double errorKpa) {
        public Gauge {
            check("offset of the gauge", offsetKpa, -50, 50, "kPa");
            check("error of the gauge", errorKpa, 0, 50, "kPa");
        }
    }

    /** The setting for a placard of 100 to 800 kPa. */
    public static PressureSetting of(double placardKpa, Circumstances at, Gauge gauge) {
        check("placard pressure", placardKpa, 100, 800, "kPa");
        double airHereKpa = GasLaw.airPressureKpa(at.altitudeM());
        double airThereKpa = GasLaw.airPressureKpa(at.standingAltitudeM());
        double trueKpa = GasLaw.gaugePressureKpa(placardKpa, at.standingC(), airThereKpa, at.tyreC(), airHereKpa);
        double setKpa = trueKpa + gauge.offsetKpa();
        var cautions = new ArrayList<Said>();
        if (at.driven()) {
            cautions.add(Said.verbatim(WARM));
        }
        return new PressureSetting(
                placardKpa,
                at.tyreC(),
                at.standingC(),
                gauge.offsetKpa(),
                gauge.errorKpa(),
                trueKpa,
                setKpa,
                new PressureCurve(placardKpa, at.standingC(), airThereKpa, placardKpa, at.coldestC()),
                cautions,
                List.of(
                        new Step(
                                "air here",
                                "at %s m".formatted(Step.digits(at.altitudeM())),
                                airHereKpa,
                                "kPa",
                                "ISO 2533 (from memory)"),
                        new Step(
                                "air where it will stand",
                                "at %s m".formatted(Step.digits(at.standingAltitudeM())),
                                airThereKpa,
                                "kPa",
                                "ISO 2533 (from memory)"),
                        new Step(
                                "pressure now",
                                "(placard %s + air there) (%s + 273.15)/(%s + 273.15) − air here"
                                        .formatted(
                                                Step.digits(placardKpa),
                                                Step.digits(at.tyreC()),
                                                Step.digits(at.standingC())),
                                trueKpa,
                                "kPa",
                                "ideal gas, volume constant"),
                        new Step(
                                "to be shown by this gauge",
                                "pressure now + offset %s kPa, error ±%s kPa"
                                        .formatted(Step.digits(gauge.offsetKpa()), Step.digits(gauge.errorKpa())),
                                setKpa,
                                "kPa",
                                "gauge against a master, as entered")));
    }

    /**
     * Refuses a setting with which the tyre would pass the maximum on its sidewall in a room of 20 °C; the maximum is meant
     * cold (49 CFR 571.139, from memory).
     *
     * @param maximumKpa 150 to 900 kPa
     * @throws IllegalArgumentException with one sentence
     */
    public void requireAtMost(double maximumKpa) {
        check("maximum pressure of the tyre", maximumKpa, 150, 900, "kPa");
        double inRoomKpa = Math.max(placardKpa, GasLaw.gaugePressureKpa(placardKpa, standingC, ROOM_C));
        if (inRoomKpa > maximumKpa) {
            throw new IllegalArgumentException(
                    "pressure to be set is %.0f kPa in a room of 20 °C, above the tyre's maximum of %.0f kPa: set less, and look again when it gets cold"
                            .formatted(inRoomKpa, maximumKpa));
        }
    }
}
