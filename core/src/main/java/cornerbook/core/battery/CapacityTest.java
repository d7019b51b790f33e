package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.battery.BatterySaid.Part;
import cornerbook.core.battery.HealthTest.Judgement;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * Capacity drawn from the full battery over its rated capacity, which is the health of a battery that cranks nothing; what the share
 * means says {@link HealthTest#CAPACITY}. The rating holds for a discharge over 20 hours; a faster one draws less.
 *
 * @param share of the rating, 0 and more
 */
public record CapacityTest(
        double measuredAh, double ratedAh, double share, Judgement judgement, Explanation explanation)
        implements Explained {
    /** The share for 0 to 300 A·h drawn of a rating of 5 to 300 A·h. */
    public static CapacityTest of(double measuredAh, double ratedAh) {
        check(Part.DISCHARGED, measuredAh, 0, 300, "A·h");
        check(Part.CAPACITY, ratedAh, 5, 300, "A·h");
        double share = measuredAh / ratedAh;
        return new CapacityTest(
                measuredAh,
                ratedAh,
                share,
                HealthTest.CAPACITY.judge(share),
                new Explanation(
                        List.of(BatterySaid.Sentence.DISCHARGED_FROM_FULL),
                        List.of(new Step(
                                Label.SHARE_OF_CAPACITY,
                                Formula.of(
                                        "{} / {}",
                                        Amount.significant(measuredAh, "A·h", 4),
                                        Amount.significant(ratedAh, "A·h", 4)),
                                share * 100,
                                "%",
                                Label.CAPACITY_SOURCE))));
    }
}
