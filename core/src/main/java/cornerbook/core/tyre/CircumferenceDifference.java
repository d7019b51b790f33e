package cornerbook.core.tyre;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
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
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    public CircumferenceDifference {
        circumferencesMm = List.copyOf(circumferencesMm);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** What the car's maker limits. */
    public enum Kind {
        CIRCUMFERENCE("circumference", 100),
        TREAD("tread", 10);
        private final String word;
        private final double mostMm;

        Kind(String word, double mostMm) {
            this.word = word;
            this.mostMm = mostMm;
        }
    }

    /** A tyre and how much of its tread is gone, mm. */
    public record Worn(TyreSize size, double wornMm) {
        public Worn {
            check("tread worn off", wornMm, 0, 20, "mm");
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
        check("number of tyres", tyres.size(), 2, 4, "");
        check(
                "limit of the %s difference".formatted(kind.word),
                limitMm,
                kind == Kind.TREAD ? 0.1 : 1,
                kind.mostMm,
                "mm");
        if (kind == Kind.TREAD
                && tyres.stream()
                                .map(tyre -> tyre.size().overallDiameterMm())
                                .distinct()
                                .count()
                        > 1) {
            throw new IllegalArgumentException(
                    "limit of the tread difference compares tyres of one size, and here are %s and %s; give a limit of the circumference"
                            .formatted(tyres.getFirst().size(), tyres.getLast().size()));
        }
        var all = new ArrayList<Double>();
        var steps = new ArrayList<Step>();
        for (var tyre : tyres) {
            all.add(tyre.circumferenceMm());
            steps.add(new Step(
                    "circumference of " + tyre.size(),
                    "3.05 D − 2π × %s mm".formatted(Step.digits(tyre.wornMm())),
                    tyre.circumferenceMm(),
                    "mm",
                    "ETRTO, from memory; wear by geometry"));
        }
        double differenceMm = Collections.max(all) - Collections.min(all);
        var worn = tyres.stream().map(Worn::wornMm).toList();
        double treadMm = Collections.max(worn) - Collections.min(worn);
        steps.add(new Step("difference of circumference", "largest − smallest", differenceMm, "mm", "geometry"));
        steps.add(new Step("difference of tread gone", "most − least", treadMm, "mm", "as measured"));
        steps.add(new Step(
                "limit of the %s difference".formatted(kind.word), "given", limitMm, "mm", "from the car's maker"));
        boolean within = (kind == Kind.TREAD ? treadMm : differenceMm) <= limitMm;
        return new CircumferenceDifference(
                all,
                differenceMm,
                treadMm,
                kind,
                limitMm,
                within,
                within
                        ? List.of()
                        : Said.verbatims(
                                "The tyres differ by more than the car's drive may bear: do not drive it far like this."),
                steps);
    }
}
