package cornerbook.core.brake.disc;

import cornerbook.core.quantity.Range;
import java.util.Collections;
import java.util.List;

/**
 * The thickness of a disc at points around it, 10 to 15 mm from the edge. Makers' manuals ask for 4 to 12 points; eight is the
 * usual number.
 *
 * @param pointsMm 4 to 36, in order around the disc
 */
public record DiscThickness(List<Double> pointsMm) {
    public DiscThickness {
        pointsMm = List.copyOf(pointsMm);
        Range.check("points of thickness", pointsMm.size(), 4, 36, "");
        pointsMm.forEach(point -> Range.check("thickness", point, 1, 60, "mm"));
    }

    /** The thinnest point: the one that a minimum is for. */
    public double thinnestMm() {
        return Collections.min(pointsMm);
    }

    /** Thickest less thinnest. The true variation is at least this: the points may miss its ends. */
    public double variationMm() {
        return Collections.max(pointsMm) - thinnestMm();
    }

    /** What may be done with the disc under these limits. */
    public Use use(DiscLimits limits) {
        if (thinnestMm() < limits.minimumWearMm()) {
            return Use.REPLACE;
        }
        if (variationMm() <= limits.variationLimitMm()) {
            return Use.KEEP;
        }
        return allowancePerSideMm(limits) > 0 ? Use.REFINISH : Use.REPLACE;
    }

    /** How much may be taken off each side; below 0 there is nothing to take. */
    public double allowancePerSideMm(DiscLimits limits) {
        return (thinnestMm() - limits.minimumRefinishMm()) / 2;
    }

    /** What may be done with a disc. */
    public enum Use {
        KEEP,
        /** Its thickness varies too much, and it may be refinished. */
        REFINISH,
        /** Worn out, or out of true with nothing left to take off. */
        REPLACE
    }
}
