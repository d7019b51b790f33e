package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Part;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * How long a parked car takes to the reserve of its 12 V battery, half of its charge: (charge − 0.5) · Ah · health / (24 · I),
 * the worst case without converter. An engine is not cranked below the reserve. In an electric car nothing is cranked, but its
 * electronics may not wake and its contactors not close, so that it neither opens nor drives; its standby draw is 50 to 150 mA as
 * a rule (service literature). Self-discharge is left out.
 *
 * @param charge from which it starts, 0 to 1
 * @param days 0 when the charge is at or under the reserve already
 */
public record ParkedDays(
        double capacityAh, double health, double standbyA, double charge, double days, Explanation explanation)
        implements Explained {
    /** Share of charge that is kept to start the car, or to wake it (service literature: days to half charge). */
    public static final double RESERVE = 0.5;

    private static final double HOURS_PER_DAY = 24;

    /** The days for 5 to 300 A·h, a health of 0.1 to 1, a draw of 0.001 to 10 A, and a charge of 0 to 1 to start from. */
    public static ParkedDays of(double capacityAh, double health, double standbyA, double charge) {
        check(Part.CAPACITY, capacityAh, 5, 300, "A·h");
        check(Part.HEALTH, health, 0.1, 1, "");
        check(Part.STANDBY, standbyA, 0.001, 10, "A");
        check(Part.CHARGE_WHEN_PARKED, charge, 0, 1, "");
        double days = Math.max(0, charge - RESERVE) * capacityAh * health / (HOURS_PER_DAY * standbyA);
        return new ParkedDays(
                capacityAh,
                health,
                standbyA,
                charge,
                days,
                new Explanation(
                        charge > RESERVE ? List.of() : List.of(BatterySaid.Sentence.AT_THE_RESERVE),
                        List.of(new Step(
                                Label.DAYS_TO_HALF,
                                Formula.of(
                                        "({} − 0.5) × {} × {} / (24 h × {})",
                                        Amount.significant(charge, "", 4),
                                        Amount.significant(capacityAh, "A·h", 4),
                                        Amount.significant(health, "", 4),
                                        Amount.significant(standbyA, "A", 4)),
                                days,
                                "d",
                                Label.PARKED_SOURCE))));
    }

    /** Charge after so many days, 0 to 1. */
    public double chargeAfter(double parkedDays) {
        return Math.max(0, charge - HOURS_PER_DAY * standbyA * parkedDays / (capacityAh * health));
    }
}
