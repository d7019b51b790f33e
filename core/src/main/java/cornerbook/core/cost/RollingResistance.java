package cornerbook.core.cost;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.cost.CostSaid.Input;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import java.util.Locale;

/**
 * Rolling resistance coefficient of a tyre: the force against rolling over the load (UN R117, 2.18, from memory), in N/kN, which is
 * the same number in kg/t.
 *
 * @param lowest that it may have, 2 to 25 N/kN
 * @param highest as much as {@code lowest} where the coefficient itself is known, and not its class alone
 */
public record RollingResistance(double lowest, double highest) {
    public RollingResistance {
        check(Input.ROLLING, lowest, 2, 25, "N/kN");
        check(Input.ROLLING, highest, 2, 25, "N/kN");
    }

    /**
     * A class of the label, "B", or the coefficient, "7.2".
     *
     * @throws IllegalArgumentException with one sentence
     */
    public static RollingResistance parse(String text, TyreClass tyreClass) {
        var plain = text.strip().toUpperCase(Locale.ROOT);
        return tyreClass.find(plain).orElseGet(() -> {
            var number = plain.replace(',', '.').replaceFirst("\\s*(N/KN|KG/T)$", "");
            if (!number.matches("\\d{1,4}(\\.\\d{1,6})?")) {
                throw new Refused(new CostSaid.RollingUnread(Quoted.of(text)));
            }
            double coefficient = Double.parseDouble(number);
            return new RollingResistance(coefficient, coefficient);
        });
    }

    double middle() {
        return (lowest + highest) / 2;
    }
}
