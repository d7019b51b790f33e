package cornerbook.core.battery;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.battery.BatterySaid.Label;
import cornerbook.core.say.Refused;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.List;

/**
 * What a cold cranking rating may be by another standard: a range, because published conversions disagree. From SAE:
 * SAE = 1.5 DIN + 40 or 1.7 DIN; EN = 0.92 SAE, or 0.95 SAE in makers' tables (from memory). Between EN and DIN both ranges
 * are taken one after the other. No pair of sources was found for IEC and JIS.
 */
public record RatingConversion(
        double ratedA, RatingStandard from, RatingStandard to, double lowA, double highA, Explanation explanation)
        implements Explained {
    private static final double DIN_SLOPE = 1.5;
    private static final double DIN_OFFSET_A = 40;
    private static final double DIN_RATIO = 1.7;
    private static final double EN_LOW = 0.92;
    private static final double EN_HIGH = 0.95;

    /**
     * The range for a rating of 50 to 2000 A.
     *
     * @throws IllegalArgumentException when no two published conversions are known, or both standards are the same
     */
    public static RatingConversion of(double ratedA, RatingStandard from, RatingStandard to) {
        check(BatterySaid.Part.RATED_CURRENT, ratedA, 50, 2000, "A");
        if (from == to) {
            throw new Refused(new BatterySaid.SameStandard(to));
        }
        for (var standard : List.of(from, to)) {
            if (standard == RatingStandard.IEC || standard == RatingStandard.JIS) {
                throw new Refused(new BatterySaid.NoConversion(standard, new BatterySaid.TestOf(standard)));
            }
        }
        double lowSae = switch (from) {
            case DIN -> Math.min(DIN_SLOPE * ratedA + DIN_OFFSET_A, DIN_RATIO * ratedA);
            case EN -> ratedA / EN_HIGH;
            default -> ratedA;
        };
        double highSae = switch (from) {
            case DIN -> Math.max(DIN_SLOPE * ratedA + DIN_OFFSET_A, DIN_RATIO * ratedA);
            case EN -> ratedA / EN_LOW;
            default -> ratedA;
        };
        double low = switch (to) {
            case DIN -> Math.min((lowSae - DIN_OFFSET_A) / DIN_SLOPE, lowSae / DIN_RATIO);
            case EN -> EN_LOW * lowSae;
            default -> lowSae;
        };
        double high = switch (to) {
            case DIN -> Math.max((highSae - DIN_OFFSET_A) / DIN_SLOPE, highSae / DIN_RATIO);
            case EN -> EN_HIGH * highSae;
            default -> highSae;
        };
        var source = Label.CONVERSION_SOURCE;
        var formula = Label.CONVERSION_FORMULA;
        return new RatingConversion(
                ratedA,
                from,
                to,
                low,
                high,
                new Explanation(
                        List.of(BatterySaid.Sentence.RANGE_NO_RATING),
                        List.of(
                                new Step(
                                        new BatterySaid.RatingBy(from),
                                        new BatterySaid.TestOf(from),
                                        ratedA,
                                        "A",
                                        Label.LABEL),
                                new Step(new BatterySaid.LowEndBy(to), formula, low, "A", source),
                                new Step(
                                        new BatterySaid.HighEndBy(to),
                                        new BatterySaid.TestAndFormula(new BatterySaid.TestOf(to), formula),
                                        high,
                                        "A",
                                        source))));
    }
}
