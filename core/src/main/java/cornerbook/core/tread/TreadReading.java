package cornerbook.core.tread;

import cornerbook.core.corner.Spot;

/**
 * Depth read in one groove.
 *
 * @param visit number of the visit at which it was read, by one gauge and hand
 * @param tyre number of the tyre in the set, from 0
 * @param run what it had run by then
 */
public record TreadReading(int visit, int tyre, Spot groove, CornerDistances run, double depthMm) {
    public TreadReading {
        if (tyre < 0 || !(depthMm >= 0 && depthMm <= 25)) {
            throw new IllegalArgumentException(
                    "tyre %s reads %s mm, expected a tyre from 0 and 0 to 25 mm".formatted(tyre, depthMm));
        }
    }

    /** The same with what was run after a season alone. */
    TreadReading after(int season) {
        return new TreadReading(visit, tyre, groove, run.after(season), depthMm);
    }
}
