package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Difference of rolling circumference among the tyres of an all-wheel-drive car, wear included: C = 3.05 D − 2π × worn depth. Makes
 * and pressures differ by more than wear does at times: a measured circumference outranks it. The limit is the car maker's.
 *
 * @param differenceMm largest less smallest
 */
public record CircumferenceDifference(
        List<Double> circumferencesMm,
        double differenceMm,
        double limitMm,
        boolean within,
        List<String> cautions,
        List<Step> steps)
        implements Explained {
    public CircumferenceDifference {
        circumferencesMm = List.copyOf(circumferencesMm);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
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

    /** The difference among 2 to 4 tyres against a limit of 1 to 100 mm. */
    public static CircumferenceDifference of(List<Worn> tyres, double limitMm) {
        check("number of tyres", tyres.size(), 2, 4, "");
        check("limit of the circumference difference", limitMm, 1, 100, "mm");
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
        double largest = all.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double smallest = all.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double differenceMm = largest - smallest;
        steps.add(new Step(
                "difference", "largest − smallest", differenceMm, "mm", "limit as entered, from the car's maker"));
        boolean within = differenceMm <= limitMm;
        return new CircumferenceDifference(
                all,
                differenceMm,
                limitMm,
                within,
                within
                        ? List.of()
                        : List.of(
                                "The tyres differ by more than the car's drive may bear: do not drive it far like this."),
                steps);
    }
}
