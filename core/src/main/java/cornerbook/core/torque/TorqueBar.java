package cornerbook.core.torque;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    /** Up to this share of the torque asked a bar may go before the wrench. Common practice, no source. */
    private static final double MOST_SHARE = 0.9;

    public TorqueBar {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /**
     * The band of a bar.
     *
     * @param nominalNm 20 to 500 N·m
     * @param spreadPercent 5 to 60 %
     */
    public static TorqueBar of(double askedNm, double nominalNm, double spreadPercent) {
        check("torque", askedNm, 1, 1000, "N·m");
        check("torque of the bar", nominalNm, 20, 500, "N·m");
        check("spread of the bar", spreadPercent, 5, 60, "%");
        double leastNm = nominalNm * (1 - spreadPercent / 100);
        double mostNm = nominalNm * (1 + spreadPercent / 100);
        boolean fits = mostNm <= MOST_SHARE * askedNm;
        var caution = fits
                ? "The bar only runs the fasteners up: each is tightened with the torque wrench on the ground."
                : "The bar can pass %.0f %% of the torque asked, so the wrench would click without measuring: take a weaker one."
                        .formatted(MOST_SHARE * 100);
        return new TorqueBar(
                askedNm,
                nominalNm,
                spreadPercent,
                leastNm,
                mostNm,
                fits,
                Said.verbatims(caution),
                List.of(
                        new Step(
                                "least torque of the bar",
                                "nominal (1 − spread), %s N·m, %s %%"
                                        .formatted(Step.digits(nominalNm), Step.digits(spreadPercent)),
                                leastNm,
                                "N·m",
                                "spread as entered"),
                        new Step(
                                "most torque of the bar",
                                "nominal (1 + spread)",
                                mostNm,
                                "N·m",
                                "spread as entered; at most 90 % of the torque asked is common practice, no source")));
    }
}
