package cornerbook.core.air;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.air.AirSaid.Caution;
import cornerbook.core.air.AirSaid.Computed;
import cornerbook.core.air.AirSaid.Input;
import cornerbook.core.air.AirSaid.Origin;
import cornerbook.core.air.AirSaid.Way;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
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
        Said temperaturesFrom,
        Explanation explanation)
        implements Explained {
    public SeasonPressures {
        months = List.copyOf(months);
    }

    /** Cold gauge pressure at a temperature. */
    public record Expected(double temperatureC, double pressureKpa) {}

    /** The readings of a month: on a usual afternoon and morning; the same where only its mean is known. */
    public record ExpectedMonth(@Nullable Month month, Expected mild, Expected cold) {
        /** As people call it, empty where it is not known. */
        public Said name() {
            return month == null ? Said.verbatim("") : new AirSaid.MonthName(month);
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
            check(Input.PRESSURE_SET, setKpa, 100, 900, "kPa");
            check(Input.TYRE_TEMPERATURE, atC, -50, 90, "°C");
            check(Input.GAUGE_ERROR, gaugeErrorKpa, 0, 50, "kPa");
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
            Start start, double placardKpa, List<SeasonMonth> ahead, double coldestC, Said temperaturesFrom) {
        check(Input.PLACARD_PRESSURE, placardKpa, 100, 800, "kPa");
        check(Input.MONTHS_AHEAD, ahead.size(), 1, 12, "");
        double leastC = ahead.stream().mapToDouble(SeasonMonth::coldC).min().orElseThrow();
        check(Input.COLDEST_MORNING, coldestC, -60, leastC, "°C");
        var months = new ArrayList<ExpectedMonth>();
        var steps = new ArrayList<Step>();
        for (var month : ahead) {
            var expected = new ExpectedMonth(month.month(), start.at(month.mildC()), start.at(month.coldC()));
            months.add(expected);
            var named = month.month();
            if (named != null && month.isSpread()) {
                var name = new AirSaid.MonthName(named);
                steps.add(step(new AirSaid.MonthReading(name, false), start, expected.mild()));
                steps.add(step(new AirSaid.MonthReading(name, true), start, expected.cold()));
            } else {
                steps.add(step(
                        new AirSaid.ReadingAt(Amount.significant(month.mildC(), "°C", 4)), start, expected.mild()));
            }
        }
        var coldest = start.at(coldestC);
        double warningKpa = PressureCurve.WARNING_SHARE * placardKpa;
        double marginKpa = coldest.pressureKpa() - warningKpa;
        double errorKpa = start.gaugeErrorKpa() * GasLaw.absolute(coldestC) / GasLaw.absolute(start.atC());
        steps.add(step(Computed.COLDEST_MORNING, start, coldest));
        steps.add(new Step(
                Computed.WARNING_BELOW,
                new AirSaid.WarningFormula(
                        Amount.exact(PressureCurve.WARNING_SHARE, ""), Amount.significant(placardKpa, "kPa", 4)),
                warningKpa,
                "kPa",
                Said.verbatim("49 CFR 571.138, S4.2")));
        steps.add(new Step(Computed.WARNING_MARGIN, Way.COLDEST_LESS_WARNING, marginKpa, "kPa", Origin.DIFFERENCE));
        steps.add(new Step(
                Computed.MARGIN_ERROR,
                new AirSaid.MarginErrorFormula(Amount.significant(start.gaugeErrorKpa(), "kPa", 4)),
                errorKpa,
                "kPa",
                Origin.IDEAL_GAS));
        return new SeasonPressures(
                months,
                coldest,
                placardKpa,
                warningKpa,
                marginKpa,
                errorKpa,
                temperaturesFrom,
                new Explanation(cautions(coldest, placardKpa, marginKpa, errorKpa), steps));
    }

    private static List<Said> cautions(Expected coldest, double placardKpa, double marginKpa, double errorKpa) {
        var cautions = new ArrayList<Said>();
        if (marginKpa < 0) {
            cautions.add(Caution.WARNING_WILL_COME);
        } else if (marginKpa < errorKpa) {
            cautions.add(Caution.WARNING_MAY_COME);
        }
        if (coldest.pressureKpa() < placardKpa) {
            cautions.add(new AirSaid.UnderPlacard(Amount.of(placardKpa - coldest.pressureKpa(), "kPa")));
        }
        return cautions;
    }

    private static Step step(Said what, Start start, Expected expected) {
        return new Step(
                what,
                new AirSaid.SeasonFormula(
                        Amount.significant(start.setKpa(), "", 4),
                        Amount.significant(expected.temperatureC(), "", 4),
                        Amount.significant(start.atC(), "", 4),
                        GasLaw.ZERO_CELSIUS,
                        Amount.significant(start.altitudeM(), "m", 4)),
                expected.pressureKpa(),
                "kPa",
                Origin.IDEAL_GAS_AND_AIR);
    }
}
