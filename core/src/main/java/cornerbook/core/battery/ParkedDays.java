package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * How long a parked car takes to half the charge of its 12 V battery: 0.5 · Ah · health / (24 · I), from full, the
 * worst case without converter. Standby draw is 50 to 150 mA as a rule (service literature). Self-discharge is left out.
 */
public record ParkedDays(
        double capacityAh, double health, double standbyA, double days, List<String> cautions, List<Step> steps)
        implements Explained {
    public ParkedDays {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** The days for 5 to 300 A·h, a health of 0.1 to 1 and a draw of 0.001 to 10 A. */
    public static ParkedDays of(double capacityAh, double health, double standbyA) {
        check("battery capacity", capacityAh, 5, 300, "A·h");
        check("health of the battery", health, 0.1, 1, "");
        check("standby current", standbyA, 0.001, 10, "A");
        double days = 0.5 * capacityAh * health / (24 * standbyA);
        return new ParkedDays(
                capacityAh,
                health,
                standbyA,
                days,
                List.of(),
                List.of(new Step(
                        "days to half charge",
                        "0.5 × %s A·h × %s / (24 h × %s A)"
                                .formatted(Step.digits(capacityAh), Step.digits(health), Step.digits(standbyA)),
                        days,
                        "d",
                        "charge balance from full, without converter")));
    }
}
