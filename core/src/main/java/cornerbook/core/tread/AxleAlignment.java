package cornerbook.core.tread;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tread.AlignmentSaid.Caution;
import cornerbook.core.tread.AlignmentSaid.Computed;
import cornerbook.core.tread.AlignmentSaid.Input;
import cornerbook.core.tread.AlignmentSaid.Origin;
import cornerbook.core.tread.AlignmentSaid.Way;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the wear across the two tyres of an axle points to, and what it costs: the lowest groove ends a tyre. Left as it is, it goes
 * {@code run (low − end)/(new − low)} more; set right, its low groove wears on as the others did,
 * {@code run (low − end)/(new − elsewhere)}.
 *
 * @param cause the likeliest
 * @param named whether it is likely enough, and the tread uneven enough, to be named
 * @param stillGoes of the tyre with the lowest groove; null where no alignment is named, or the distance run is not known
 */
public record AxleAlignment(
        TreadAcross left,
        TreadAcross right,
        Life life,
        Map<AxlePattern.Cause, Double> chances,
        AxlePattern.Cause cause,
        boolean named,
        @Nullable StillGoes stillGoes,
        Explanation explanation)
        implements Explained {
    /** Of one depth as a gauge reads it in the hand. Common practice, no source. */
    public static final double READ_SD_MM = 0.15;

    /** Least tread by law in many places; the limits file has each with its source. */
    public static final double USUAL_END_MM = 1.6;

    public AxleAlignment {
        chances = Map.copyOf(chances);
    }

    /** How far a tyre still goes as it is, and once what wears it is put right. */
    public record StillGoes(double asItIsKm, double setRightKm) {}

    /**
     * What both tyres have gone through.
     *
     * @param newMm tread of both when new, 4 to 25 mm
     * @param endMm tread at which they are replaced, 1 to 8 mm
     * @param runKm 100 to 300 000 km; null where nobody knows
     */
    public record Life(double newMm, double endMm, @Nullable Double runKm) {
        public Life {
            check(Input.NEW_TREAD, newMm, 4, 25, "mm");
            check(Input.END_TREAD, endMm, 1, 8, "mm");
            Range.checkKnown(Input.RUN, runKm, 100, 300_000, "km");
        }
    }

    /**
     * The two tyres of an axle.
     *
     * @throws IllegalArgumentException with one sentence when a groove is deeper than it was new
     */
    public static AxleAlignment of(TreadAcross left, TreadAcross right, Life life) {
        for (double groove : List.of(left.highestMm(), right.highestMm())) {
            if (groove > life.newMm()) {
                throw new Refused(
                        new AlignmentSaid.DeeperThanNew(Amount.exact(groove, "mm"), Amount.exact(life.newMm(), "mm")));
            }
        }
        double wornMm = life.newMm() - (left.meanMm() + right.meanMm()) / 2;
        var chances = AxlePattern.chances(left, right, wornMm, READ_SD_MM);
        var likeliest = Collections.max(chances.entrySet(), Map.Entry.comparingByValue());
        double acrossMm = Math.max(left.highestMm() - left.lowestMm(), right.highestMm() - right.lowestMm());
        boolean named = likeliest.getKey() != AxlePattern.Cause.EVEN
                && likeliest.getValue() >= TreadPattern.NAMED_FROM
                && acrossMm >= TreadPattern.UNEVEN_MM;
        var steps = new ArrayList<Step>();
        steps.add(new Step(Computed.CHANCE, Way.AMONG_CAUSES, 100 * likeliest.getValue(), "%", Origin.PATTERN));
        var worse = left.lowestMm() <= right.lowestMm() ? left : right;
        var runKm = life.runKm();
        StillGoes stillGoes = null;
        if (named && likeliest.getKey().isAlignment() && runKm != null && worse.elsewhereMm() < life.newMm()) {
            stillGoes = new StillGoes(
                    leftKm(worse.lowestMm(), worse.lowestMm(), life, runKm),
                    leftKm(worse.lowestMm(), worse.elsewhereMm(), life, runKm));
            steps.add(left(Computed.LEFT_AS_IT_IS, worse.lowestMm(), worse.lowestMm(), life, runKm));
            steps.add(left(Computed.LEFT_SET_RIGHT, worse.lowestMm(), worse.elsewhereMm(), life, runKm));
        }
        return new AxleAlignment(
                left,
                right,
                life,
                chances,
                likeliest.getKey(),
                named,
                stillGoes,
                new Explanation(cautions(likeliest.getKey(), named), steps));
    }

    /** Chance of the likeliest cause. */
    public double chance() {
        return chances.getOrDefault(cause, 0.0);
    }

    private static double leftKm(double lowMm, double wearsAsMm, Life life, double runKm) {
        return Math.max(0, lowMm - life.endMm()) / (life.newMm() - wearsAsMm) * runKm;
    }

    private static Step left(Computed what, double lowMm, double wearsAsMm, Life life, double runKm) {
        return new Step(
                what,
                Formula.of(
                        "{} × ({} − {}) / ({} − {})",
                        Amount.significant(runKm, "km", 4),
                        Amount.significant(lowMm, "mm", 4),
                        Amount.significant(life.endMm(), "mm", 4),
                        Amount.significant(life.newMm(), "mm", 4),
                        Amount.significant(wearsAsMm, "mm", 4)),
                leftKm(lowMm, wearsAsMm, life, runKm),
                "km",
                Origin.AS_IT_WORE);
    }

    private static List<Said> cautions(AxlePattern.Cause cause, boolean named) {
        return named && cause.isAlignment()
                ? List.of(Caution.LOOK_FOR_PLAY, Caution.FEEL_ACROSS, Caution.MEASURE_FIRST)
                : List.of();
    }
}
