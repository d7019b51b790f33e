package cornerbook.core.tread;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.tread.AlignmentSaid.Input;

/** Three grooves of a tyre, 0 to 25 mm each. */
public record TreadAcross(double innerMm, double centreMm, double outerMm) {
    public TreadAcross {
        check(Input.GROOVE, innerMm, 0, 25, "mm");
        check(Input.GROOVE, centreMm, 0, 25, "mm");
        check(Input.GROOVE, outerMm, 0, 25, "mm");
    }

    double innerLess() {
        return innerMm - centreMm;
    }

    double outerLess() {
        return outerMm - centreMm;
    }

    public double meanMm() {
        return (innerMm + centreMm + outerMm) / 3;
    }

    public double lowestMm() {
        return Math.min(innerMm, Math.min(centreMm, outerMm));
    }

    double highestMm() {
        return Math.max(innerMm, Math.max(centreMm, outerMm));
    }

    /** Between the two that are not lowest. */
    double elsewhereMm() {
        return (innerMm + centreMm + outerMm - lowestMm()) / 2;
    }
}
