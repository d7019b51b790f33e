package cornerbook.core.torque;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.torque.TorqueSaid.Label;
import cornerbook.core.torque.TorqueSaid.Part;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * A torque-limiting bar on an impact wrench: it ends somewhere in a band and sets nothing. It fits when the band lies below
 * the torque asked, so that the torque wrench on the ground still turns the fastener.
 *
 * @param nominalNm printed on the bar
 * @param spreadPercent half width of its band, to be found by trial with the shop's own impact wrench
 */
public record TorqueBar(
        double askedNm,
        double nominalNm,
        double spreadPercent,
        double leastNm,
        double mostNm,
        boolean fits,
        Explanation explanation)
        implements Explained {
    /** Up to this share of the torque asked a bar may go before the wrench. Common practice, no source. */
    private static final double MOST_SHARE = 0.9;

    /**
     * The band of a bar.
     *
     * @param nominalNm 20 to 500 N·m
     * @param spreadPercent 5 to 60 %
     */
    public static TorqueBar of(double askedNm, double nominalNm, double spreadPercent) {
        check(Part.TORQUE, askedNm, 1, 1000, "N·m");
        check(Part.TORQUE_OF_BAR, nominalNm, 20, 500, "N·m");
        check(Part.SPREAD_OF_BAR, spreadPercent, 5, 60, "%");
        double leastNm = nominalNm * (1 - spreadPercent / 100);
        double mostNm = nominalNm * (1 + spreadPercent / 100);
        boolean fits = mostNm <= MOST_SHARE * askedNm;
        Said caution = fits
                ? TorqueSaid.Caution.BAR_RUNS_UP
                : new TorqueSaid.BarTooStrong(new Amount(MOST_SHARE * 100, "%", 0));
        return new TorqueBar(
                askedNm,
                nominalNm,
                spreadPercent,
                leastNm,
                mostNm,
                fits,
                new Explanation(
                        List.of(caution),
                        List.of(
                                new Step(
                                        Label.LEAST_OF_BAR,
                                        Label.LEAST_OF_BAR_FORMULA,
                                        leastNm,
                                        "N·m",
                                        Label.SPREAD_ENTERED),
                                new Step(
                                        Label.MOST_OF_BAR,
                                        Label.MOST_OF_BAR_FORMULA,
                                        mostNm,
                                        "N·m",
                                        Label.SPREAD_ENTERED_AND_SHARE))));
    }
}
