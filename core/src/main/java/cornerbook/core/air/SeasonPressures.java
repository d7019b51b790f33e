package cornerbook.core.air;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What a tyre will read cold over a season when no air is lost, and how far the coldest morning leaves it above the pressure
 * warning, which comes at 25 % under the placard (49 CFR 571.138, S4.2).
 *
 * @param months in the order of the temperatures
 * @param coldest on the coldest morning
 * @param warningKpa below it the warning comes
 * @param marginKpa on the coldest morning above the warning; negative when it comes
 * @param errorKpa of the margin, either way: the gauge's, carried to that morning
 * @param temperaturesFrom where the temperatures come from
 */
public record SeasonPressures(
        List<ExpectedMonth> months,
        Expected coldest,
        double placardKpa,
        double warningKpa,
        double marginKpa,
        double errorKpa,
        String temperaturesFrom,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final String GAS = "ideal gas, volume constant";

    public SeasonPressures {
        months = List.copyOf(months);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** Cold gauge pressure at a temperature. */
    public record Expected(double temperatureC, double pressureKpa) {}

    /** The readings of a month: on a usual afternoon and morning; the same where only its mean is known. */
    public record ExpectedMonth(@Nullable Month month, Expected mild, Expected cold) {
        /** As people call it, empty where it is not known. */
        public String name() {
            return month == null ? "" : month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        }

        public boolean isSpread() {
            return cold.temperatureC() < mild.temperatureC();
        }
    }

    /**
     * How the tyre was set.
     *
     * @param setKpa 100 to 900 kPa, gauge
     * @param atC the tyre's temperature then, −50 to 90 °C
     * @param gaugeErrorKpa 0 to 50 kPa
     * @param altitudeM where it is set and stands, −500 to 5000 m
     */
    public record Start(double setKpa, double atC, double gaugeErrorKpa, double altitudeM) {
        public Start {
            check("pressure set", setKpa, 100, 900, "kPa");
            check("temperature of the tyre", atC, -50, 90, "°C");
            check("error of the gauge", gaugeErrorKpa, 0, 50, "kPa");
        }

        private Expected at(double temperatureC) {
            double airKpa = GasLaw.airPressureKpa(altitudeM);
            return new Expected(
                    temperatureC, Math.max(0, GasLaw.gaugePressureKpa(setKpa, atC, airKpa, temperatureC, airKpa)));
        }
    }

    /**
     * The readings of a tyre so set.
     *
     * @param ahead 1 to 12 months
     * @param coldestC coldest morning, not above the coldest of the months
     * @param temperaturesFrom where the temperatures come from
     */
    public static SeasonPressures of(
            Start start, double placardKpa, List<SeasonMonth> ahead, double coldestC, String temperaturesFrom) {
        check("placard pressure", placardKpa, 100, 800, "kPa");
        check("months ahead", ahead.size(), 1, 12, "");
        double leastC = ahead.stream().mapToDouble(SeasonMonth::coldC).min().orElseThrow();
        check("coldest morning", coldestC, -60, leastC, "°C");
        var months = new ArrayList<ExpectedMonth>();
        var steps = new ArrayList<Step>();
        for (var month : ahead) {
            var expected = new ExpectedMonth(month.month(), start.at(month.mildC()), start.at(month.coldC()));
            months.add(expected);
            if (month.isSpread()) {
                steps.add(step("%s, afternoon".formatted(expected.name()), start, expected.mild()));
                steps.add(step("%s, morning".formatted(expected.name()), start, expected.cold()));
            } else {
                steps.add(step("reading at " + Step.digits(month.mildC()) + " °C", start, expected.mild()));
            }
        }
        var coldest = start.at(coldestC);
        double warningKpa = PressureCurve.WARNING_SHARE * placardKpa;
        double marginKpa = coldest.pressureKpa() - warningKpa;
        double errorKpa = start.gaugeErrorKpa() * GasLaw.absolute(coldestC) / GasLaw.absolute(start.atC());
        steps.add(step("coldest morning", start, coldest));
        steps.add(new Step(
                "warning comes below",
                "0.75 × placard %s kPa".formatted(Step.digits(placardKpa)),
                warningKpa,
                "kPa",
                "49 CFR 571.138, S4.2"));
        steps.add(new Step("margin", "coldest morning − warning", marginKpa, "kPa", "difference"));
        steps.add(new Step(
                "error of the margin, either way",
                "gauge error %s kPa × T coldest/T set".formatted(Step.digits(start.gaugeErrorKpa())),
                errorKpa,
                "kPa",
                GAS));
        return new SeasonPressures(
                months,
                coldest,
                placardKpa,
                warningKpa,
                marginKpa,
                errorKpa,
                temperaturesFrom,
                cautions(coldest, placardKpa, marginKpa, errorKpa),
                steps);
    }

    private static List<Said> cautions(Expected coldest, double placardKpa, double marginKpa, double errorKpa) {
        var cautions = new ArrayList<Said>();
        if (marginKpa < 0) {
            cautions.add(Said.verbatim(
                    "On the coldest morning the pressure warning will come though no air is lost: set for that cold."));
        } else if (marginKpa < errorKpa) {
            cautions.add(Said.verbatim(
                    "On the coldest morning the pressure warning may come: its margin is smaller than the gauge's error."));
        }
        if (coldest.pressureKpa() < placardKpa) {
            cautions.add(Said.verbatim(
                    "On the coldest morning the tyre is %.0f kPa under the placard; it has to be topped up when it gets cold."
                            .formatted(placardKpa - coldest.pressureKpa())));
        }
        return cautions;
    }

    private static Step step(String what, Start start, Expected expected) {
        return new Step(
                what,
                "(%s + air) (%s + 273.15)/(%s + 273.15) − air, air at %s m"
                        .formatted(
                                Step.digits(start.setKpa()),
                                Step.digits(expected.temperatureC()),
                                Step.digits(start.atC()),
                                Step.digits(start.altitudeM())),
                expected.pressureKpa(),
                "kPa",
                GAS + "; air by ISO 2533 (from memory)");
    }
}
