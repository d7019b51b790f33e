package cornerbook.core.brake.judge;

import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Optional;

/**
 * How far a reading of thickness or diameter at a brake may be wrong by gauge and hand. A reading nearer to its limit than that keeps
 * its verdict, which errs to the safe side, and is told as what it is: to be read again before parts are ordered.
 */
public final class GaugeError {
    /** Of a caliper gauge, a pad gauge or a drum gauge read in a shop. Common practice, no source. */
    private static final double MM = 0.1;
    /** What is left of a tenth in a double. */
    private static final double ROUNDING_MM = 1e-9;

    private GaugeError() {}

    /** A reading that is nearer to its limit than the gauge can tell. */
    public record TooNearToTell(Amount limit, Amount error) implements Said {}

    /** While the gauge is in the hand. */
    public record ReadAgain(Amount limit, Amount error) implements Said {}

    public static boolean isWithin(double valueMm, double limitMm) {
        return Math.abs(valueMm - limitMm) <= MM + ROUNDING_MM;
    }

    /** The sentence where the value is so near; empty where it is not. */
    public static Optional<Said> told(double valueMm, double limitMm) {
        return isWithin(valueMm, limitMm) ? Optional.of(new TooNearToTell(limit(limitMm), error())) : Optional.empty();
    }

    /** What is told at once beyond a limit: by more than the gauge can err what the limit says, by less to read again. */
    public static List<ReadingLimit> told(ReadingLimit limit) {
        var measure = limit.measure();
        boolean least = limit.lowest() > measure.lowest();
        return List.of(
                with(
                        limit,
                        least ? limit.lowest() - MM : limit.lowest(),
                        least ? limit.highest() : limit.highest() + MM,
                        limit.sentence()),
                with(
                        limit,
                        limit.lowest(),
                        limit.highest(),
                        new ReadAgain(limit(least ? limit.lowest() : limit.highest()), error())));
    }

    private static ReadingLimit with(ReadingLimit limit, double lowest, double highest, Said sentence) {
        return new ReadingLimit(
                limit.measure(),
                limit.subject(),
                lowest,
                highest,
                limit.outside(),
                sentence,
                limit.source(),
                limit.endedBy());
    }

    private static Amount limit(double limitMm) {
        return new Amount(limitMm, "mm", 1);
    }

    private static Amount error() {
        return new Amount(MM, "mm", 1);
    }
}
