package cornerbook.app.calibration.fleet;

import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** The eight pads of a car, and how the shop cares for them. */
final class Brakes {
    private static final List<Spot> SIDES = List.of(Spot.INNER, Spot.OUTER);
    /** Of a car's pads together: some cars rust, whatever their use. */
    private static final double CARS_DIFFER = 0.5;

    private static final double REGENERATING = 0.35;
    /** Pads that seldom work are cleaned by nothing. Common practice, no source. */
    private static final double IDLE_RUSTS = 1.3;

    private static final double REPLACED_BELOW_MM = 3.2;
    private static final double KILO = 1000;

    private final Map<Corner, List<Pad>> pads = new EnumMap<>(Corner.class);
    private final double saltPerDay;
    private final double frictionShare;
    /** A car's guides are cleaned at every visit of this number. */
    private final int cleanedEvery;

    private int visits;

    Brakes(Body body, RandomGenerator random) {
        frictionShare = body.electric() ? REGENERATING : 1;
        saltPerDay = (body.electric() ? IDLE_RUSTS : 1) * Math.exp(CARS_DIFFER * random.nextGaussian());
        double habit = random.nextDouble();
        cleanedEvery = habit < 0.5 ? 2 : habit < 0.8 ? 4 : 8;
        for (var corner : Corner.values()) {
            double thicknessMm = random.nextDouble(5, Pad.NEW_MM);
            pads.put(corner, List.of(new Pad(thicknessMm, random), new Pad(thicknessMm, random)));
        }
    }

    void run(double km, double[] brakeKjPerKm, boolean salted) {
        pads.forEach((corner, ofCorner) -> {
            for (var pad : ofCorner) {
                pad.brake(km * brakeKjPerKm[corner.ordinal()] * frictionShare / 2 / KILO);
                if (salted) {
                    pad.rust(saltPerDay);
                }
            }
        });
    }

    void visit(Sheet sheet) {
        boolean clean = visits % cleanedEvery == 0;
        visits++;
        pads.forEach((corner, ofCorner) -> {
            boolean spent = false;
            boolean stuck = false;
            for (int side = 0; side < ofCorner.size(); side++) {
                var pad = ofCorner.get(side);
                spent |= sheet.read(corner, SIDES.get(side), pad) < REPLACED_BELOW_MM;
                stuck |= pad.isStuck();
            }
            if (spent) {
                ofCorner.forEach(Pad::replace);
                sheet.padsReplaced(corner);
            }
            if (spent || stuck || clean) {
                ofCorner.forEach(Pad::clean);
                sheet.cleaned(corner);
            }
        });
    }

    /** The day on which each pad would stick, left alone from now on; none for those that would never. */
    List<Integer> stickOn(int today, int[] saltDaysUntil) {
        var days = new ArrayList<Integer>();
        for (var ofCorner : pads.values()) {
            for (var pad : ofCorner) {
                // The first day until which there were so many salted ones.
                double salted = saltDaysUntil[today] + Math.ceil(pad.untilStuck() / saltPerDay);
                int found = Arrays.binarySearch(saltDaysUntil, (int) Math.min(salted, Integer.MAX_VALUE));
                while (found > 0 && saltDaysUntil[found - 1] == saltDaysUntil[found]) {
                    found--;
                }
                if (found >= 0) {
                    days.add(Math.max(found, today));
                }
            }
        }
        return List.copyOf(days);
    }
}
