package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Input;

/**
 * When a tyre is too old, by the rule of a place or of the house.
 *
 * @param inspectYears from this age it is looked at every year, 1 to 30
 * @param replaceYears at this age it is replaced, not under {@code inspectYears}
 */
public record AgeRule(double inspectYears, Said inspectSource, double replaceYears, Said replaceSource) {
    public AgeRule {
        check(Input.INSPECT_AGE, inspectYears, 1, 30, "years");
        check(Input.REPLACE_AGE, replaceYears, inspectYears, 30, "years");
    }
}
