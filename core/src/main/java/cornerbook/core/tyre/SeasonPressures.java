package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * What a tyre will read cold over a season when no air is lost, and how far the coldest morning leaves it above the pressure
 * warning, which comes at 25 % under the placard (49 CFR 571.138, S4.2).
 *
 * @param months in the order of the temperatures
 * @param coldest on the coldest morning
 * @param warningKpa below it the warning comes
 * @param marginKpa on the coldest morning above the warning; negative when it comes
 */
public record SeasonPressures(
        List<Expected> months,
        Expected coldest,
        double placardKpa,
        double warningKpa,
        double marginKpa,
        List<String> cautions,
        List<Step> steps)
        implements Explained {
    private static final double WARNING_SHARE = 0.75;

    public SeasonPressures {
        months = List.copyOf(months);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** Cold gauge pressure at a temperature. */
    public record Expected(double temperatureC, double pressureKpa) {}

    /**
     * The readings of a tyre that was set to {@code setKpa} at {@code setAtC}.
     *
     * @param meansC mean temperature of each month, 1 to 12 of them, −50 to 50 °C
     * @param coldestC coldest morning, not above the least mean
     */
    public static SeasonPressures of(
            double setKpa, double setAtC, double placardKpa, List<Double> meansC, double coldestC) {
        check("pressure set", setKpa, 100, 900, "kPa");
        check("temperature of the tyre", setAtC, -50, 90, "°C");
        check("placard pressure", placardKpa, 100, 800, "kPa");
        check("months", meansC.size(), 1, 12, "");
        double leastC = 50;
        var months = new ArrayList<Expected>();
        var steps = new ArrayList<Step>();
        for (double meanC : meansC) {
            check("mean temperature of a month", meanC, -50, 50, "°C");
            leastC = Math.min(leastC, meanC);
            months.add(expected(setKpa, setAtC, meanC));
            steps.add(step("reading at " + Step.digits(meanC) + " °C", setKpa, setAtC, months.getLast()));
        }
        check("coldest morning", coldestC, -60, leastC, "°C");
        var coldest = expected(setKpa, setAtC, coldestC);
        double warningKpa = WARNING_SHARE * placardKpa;
        double marginKpa = coldest.pressureKpa() - warningKpa;
        steps.add(step("coldest morning", setKpa, setAtC, coldest));
        steps.add(new Step(
                "warning comes below",
                "0.75 × placard %s kPa".formatted(Step.digits(placardKpa)),
                warningKpa,
                "kPa",
                "49 CFR 571.138, S4.2"));
        steps.add(new Step("margin", "coldest morning − warning", marginKpa, "kPa", "difference"));
        var cautions = new ArrayList<String>();
        if (marginKpa < 0) {
            cautions.add(
                    "On the coldest morning the pressure warning will come though no air is lost: set for that cold.");
        }
        if (coldest.pressureKpa() < placardKpa) {
            cautions.add(
                    "On the coldest morning the tyre is %.0f kPa under the placard; it has to be topped up when it gets cold."
                            .formatted(placardKpa - coldest.pressureKpa()));
        }
        return new SeasonPressures(months, coldest, placardKpa, warningKpa, marginKpa, cautions, steps);
    }

    private static Expected expected(double setKpa, double setAtC, double temperatureC) {
        return new Expected(temperatureC, Math.max(0, GasLaw.gaugePressureKpa(setKpa, setAtC, temperatureC)));
    }

    private static Step step(String what, double setKpa, double setAtC, Expected expected) {
        return new Step(
                what,
                "(%s + 101.325) (%s + 273.15)/(%s + 273.15) − 101.325"
                        .formatted(Step.digits(setKpa), Step.digits(expected.temperatureC()), Step.digits(setAtC)),
                expected.pressureKpa(),
                "kPa",
                "ideal gas, volume constant, sea level");
    }
}
