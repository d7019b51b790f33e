package cornerbook.core.brake.drag;

import cornerbook.core.brake.burnish.DiscBody;
import cornerbook.core.brake.drag.DragSaid.Caution;
import cornerbook.core.brake.drag.DragSaid.Computed;
import cornerbook.core.brake.drag.DragSaid.Input;
import cornerbook.core.brake.drag.DragSaid.Origin;
import cornerbook.core.brake.drag.DragSaid.Way;
import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Range;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
import cornerbook.core.why.Step;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the brakes of one axle take, from how warm their discs are after a drive. Stops warm both alike: what one is warmer by is
 * its excess, whatever the air and the driver did.
 *
 * @param hotterTakes what the hotter one takes in all, above the air; null where the air was not read
 * @param coolerTakes the same of the other
 * @param excess what the hotter one takes more than the other
 */
public record AxleDrag(
        Corner hotter,
        Corner cooler,
        double differenceK,
        @Nullable Drag hotterTakes,
        @Nullable Drag coolerTakes,
        Drag excess,
        Answer answer,
        Explanation explanation)
        implements Explained {
    /**
     * How far the discs of an axle may differ after a drive, 30 °F, and from where on one brake drags, 100 °F: technicians' training
     * library on thermal diagnosis of brakes. Which of the two is at fault, the temperatures alone do not tell.
     */
    public static final double EVENLY_WARM_K = 30 / 1.8;

    /** From here on no doubt is left that the two do not work alike. */
    public static final double DRAGS_K = 100 / 1.8;

    /** What the difference says. */
    public enum Answer {
        EVEN,
        MAY_DRAG,
        DRAGS
    }

    /** A disc and what an infrared thermometer read on it, −40 to 900 °C. */
    public record Read(Corner corner, double celsius) {
        public Read {
            Range.check(Input.DISC_TEMPERATURE, celsius, -40, 900, "°C");
        }
    }

    /**
     * The two brakes of an axle.
     *
     * @param diameterMm of both discs
     * @param airC −40 to 60 °C; null where it was not read
     * @throws IllegalArgumentException with one sentence, also when a disc is cooler than the air
     */
    public static AxleDrag of(
            DiscBody body, double diameterMm, DragDrive drive, Read left, Read right, @Nullable Double airC) {
        Range.checkKnown(Input.AIR, airC, -40, 60, "°C");
        var hotter = left.celsius() >= right.celsius() ? left : right;
        var cooler = left.celsius() >= right.celsius() ? right : left;
        if (airC != null && cooler.celsius() < airC) {
            throw new Refused(new DragSaid.CoolerThanAir(cooler.corner(), degrees(cooler.celsius()), degrees(airC)));
        }
        double differenceK = hotter.celsius() - cooler.celsius();
        var answer = answer(differenceK);
        var excess = Drag.of(body, diameterMm, drive, differenceK);
        return new AxleDrag(
                hotter.corner(),
                cooler.corner(),
                differenceK,
                airC == null ? null : Drag.of(body, diameterMm, drive, hotter.celsius() - airC),
                airC == null ? null : Drag.of(body, diameterMm, drive, cooler.celsius() - airC),
                excess,
                answer,
                new Explanation(cautions(answer), steps(body, diameterMm, drive, hotter, cooler, excess)));
    }

    /** What a difference between the discs of an axle says, K. */
    public static Answer answer(double differenceK) {
        return differenceK <= EVENLY_WARM_K ? Answer.EVEN : differenceK >= DRAGS_K ? Answer.DRAGS : Answer.MAY_DRAG;
    }

    private static List<Said> cautions(Answer answer) {
        var cautions = new ArrayList<Said>();
        if (answer == Answer.DRAGS) {
            cautions.add(Caution.DRAGS);
        }
        cautions.addAll(List.of(Caution.HOT_DISCS, Caution.READ_AT_ONCE, Caution.ROUGHLY));
        return cautions;
    }

    private static List<Step> steps(
            DiscBody body, double diameterMm, DragDrive drive, Read hotter, Read cooler, Drag excess) {
        var disc = new DragDisc(body, diameterMm);
        double least = disc.leastCoolingWPerK(drive.turnsPerMinute());
        double most = disc.mostCoolingWPerK(drive.speedMPerS());
        double differenceK = hotter.celsius() - cooler.celsius();
        var area = Amount.significant(body.coolingAreaM2(), "m²", 4);
        double facesM2 = Math.PI / 2 * Math.pow(diameterMm / 1000, 2) * (1 - 0.6 * 0.6);
        var steps = new ArrayList<Step>();
        steps.add(new Step(
                Computed.AREA,
                Formula.of(
                        "{} × π/2 × ({})² × (1 − 0.6²)",
                        Amount.significant(body.coolingAreaM2() / facesM2, "", 2),
                        Amount.significant(diameterMm / 1000, "m", 4)),
                body.coolingAreaM2(),
                "m²",
                Origin.DISC_GEOMETRY));
        steps.add(new Step(
                Computed.LEAST_COOLING,
                Formula.of("(1.3 + 0.0751 × {}) × {}", Amount.significant(drive.turnsPerMinute(), "", 4), area),
                least,
                "W/K",
                Origin.MEASURED_IN_VANES));
        steps.add(new Step(
                Computed.MOST_COOLING,
                Formula.of(
                        "h({}, {}) × {}",
                        Amount.significant(drive.speedKmh(), "km/h", 4),
                        Amount.significant(diameterMm, "mm", 4),
                        area),
                most,
                "W/K",
                Origin.IN_THE_WIND));
        steps.add(new Step(
                Computed.HEAT_CAPACITY,
                Formula.of(
                        "{} × {}",
                        Amount.significant(body.massKg(), "kg", 4),
                        Amount.significant(body.specificHeatJPerKgK(), "J/(kg·K)", 4)),
                body.heatCapacityJPerK(),
                "J/K",
                Origin.CAST_IRON));
        var minutes = drive.minutes();
        if (minutes != null) {
            steps.add(new Step(
                    Computed.LEAST_SHARE,
                    Formula.of(
                            "1 − e^(−{} × {} / {})",
                            Amount.significant(least, "W/K", 4),
                            Amount.significant(minutes, "min", 4),
                            Amount.significant(body.heatCapacityJPerK(), "J/K", 4)),
                    drive.shareOfSteady(least, body.heatCapacityJPerK()),
                    "",
                    Origin.HEAT_BALANCE));
        }
        steps.add(new Step(Computed.DIFFERENCE, Way.HOTTER_LESS_COOLER, differenceK, "K", Origin.AS_READ));
        steps.add(
                force(Computed.LEAST_FORCE, least, body, drive, excess.forceN().least(), differenceK));
        steps.add(force(Computed.MOST_FORCE, most, body, drive, excess.forceN().most(), differenceK));
        return steps;
    }

    private static Step force(
            Computed what, double coolingWPerK, DiscBody body, DragDrive drive, double forceN, double differenceK) {
        return new Step(
                what,
                Formula.of(
                        "3.6 × {} × {} / ({} × {}) / {}",
                        Amount.significant(coolingWPerK, "W/K", 4),
                        Amount.significant(differenceK, "K", 4),
                        Amount.significant(body.heatShare(), "", 4),
                        Amount.significant(drive.shareOfSteady(coolingWPerK, body.heatCapacityJPerK()), "", 4),
                        Amount.significant(drive.speedKmh(), "km/h", 4)),
                forceN,
                "N",
                Origin.HEAT_BALANCE);
    }

    private static Amount degrees(double celsius) {
        return Amount.exact(celsius, "°C");
    }
}
