package cornerbook.core.tyre.judge;

import cornerbook.core.finding.Limit;
import cornerbook.core.finding.LimitTable;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.AgeRule;
import cornerbook.core.tyre.TyreSaid;
import java.util.List;

/** The age rule for tyres of a place, from the same rows that the findings use. */
public final class AgeRules {
    private AgeRules() {}

    /**
     * The rule of a place, else of the house.
     *
     * @param jurisdiction a code of the limits file as "CA-QC", or "*" for the house
     */
    public static AgeRule of(List<Limit> limits, String jurisdiction) {
        var table = new LimitTable(limits);
        var inspect = table.get(jurisdiction, Limit.Kind.TYRE_AGE_INSPECT, null);
        var replace = table.get(jurisdiction, Limit.Kind.TYRE_AGE_REPLACE, null);
        return new AgeRule(inspect.value(), source(inspect), replace.value(), source(replace));
    }

    private static Said source(Limit limit) {
        return limit.jurisdiction().equals("*") ? new TyreSaid.HouseRule(limit.citation()) : limit.citation();
    }
}
