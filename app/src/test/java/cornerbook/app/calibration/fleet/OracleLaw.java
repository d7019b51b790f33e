package cornerbook.app.calibration.fleet;

import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.util.Arrays;
import java.util.Objects;

/** The simulator's own laws as the sampler needs them, read off its code, so that no number of it stands twice. */
final class OracleLaw {
    private static final int MODELS = 3;
    /** Normal numbers that a set of tyres asks for: its own wear, and of each tyre its mould and of each groove two. */
    private static final int NORMALS_OF_TREAD = 1 + Corner.values().length * (1 + 2 * Spot.values().length);

    private static final double SMALL = 1e-3;

    private OracleLaw() {}

    /** What a kind of tyre does: mm in a kJ·km of an ordinary place, and how each normal number shifts it. */
    record TreadLaw(
            double newMm,
            double mmPerKj,
            double ofSet,
            double mouldMm,
            double ofGroove,
            double yieldsAtNothing,
            double yieldsPerMm) {
        /** Depth after so many mm of wear at a yield of 1. */
        double worn(double startMm, double amountMm) {
            if (startMm <= 0) {
                return 0;
            }
            double left = yieldsPerMm == 0
                    ? startMm - amountMm
                    : (startMm + yieldsAtNothing / yieldsPerMm) * Math.exp(-yieldsPerMm * amountMm)
                            - yieldsAtNothing / yieldsPerMm;
            return Math.max(0, left);
        }
    }

    static TreadLaw tread(WheelSet set, Scenario scenario) {
        for (int model = 0; model < MODELS; model++) {
            double place = (model + 0.5) / MODELS;
            var plain = tread(set, scenario, place, new double[NORMALS_OF_TREAD]);
            if (Objects.equals(
                    plain.wheels().getFirst().tyre().model(),
                    set.wheels().getFirst().tyre().model())) {
                return read(set, scenario, place, plain);
            }
        }
        throw new IllegalArgumentException("no tyre of the simulator: " + set.id());
    }

    private static TreadLaw read(WheelSet set, Scenario scenario, double place, Tread plain) {
        double newMm = plain.depthMm(0, Spot.INNER);
        var wearsMore = new double[NORMALS_OF_TREAD];
        wearsMore[0] = 1;
        var deeper = new double[NORMALS_OF_TREAD];
        deeper[1] = 1;
        deeper[2] = 1;
        var groove = new double[NORMALS_OF_TREAD];
        groove[3] = 1;
        double atNew = loss(plain);
        double ofSet = Math.log(loss(tread(set, scenario, place, wearsMore)) / atNew);
        double ofGroove = Math.log(loss(tread(set, scenario, place, groove)) / atNew);
        var deep = tread(set, scenario, place, deeper);
        // Mould and own are never both in use.
        double mouldMm = deep.depthMm(0, Spot.INNER) - newMm;
        // The loss is straight in depth.
        double perMm = (loss(deep) - atNew) / mouldMm;
        boolean slows = scenario.has(Effect.WEAR_SLOWS);
        return new TreadLaw(
                newMm,
                atNew,
                ofSet,
                mouldMm,
                ofGroove,
                slows ? (atNew - perMm * newMm) / atNew : 1,
                slows ? perMm / atNew : 0);
    }

    private static Tread tread(WheelSet set, Scenario scenario, double model, double[] normals) {
        return new Tread("law", 1, set.season(), 0, scenario, new OracleLatents(normals, model));
    }

    /** mm in a kJ for a km. */
    private static double loss(Tread tread) {
        var worn = tread.copy();
        var work = new double[Corner.values().length];
        Arrays.fill(work, 1);
        worn.run(SMALL / Tread.GRAMS_PER_KJ, work);
        return (tread.depthMm(0, Spot.INNER) - worn.depthMm(0, Spot.INNER)) / SMALL * Tread.GRAMS_PER_KJ;
    }

    static Body body(DriveLayout drive, boolean electric, double... normals) {
        double which = drive == DriveLayout.FRONT ? 0.3 : drive == DriveLayout.ALL ? 0.75 : 0.95;
        return Body.any(new OracleLatents(normals, which, electric ? 0 : 0.9));
    }

    static Driver driver(double... normals) {
        return Driver.any(new OracleLatents(normals));
    }

    /** Log of how much rougher, and how much warmer, by one standard deviation a place bites. */
    static double[] ofPlace() {
        var usual = place(0, 0);
        return new double[] {
            Math.log(place(1, 0).bite(1) / usual.bite(1)), Math.log(place(0, 1).bite(1) / usual.bite(1))
        };
    }

    static Place place(double rough, double warm) {
        return Place.any(new OracleLatents(new double[] {rough, warm}, 0));
    }

    static SeasonKind other(SeasonKind kind) {
        return kind == SeasonKind.SUMMER ? SeasonKind.WINTER : SeasonKind.SUMMER;
    }
}
