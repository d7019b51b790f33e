package cornerbook.bench.wheelplan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import cornerbook.core.corner.Corner;
import cornerbook.core.wheelplan.PlanRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One request as a model over integers, for endings in one season. Depths are in picometres and distances in metres, so
 * that a rate of 1 µm per 1000 km is 1 pm per m and nothing is rounded but the distance, down to a metre.
 */
final class SolverModel {
    static final long PM_PER_MM = 1_000_000_000L;
    static final long METRES_PER_THOUSAND_KM = 1_000_000L;
    private static final long MOST_METRES = 200_000_000L;
    private static final long MOST_PM = 100 * PM_PER_MM;
    private static final int CORNERS = Corner.values().length;

    final CpModel model;
    /** Metres into the last season until the first groove reaches its limit. */
    final IntVar intoSeason;
    /** Depth between the deepest and the shallowest wheel then, pm. */
    final IntVar spread;

    final LinearExpr moves;
    private final PlanRequest request;
    private final int grooves;
    private final BoolVar[][][] stands;

    SolverModel(PlanRequest request, int lastSeason) {
        this(new CpModel(), request, lastSeason);
    }

    /** In a model that may have another set's too. */
    SolverModel(CpModel model, PlanRequest request, int lastSeason) {
        this.model = model;
        this.request = request;
        grooves = request.wheels().getFirst().depthsMm().size();
        boolean open = lastSeason == request.seasonsThousandKm().size() - 1;
        long season = metres(request.seasonsThousandKm().get(lastSeason));
        intoSeason = model.newIntVar(0, open ? MOST_METRES : season - 1, "into");
        stands = assignments(lastSeason);
        moves = moves(lastSeason);

        var depth = new LinearArgument[4][grooves];
        for (int i = 0; i < 4; i++) {
            for (int g = 0; g < grooves; g++) {
                depth[i][g] = LinearExpr.constant(
                        Math.round((request.wheels().get(i).depthsMm().get(g) - request.limitMm()) * PM_PER_MM));
            }
        }
        for (int s = 0; s < lastSeason; s++) {
            keepWhenFitted(s, least(depth));
            long distance = metres(request.seasonsThousandKm().get(s));
            for (int i = 0; i < 4; i++) {
                for (int g = 0; g < grooves; g++) {
                    var worn = LinearExpr.newBuilder().add(depth[i][g]);
                    for (int c = 0; c < CORNERS; c++) {
                        worn.addTerm(stands[s][i][c], -distance * rate(c, g));
                    }
                    depth[i][g] = worn.build();
                }
            }
            keepDifferences(s, least(depth));
        }
        keepWhenFitted(lastSeason, least(depth));
        var within = intoSeason;
        if (open) {
            within = model.newIntVar(0, season, "within");
            model.addMinEquality(within, new LinearArgument[] {intoSeason, LinearExpr.constant(season)});
        }
        keepDifferences(lastSeason, least(driven(lastSeason, depth, within)));
        var atLimit = least(driven(lastSeason, depth, intoSeason));
        var high = model.newIntVar(0, MOST_PM, "high");
        var low = model.newIntVar(0, MOST_PM, "low");
        model.addMaxEquality(high, atLimit);
        model.addMinEquality(low, atLimit);
        // The season ends where the first groove is at its limit, to within the last metre's wear, not before.
        model.addLessOrEqual(low, fastestRate());
        spread = model.newIntVar(0, MOST_PM, "spread");
        model.addEquality(
                spread, LinearExpr.newBuilder().add(high).addTerm(low, -1).build());
    }

    static long metres(double thousandKm) {
        return Math.round(thousandKm * METRES_PER_THOUSAND_KM);
    }

    private BoolVar[][][] assignments(int lastSeason) {
        var all = new BoolVar[lastSeason + 1][4][CORNERS];
        for (int s = 0; s <= lastSeason; s++) {
            for (int i = 0; i < 4; i++) {
                for (int c = 0; c < CORNERS; c++) {
                    all[s][i][c] = model.newBoolVar("s%d w%d c%d".formatted(s, i, c));
                    if (!mayStand(i, Corner.values()[c])) {
                        model.addEquality(all[s][i][c], 0);
                    }
                }
                model.addExactlyOne(all[s][i]);
            }
            for (int c = 0; c < CORNERS; c++) {
                model.addExactlyOne(new BoolVar[] {all[s][0][c], all[s][1][c], all[s][2][c], all[s][3][c]});
            }
        }
        return all;
    }

