package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Caution;
import cornerbook.core.tyre.TyreSaid.Computed;
import cornerbook.core.tyre.TyreSaid.Input;
import cornerbook.core.tyre.TyreSaid.Origin;
import cornerbook.core.tyre.TyreSaid.Way;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Another tyre size against the placard's, both new: diameter, circumference, true speed when the speedometer shows one,
 * revolutions per km, load and speed. Geometry is that of {@link TyreSize}; makers' tyres differ from it by up to about 1.5 %.
 *
 * @param circumferencePercent how much farther the other rolls in a turn; negative when less
 * @param trueKmh when the speedometer, right with the placard's size, shows {@code indicatedKmh}
 * @param radiusMm how much nearer the tread comes to the body, half the difference of diameters
 * @param carriesEnough load index and speed symbol not below the placard's; only judged when both sizes have them and their
 *     load stands in the same tables
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
        Explanation explanation)
        implements Explained {
    private static final double MM_PER_KM = 1e6;
    private static final Said GEOMETRY = Said.verbatim("UN R30, 6.1.2: D = d + 2 S Ra/100");

    /** The comparison at a speed shown of 10 to 300 km/h. */
    public static SizeComparison of(TyreSize placard, TyreSize other, double indicatedKmh) {
        check(Input.SPEED_SHOWN, indicatedKmh, 10, 300, "km/h");
        double ratio = other.rollingCircumferenceMm() / placard.rollingCircumferenceMm();
        var cautions = new ArrayList<Said>();
        boolean carriesEnough = carries(placard, other, cautions);
        if (ratio > 1) {
            cautions.add(Caution.SPEEDOMETER_SHOWS_LESS);
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
                new Explanation(
                        cautions,
                        List.of(
                                diameter(Computed.PLACARD_DIAMETER, placard),
                                diameter(Computed.OTHER_DIAMETER, other),
                                new Step(
                                        Computed.CIRCUMFERENCE_DIFFERENCE,
                                        Way.OTHER_BY_PLACARD,
                                        (ratio - 1) * 100,
                                        "%",
                                        GEOMETRY),
                                new Step(
                                        Computed.TRUE_SPEED,
                                        new TyreSaid.ShownTimes(Amount.significant(indicatedKmh, "km/h", 4)),
                                        indicatedKmh * ratio,
                                        "km/h",
                                        Origin.TURNS_OF_WHEEL),
                                new Step(Computed.TURNS_PER_KM, other.turnsFormula(), turns, "", Origin.ROLLING))));
    }

    private static Step diameter(Said what, TyreSize size) {
        return new Step(what, Said.verbatim(size.toString()), size.overallDiameterMm(), "mm", GEOMETRY);
    }

    private static boolean carries(TyreSize placardSize, TyreSize otherSize, List<Said> cautions) {
        if (!placardSize.sharesTables(otherSize)) {
            cautions.add(Caution.OTHER_TABLES);
            return false;
        }
        var placard = placardSize.service();
        var other = otherSize.service();
        if (placard == null || other == null) {
            cautions.add(Caution.SERVICE_NOT_JUDGED);
            return false;
        }
        boolean load = other.loadIndex().number() >= placard.loadIndex().number();
        boolean speed =
                other.speedSymbol().highestKmh() >= placard.speedSymbol().highestKmh();
        if (!load) {
            cautions.add(new TyreSaid.LoadIndexBelow(
                    other.loadIndex().number(), placard.loadIndex().number()));
        }
        if (!speed) {
            cautions.add(new TyreSaid.SpeedSymbolBelow(
                    other.speedSymbol().name(), placard.speedSymbol().name()));
        }
        return load && speed;
    }
}
