package cornerbook.core.battery;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Measured against rated cranking current. A tester that does not know the temperature measures less in the cold; its
 * reading is divided by the share of power that a sound battery has there: 100 % at 26.7 °C, 65 % at 0 °C, 40 % at −18 °C, linear
 * between (widely printed, from memory). Sound at 70 % and more (service literature), watched below 80 % (common practice, no
 * source).
 *
 * @param share of the rating, 0 and more
 */
public record BatteryHealth(
        double measuredA,
        double ratedA,
        RatingStandard standard,
        double share,
        Judgement judgement,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    /** A battery is sound at this share of its rating and more (service literature). */
    public static final double SOUND_SHARE = 0.70;
    /** Below this share it is watched (common practice, no source). */
    public static final double WATCH_SHARE = 0.80;

    private static final double[] TEMPERATURE_C = {-17.8, 0, 26.7};
    private static final double[] POWER_SHARE = {0.40, 0.65, 1.00};

    /** What the share says. */
    public enum Judgement {
        SOUND,
        WATCH,
        REPLACE
    }

    public BatteryHealth {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /**
     * The health, both currents by the same standard.
     *
     * @param temperatureC of the battery, −18 to 60 °C
     * @param corrected whether the tester has been told the temperature
     */
    public static BatteryHealth of(
            double measuredA, double ratedA, RatingStandard standard, double temperatureC, boolean corrected) {
        check("measured cranking current", measuredA, 0, 3000, "A");
        check("rated cranking current", ratedA, 50, 2000, "A");
        check("temperature of the battery", temperatureC, TEMPERATURE_C[0], 60, "°C");
        double power = corrected ? 1 : StateOfCharge.between(TEMPERATURE_C, POWER_SHARE, temperatureC);
        double share = measuredA / (ratedA * power);
        var judgement =
                share < SOUND_SHARE ? Judgement.REPLACE : share < WATCH_SHARE ? Judgement.WATCH : Judgement.SOUND;
        return new BatteryHealth(
                measuredA,
                ratedA,
                standard,
                share,
                judgement,
                judgement == Judgement.REPLACE
                        ? Said.verbatims(
                                "Charge it fully and test again before it is condemned; check that the tester is set to %s."
                                        .formatted(standard))
                        : List.of(),
                List.of(
                        new Step(
                                "share of power at this temperature",
                                corrected
                                        ? "the tester was told the temperature"
                                        : "100 %% at 26.7 °C, 65 %% at 0 °C, 40 %% at −18 °C, at %s °C"
                                                .formatted(Step.digits(temperatureC)),
                                power * 100,
                                "%",
                                "widely printed, from memory"),
                        new Step(
                                "share of the rating",
                                "measured %s A / (rated %s A %s × share of power)"
                                        .formatted(Step.digits(measuredA), Step.digits(ratedA), standard),
                                share * 100,
                                "%",
                                "sound from 70 % (service literature); watch below 80 % is common practice, no source")));
    }
}
