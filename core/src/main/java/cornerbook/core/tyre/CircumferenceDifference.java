package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.tyre.TyreSaid.Caution;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Input;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.tyre.TyreSaid.Way;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Difference among the tyres of an axle or of an all-wheel-drive car, wear included, against the car maker's limit in its
 * own kind: of rolling circumference, C = 3.05 D − 2π × worn depth, or of tread depth. Makes and pressures differ by more
 * than wear does at times: a measured circumference outranks the computed one.
 *
 * @param differenceMm largest less smallest circumference
 * @param treadDifferenceMm most less least tread gone
 * @param limitMm in the kind of {@code kind}
 */
public record CircumferenceDifference(
        List<Double> circumferencesMm,
        double differenceMm,
        double treadDifferenceMm,
        Kind kind,
        double limitMm,
        boolean within,
        Explanation explanation)
        implements Explained {
    public CircumferenceDifference {
        circumferencesMm = List.copyOf(circumferencesMm);
    }

    /** What the car's maker limits. */
    public enum Kind {
        CIRCUMFERENCE(Input.CIRCUMFERENCE_LIMIT, 100),
        TREAD(Input.TREAD_LIMIT, 10);
        private final Input limit;
        private final double mostMm;

        Kind(Input limit, double mostMm) {
            this.limit = limit;
            this.mostMm = mostMm;
        }
    }

    /** A tyre and how much of its tread is gone, mm. */
    public record Worn(TyreSize size, double wornMm) {
        public Worn {
            check(Input.TREAD_WORN, wornMm, 0, 20, "mm");
        }

        double circumferenceMm() {
            return size.rollingCircumferenceMm() - 2 * Math.PI * wornMm;
        }
    }

    /** What is compared, in mm of its kind. */
    public double comparedMm() {
        return kind == Kind.TREAD ? treadDifferenceMm : differenceMm;
    }

    /**
     * The difference among 2 to 4 tyres against a limit of circumference.
     *
     * @param limitMm 1 to 100 mm
     */
    public static CircumferenceDifference of(List<Worn> tyres, double limitMm) {
        return of(tyres, Kind.CIRCUMFERENCE, limitMm);
    }

    /**
     * The difference among 2 to 4 tyres against a limit.
     *
     * @param limitMm above 0 to 100 mm of circumference or 10 mm of tread; 1 mm of circumference at least
     * @throws IllegalArgumentException with one sentence, also when tread is compared between different sizes
     */
    public static CircumferenceDifference of(List<Worn> tyres, Kind kind, double limitMm) {
        check(Input.TYRES, tyres.size(), 2, 4, "");
        check(kind.limit, limitMm, kind == Kind.TREAD ? 0.1 : 1, kind.mostMm, "mm");
        if (kind == Kind.TREAD
                && tyres.stream()
                                .map(tyre -> tyre.size().overallDiameterMm())
                                .distinct()
                                .count()
                        > 1) {
            throw new Refused(new TyreSaid.OtherSizes(
                    tyres.getFirst().size().toString(), tyres.getLast().size().toString()));
        }
        var all = new ArrayList<Double>();
        var steps = new ArrayList<Step>();
        for (var tyre : tyres) {
            all.add(tyre.circumferenceMm());
            steps.add(new Step(
                    new TyreSaid.CircumferenceOf(tyre.size().toString()),
                    Formula.of(
                            "{} D − 2π × {}",
                            Amount.exact(tyre.size().rollingFactor(), ""),
                            Amount.significant(tyre.wornMm(), "mm", 4)),
                    tyre.circumferenceMm(),
                    "mm",
                    Origin.ROLLING_AND_WEAR));
        }
        double differenceMm = Collections.max(all) - Collections.min(all);
        var worn = tyres.stream().map(Worn::wornMm).toList();
        double treadMm = Collections.max(worn) - Collections.min(worn);
        steps.add(new Step(
                Computed.CIRCUMFERENCE_DIFFERENCE, Way.LARGEST_LESS_SMALLEST, differenceMm, "mm", Origin.GEOMETRY));
        steps.add(new Step(Computed.TREAD_DIFFERENCE, Way.MOST_LESS_LEAST, treadMm, "mm", Origin.AS_MEASURED));
        steps.add(new Step(kind.limit, Basis.GIVEN, limitMm, "mm", Origin.FROM_MAKER));
        boolean within = (kind == Kind.TREAD ? treadMm : differenceMm) <= limitMm;
        return new CircumferenceDifference(
                all,
                differenceMm,
                treadMm,
                kind,
                limitMm,
                within,
                new Explanation(within ? List.of() : List.of(Caution.TYRES_DIFFER), steps));
    }
}