    private boolean mayStand(int wheel, Corner corner) {
        var state = request.wheels().get(wheel);
        var last = Objects.requireNonNull(state.lastCorner());
        boolean side = !request.rules().directional() || !state.directional() || last.side() == corner.side();
        boolean size = !request.rules().size()
                || request.sizeAt()
                        .getOrDefault(corner.axle(), state.tyreSize())
                        .equals(state.tyreSize());
        return side && size;
    }

    private LinearExpr moves(int lastSeason) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int i = 0; i < 4; i++) {
            var last = Objects.requireNonNull(request.wheels().get(i).lastCorner());
            sum.add(1).addTerm(stands[0][i][last.ordinal()], -1);
            for (int s = 1; s <= lastSeason; s++) {
                var moved = model.newBoolVar("moved s%d w%d".formatted(s, i));
                for (int c = 0; c < CORNERS; c++) {
                    model.addGreaterOrEqual(
                            LinearExpr.newBuilder()
                                    .add(moved)
                                    .addTerm(stands[s][i][c], -1)
                                    .add(stands[s - 1][i][c])
                                    .build(),
                            0);
                }
                sum.add(moved);
            }
        }
        return sum.build();
    }

    /** Depths after some metres under the last assignment, none below the limit. */
    private LinearArgument[][] driven(int season, LinearArgument[][] depth, IntVar metres) {
        var driven = new LinearArgument[4][grooves];
        for (int i = 0; i < 4; i++) {
            for (int g = 0; g < grooves; g++) {
                var left = model.newIntVar(0, MOST_PM, "left");
                for (int c = 0; c < CORNERS; c++) {
                    var worn = LinearExpr.newBuilder()
                            .add(left)
                            .addTerm(metres, rate(c, g))
                            .build();
                    model.addEquality(worn, depth[i][g]).onlyEnforceIf(stands[season][i][c]);
                }
                driven[i][g] = left;
            }
        }
        return driven;
    }

    private IntVar[] least(LinearArgument[][] depth) {
        var least = new IntVar[4];
        for (int i = 0; i < 4; i++) {
            least[i] = model.newIntVar(0, MOST_PM, "least");
            model.addMinEquality(least[i], depth[i]);
        }
        return least;
    }

    private void keepWhenFitted(int season, IntVar[] least) {
        keepDifferences(season, least);
        var frontDeeper = request.rules().frontDeeperMm();
        if (frontDeeper != null) {
            var at = atCorners(season, least);
            model.addLessOrEqual(
                    LinearExpr.newBuilder()
                            .add(at.get(0))
                            .add(at.get(1))
                            .addTerm(at.get(2), -1)
                            .addTerm(at.get(3), -1)
                            .build(),
                    2 * Math.round(frontDeeper * PM_PER_MM));
        }
    }

    private void keepDifferences(int season, IntVar[] least) {
        var allWheel = request.rules().allWheel();
        if (allWheel != null) {
            for (var one : least) {
                for (var other : least) {
                    atMost(one, other, Math.round(allWheel.depthMm() * PM_PER_MM));
                }
            }
        }
        var sameAxle = request.rules().sameAxleMm();
        if (sameAxle != null) {
            long limit = Math.round(sameAxle * PM_PER_MM);
            var at = atCorners(season, least);
            for (int left : new int[] {0, 2}) {
                atMost(at.get(left), at.get(left + 1), limit);
                atMost(at.get(left + 1), at.get(left), limit);
            }
        }
    }

    private void atMost(IntVar one, IntVar other, long limit) {
        model.addLessOrEqual(LinearExpr.newBuilder().add(one).addTerm(other, -1).build(), limit);
    }

    private List<IntVar> atCorners(int season, IntVar[] least) {
        var at = new ArrayList<IntVar>();
        for (int c = 0; c < CORNERS; c++) {
            var depth = model.newIntVar(0, MOST_PM, "at");
            for (int i = 0; i < 4; i++) {
                model.addEquality(depth, least[i]).onlyEnforceIf(stands[season][i][c]);
            }
            at.add(depth);
        }
        return at;
    }

    private long fastestRate() {
        long fastest = 0;
        for (int c = 0; c < CORNERS; c++) {
            for (int g = 0; g < grooves; g++) {
                fastest = Math.max(fastest, rate(c, g));
            }
        }
        return fastest;
    }

    private long rate(int corner, int groove) {
        var rates = Objects.requireNonNull(request.ratesMmPer1000Km().get(Corner.values()[corner]));
        return Math.round(rates.get(groove) * 1000);
    }
}
