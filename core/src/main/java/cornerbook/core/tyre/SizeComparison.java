package cornerbook.core.tyre;

import cornerbook.core.say.Said;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Another tyre size against the placard's, both new: diameter, circumference, true speed when the speedometer shows one,
 * revolutions per km, load and speed. Geometry is that of {@link TyreSize}; makers' tyres differ from it by up to about 1.5 %.
 *
 * @param circumferencePercent how much farther the other rolls in a turn; negative when less
 * @param trueKmh when the speedometer, right with the placard's size, shows {@code indicatedKmh}
 * @param radiusMm how much nearer the tread comes to the body, half the difference of diameters
 * @param carriesEnough load index and speed symbol not below the placard's; only judged when both sizes have them
 */
public record SizeComparison(
        TyreSize placard,
        TyreSize other,
        double diameterMm,
        double circumferencePercent,
        double indicatedKmh,
        double trueKmh,
        double radiusMm,
        double turnsPerKm,
        boolean carriesEnough,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final double MM_PER_KM = 1e6;
    private static final String GEOMETRY = "UN R30, 6.1.2: D = d + 2 S Ra/100";

    public SizeComparison {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** The comparison at a speed shown of 10 to 300 km/h. */
    public static SizeComparison of(TyreSize placard, TyreSize other, double indicatedKmh) {
        check("speed shown", indicatedKmh, 10, 300, "km/h");
        double ratio = other.rollingCircumferenceMm() / placard.rollingCircumferenceMm();
        var cautions = new ArrayList<Said>();
        boolean carriesEnough = carries(placard.service(), other.service(), cautions);
        if (ratio > 1) {
            cautions.add(Said.verbatim(
                    "The speedometer shows less than the true speed unless it has room: it must never show less (UN R39, from memory)."));
        }
        double diameterMm = other.overallDiameterMm() - placard.overallDiameterMm();
        double turns = MM_PER_KM / other.rollingCircumferenceMm();
        return new SizeComparison(
                placard,
                other,
                diameterMm,
                (ratio - 1) * 100,
                indicatedKmh,
                indicatedKmh * ratio,
                diameterMm / 2,
                turns,
                carriesEnough,
                cautions,
                List.of(
                        new Step("diameter, placard", placard.toString(), placard.overallDiameterMm(), "mm", GEOMETRY),
                        new Step("diameter, other", other.toString(), other.overallDiameterMm(), "mm", GEOMETRY),
                        new Step(
                                "difference of circumference",
                                "D other/D placard − 1",
                                (ratio - 1) * 100,
                                "%",
                                GEOMETRY),
                        new Step(
                                "true speed",
                                "shown %s km/h × D other/D placard".formatted(Step.digits(indicatedKmh)),
                                indicatedKmh * ratio,
                                "km/h",
                                "turns of the wheel"),
                        new Step(
                                "turns per km",
                                "1 km / (3.05 D)",
                                turns,
                                "",
                                "rolling circumference 3.05 D, ETRTO, from memory")));
    }

    private static boolean carries(
            @Nullable ServiceDescription placard, @Nullable ServiceDescription other, List<Said> cautions) {
        if (placard == null || other == null) {
            cautions.add(Said.verbatim("Load and speed are not judged: give both sizes with load index and speed symbol, as 98V."));
            return false;
        }
        boolean load = other.loadIndex().number() >= placard.loadIndex().number();
        boolean speed =
                other.speedSymbol().highestKmh() >= placard.speedSymbol().highestKmh();
        if (!load) {
            cautions.add(Said.verbatim("Load index %d is below the placard's %d: do not fit."
                    .formatted(other.loadIndex().number(), placard.loadIndex().number())));
        }
        if (!speed) {
            cautions.add(Said.verbatim(
                    "Speed symbol %s is below the placard's %s: only where the law lets winter tyres, with the lower speed shown to the driver."
                            .formatted(other.speedSymbol(), placard.speedSymbol())));
        }
        return load && speed;
    }
}
