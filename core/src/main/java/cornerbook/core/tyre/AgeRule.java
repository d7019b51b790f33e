package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

/**
 * When a tyre is too old, by the rule of a place or of the house.
 *
 * @param inspectYears from this age it is looked at every year, 1 to 30
 * @param replaceYears at this age it is replaced, not under {@code inspectYears}
 */
public record AgeRule(double inspectYears, String inspectSource, double replaceYears, String replaceSource) {
    public AgeRule {
        check("age from which a tyre is inspected", inspectYears, 1, 30, "years");
        check("age at which a tyre is replaced", replaceYears, inspectYears, 30, "years");
    }
}
