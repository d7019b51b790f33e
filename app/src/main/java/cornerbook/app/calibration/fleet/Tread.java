package cornerbook.app.calibration.fleet;

import cornerbook.core.car.Tyre;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;

/** Four tyres that go on a car together, from the day that they were new. */
final class Tread {
    /** Tread rubber, kg/m³, and the tread that touches: 2 m around, 0.19 m wide, two thirds of it rubber. From memory. */
    private static final double GRAMS_PER_MM = 1150 * 2.0 * 0.19 * 0.66;
    /** Grams that a kJ of sliding takes off, chosen so that cars lose about 120 g in 1000 km on average (motoring club, 2021). */
    static final double GRAMS_PER_KJ = 0.0131;

    /** In the middle of its life a tread yields half in its belt and half in its blocks. Common practice, no source. */
    private static final double SHARE_OF_BLOCKS = 0.5;

    private static final double MIDDLE_MM = 5;
    private static final double MOULD_SD_MM = 0.15;
    /** How far the grooves of a sound tyre wear apart, of what they wear. Common practice, no source. */
    private static final double APART = 0.05;

    private static final double ALIKE = 0.01;

    private record Model(String name, double newDepthMm, double wears) {}

    private static final List<Model> SUMMER = List.of(
            new Model("Invented Sillage", 7.8, 1.12),
            new Model("Invented Velour", 8.0, 0.98),
            new Model("Invented Rocaille", 8.3, 0.88));
    private static final List<Model> WINTER = List.of(
            new Model("Invented Poudrerie", 8.6, 1.15),
            new Model("Invented Congère", 9.0, 1.02),
            new Model("Invented Frimas", 9.2, 0.92));

    private final WheelSet set;
    private final int bornDay;
    private final boolean wearSlows;
    private final double wears;
    /** Depth of each groove, and how it wears against the tyre's own. */
    private final double[][] depthMm = new double[Corner.values().length][Spot.values().length];

    private final double[][] grooveWears = new double[Corner.values().length][Spot.values().length];
    private Corner[] at = Corner.values();

    Tread(String carId, int number, SeasonKind season, int bornDay, Scenario scenario, RandomGenerator random) {
        var models = season == SeasonKind.WINTER ? WINTER : SUMMER;
        var model = models.get(random.nextInt(models.size()));
        this.bornDay = bornDay;
        wearSlows = scenario.has(Effect.WEAR_SLOWS);
        wears = model.wears() * Math.exp(0.04 * random.nextGaussian());
        boolean alike = scenario.has(Effect.GROOVES_ALIKE);
        for (int tyre = 0; tyre < depthMm.length; tyre++) {
            double mould = random.nextGaussian();
            for (int groove = 0; groove < depthMm[tyre].length; groove++) {
                double own = random.nextGaussian();
                depthMm[tyre][groove] = model.newDepthMm() + MOULD_SD_MM * (alike ? mould : own);
                grooveWears[tyre][groove] = Math.exp((alike ? ALIKE : APART) * random.nextGaussian());
            }
        }
        var wheels = new ArrayList<Wheel>();
        var letter = season == SeasonKind.WINTER ? "W" : "S";
        for (int tyre = 0; tyre < depthMm.length; tyre++) {
            wheels.add(new Wheel(
                    "%s-%s%s-%s".formatted(carId, letter, number, tyre + 1),
                    new Tyre(model.name(), "225/55R18", 98, "H", null, false, false, model.newDepthMm()),
                    null));
        }
        set = new WheelSet("%s-%s%s".formatted(carId, letter, number), season, "Rack", wheels);
    }

    private Tread(Tread other) {
        set = other.set;
        bornDay = other.bornDay;
        wearSlows = other.wearSlows;
        wears = other.wears;
        at = other.at;
        for (int tyre = 0; tyre < depthMm.length; tyre++) {
            depthMm[tyre] = other.depthMm[tyre].clone();
            grooveWears[tyre] = other.grooveWears[tyre];
        }
    }

    WheelSet set() {
        return set;
    }

    int bornDay() {
        return bornDay;
    }

    Corner cornerOf(int tyre) {
        return at[tyre];
    }

    double depthMm(int tyre, Spot groove) {
        return depthMm[tyre][groove.ordinal()];
    }

    /** Front to rear and rear to front on the same side. */
    void rotate() {
        var moved = new Corner[at.length];
        for (int tyre = 0; tyre < at.length; tyre++) {
            moved[tyre] = switch (at[tyre]) {
                case LF -> Corner.LR;
                case LR -> Corner.LF;
                case RF -> Corner.RR;
                case RR -> Corner.RF;
            };
        }
        at = moved;
    }

    /**
     * A day on the car.
     *
     * @param bitingKm distance, weighed with how the road bites
     * @param workKjPerKm by corner
     */
    void run(double bitingKm, double[] workKjPerKm) {
        for (int tyre = 0; tyre < depthMm.length; tyre++) {
            double grams = bitingKm * workKjPerKm[at[tyre].ordinal()] * GRAMS_PER_KJ * wears;
            var grooves = depthMm[tyre];
            for (int groove = 0; groove < grooves.length; groove++) {
                double yields = wearSlows ? 1 - SHARE_OF_BLOCKS + SHARE_OF_BLOCKS * grooves[groove] / MIDDLE_MM : 1;
                grooves[groove] =
                        Math.max(0, grooves[groove] - grams * yields * grooveWears[tyre][groove] / GRAMS_PER_MM);
            }
        }
    }

    /** Lowest groove, mm. */
    double lowestMm() {
        double lowest = Double.POSITIVE_INFINITY;
        for (var grooves : depthMm) {
            for (double depth : grooves) {
                lowest = Math.min(lowest, depth);
            }
        }
        return lowest;
    }

    /** The same tyres as they are now, to wear on by themselves. */
    Tread copy() {
        return new Tread(this);
    }

    List<Wheel> wheels() {
        return Collections.unmodifiableList(set.wheels());
    }
}
