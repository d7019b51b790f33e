package cornerbook.core.wear;

import cornerbook.core.corner.Spot;

/** Tread depth of one tyre when it was new to the book, as the prior has it, mm by groove. */
public record NewDepth(double innerMm, double centreMm, double outerMm) {
    public NewDepth {
        if (!(innerMm > 0 && centreMm > 0 && outerMm > 0 && innerMm < 25 && centreMm < 25 && outerMm < 25)) {
            throw new IllegalArgumentException("new depth is %s, %s, %s mm, expected above 0 and below 25 mm"
                    .formatted(innerMm, centreMm, outerMm));
        }
    }

    /** The same depth in each groove, as of a new tyre. */
    public static NewDepth even(double depthMm) {
        return new NewDepth(depthMm, depthMm, depthMm);
    }

    double at(Spot groove) {
        return switch (groove) {
            case INNER -> innerMm;
            case CENTRE -> centreMm;
            case OUTER -> outerMm;
        };
    }
}
