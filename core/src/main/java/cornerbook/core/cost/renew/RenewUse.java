package cornerbook.core.cost.renew;

import cornerbook.core.cost.renew.RenewSaid.Input;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import java.util.List;

/**
 * How a set is used.
 *
 * @param seasonKm from one visit at which it goes on to the next, 100 to 100 000 km
 * @param newMm tread of a new tyre, 4 to 25 mm
 * @param endMm tread at which tyres are replaced, 1 to 8 mm
 * @param spreadPercent by how much a season's wear is more or less than expected, two times out of three; 1 to 100 %
 */
public record RenewUse(double seasonKm, double newMm, double endMm, double spreadPercent) {
    /** Distance of a season and wear rate together; common practice, no source. */
    public static final double USUAL_SPREAD_PERCENT = 25;

    public RenewUse {
        Range.check(Input.SEASON_DISTANCE, seasonKm, 100, 100_000, "km");
        Range.check(Input.NEW_TREAD, newMm, 4, 25, "mm");
        Range.check(Input.END_TREAD, endMm, 1, 8, "mm");
        Range.check(Input.SPREAD, spreadPercent, 1, 100, "%");
    }

    /** Wear of a season as it is expected, mm. */
    double seasonMm(PairOnAxle pair) {
        return pair.wearMmPer1000Km() * seasonKm / 1000;
    }

    double usedUpMm() {
        return newMm - endMm;
    }

    /** Standard deviation of the logarithm of a season's wear. */
    double logSpread() {
        return Math.log1p(spreadPercent / 100);
    }

    /** Refuses tyres that would have to be replaced before their first season is over. */
    void checkNewLasts(List<PairOnAxle> pairs) {
        for (var pair : pairs) {
            if (usedUpMm() < seasonMm(pair)) {
                throw new Refused(new RenewSaid.NewDoesNotLast(
                        pair.axle(),
                        Amount.significant(Math.max(0, usedUpMm() / pair.wearMmPer1000Km() * 1000), "km", 3),
                        Amount.exact(seasonKm, "km")));
            }
        }
    }
}
