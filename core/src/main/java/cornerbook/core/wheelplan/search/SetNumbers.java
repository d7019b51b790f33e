package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Side;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.WheelState;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** A request as bare numbers for the search: wheels, corners, grooves and seasons by their index. */
final class SetNumbers {
    static final double TOLERANCE_MM = 1e-9;
    private static final double SAME_RATE = 1e-12;
    private static final int WHEELS = Assignments.WHEELS;
    /** By corner. */
    private static final boolean[] REAR = new boolean[WHEELS];

    static {
        for (var corner : Corner.values()) {
            REAR[corner.ordinal()] = corner.axle() == Axle.REAR;
        }
    }

    /** Depth above the limit by wheel and groove, mm. */
    final double[][] slackMm;
    /** Wear rate by corner and groove, mm per 1000 km. */
    final double[][] rate;

    final int grooves;
    final int seasons;
    /** Distance of each season, and the distance at which it starts, thousand km. */
    final double[] season;

    final double[] start;
    /** Assignment with the fewest moves from where the wheels ran last, and the moves to each assignment. */
    final int unmoved;

    final int[] firstMoves = new int[Assignments.COUNT];
    /** Assignments that keep each tyre on its side and axle. */
    final int[] allowed;
    /** Corners with the same rates and the same allowed wheels are one class: where in it a wheel ran does not matter. */
    final int[] classOf = new int[WHEELS];

    final int classes;
    final int[] classSize = new int[WHEELS];
    /** Rate by class and groove, mm per 1000 km. */
    final double[][] classRate;
    /** Classes that each wheel may run in, and the class where it ran last, as bits. */
    final int[] classesFor = new int[WHEELS];

    final int[] startClass = new int[WHEELS];
    private final boolean[][] mayStand = new boolean[WHEELS][WHEELS];
    private final double sameAxleMm;
    private final double allWheelMm;
    private final double frontDeeperMm;

    SetNumbers(PlanRequest request) {
        var wheels = request.wheels();
        var corners = Corner.values();
        grooves = wheels.getFirst().depthsMm().size();
        slackMm = new double[WHEELS][grooves];
        rate = new double[WHEELS][grooves];
        for (int i = 0; i < WHEELS; i++) {
            for (int g = 0; g < grooves; g++) {
                slackMm[i][g] = wheels.get(i).depthsMm().get(g) - request.limitMm();
                rate[i][g] = request.rate(corners[i], g);
            }
        }
        seasons = request.seasonsThousandKm().size();
        season = request.seasonsThousandKm().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        start = new double[seasons];
        for (int s = 1; s < seasons; s++) {
            start[s] = start[s - 1] + season[s - 1];
        }
        int least = 0;
        for (int a = 0; a < Assignments.COUNT; a++) {
            for (int i = 0; i < WHEELS; i++) {
                var last = wheels.get(i).lastCorner();
                firstMoves[a] += last == null || last == corners[Assignments.corner(a, i)] ? 0 : 1;
            }
            least = firstMoves[a] < firstMoves[least] ? a : least;
        }
        unmoved = least;
        allowed = allowed(request);
        for (int a : allowed) {
            for (int i = 0; i < WHEELS; i++) {
                mayStand[i][Assignments.corner(a, i)] = true;
            }
        }
        classes = classify();
        classRate = new double[classes][];
        for (int c = 0; c < WHEELS; c++) {
            classRate[classOf[c]] = rate[c];
            for (int i = 0; i < WHEELS; i++) {
                classesFor[i] |= mayStand[i][c] ? 1 << classOf[c] : 0;
            }
        }
        for (int i = 0; i < WHEELS; i++) {
            var last = wheels.get(i).lastCorner();
            startClass[i] = last == null ? 0 : 1 << classOf[last.ordinal()];
        }
        var rules = request.rules();
        sameAxleMm = unlimitedWhenNull(rules.sameAxleMm());
        var allWheel = rules.allWheel();
        allWheelMm = unlimitedWhenNull(allWheel == null ? null : allWheel.depthMm());
        frontDeeperMm = unlimitedWhenNull(rules.frontDeeperMm());
    }

    /** Whether a groove is at its limit already. */
    boolean spent() {
        return Arrays.stream(slackMm).flatMapToDouble(Arrays::stream).anyMatch(slack -> slack <= 0);
    }

    /** Whether any rule looks at depths, so that the order of the seasons matters. */
    boolean rulesOnDepth() {
        return Math.min(frontDeeperMm, Math.min(sameAxleMm, allWheelMm)) < Double.POSITIVE_INFINITY;
    }

    /** Whether the wheels may be fitted so; {@code leastMm} is each wheel's least groove above the limit. */
    boolean mayFit(int assignment, double[] leastMm) {
        double frontOverRear = 0;
        for (int i = 0; i < WHEELS; i++) {
            frontOverRear += REAR[Assignments.corner(assignment, i)] ? -leastMm[i] : leastMm[i];
        }
        return frontOverRear <= 2 * frontDeeperMm + TOLERANCE_MM && withinDifferences(assignment, leastMm);
    }

    /** Whether depths keep the difference limits. */
    boolean withinDifferences(int assignment, double[] leastMm) {
        double front = leastMm[Assignments.wheelAt(assignment, 0)] - leastMm[Assignments.wheelAt(assignment, 1)];
        double rear = leastMm[Assignments.wheelAt(assignment, 2)] - leastMm[Assignments.wheelAt(assignment, 3)];
        return Math.max(Math.abs(front), Math.abs(rear)) <= sameAxleMm + TOLERANCE_MM
                && spread(leastMm) <= allWheelMm + TOLERANCE_MM;
    }

    /** Distance until the first groove reaches its limit, thousand km. */
    double reach(int assignment, double[][] depthMm) {
        double reach = Double.POSITIVE_INFINITY;
        for (int i = 0; i < WHEELS; i++) {
            double[] rates = rate[Assignments.corner(assignment, i)];
            for (int g = 0; g < grooves; g++) {
                reach = Math.min(reach, depthMm[i][g] / rates[g]);
            }
        }
        return reach;
    }

    /** Depths after a distance. */
    double[][] worn(int assignment, double[][] depthMm, double thousandKm) {
        var worn = new double[WHEELS][grooves];
        for (int i = 0; i < WHEELS; i++) {
            double[] rates = rate[Assignments.corner(assignment, i)];
            for (int g = 0; g < grooves; g++) {
                worn[i][g] = depthMm[i][g] - thousandKm * rates[g];
            }
        }
        return worn;
    }

    /** Each wheel's least groove. */
    static double[] least(double[][] depthMm) {
        var least = new double[WHEELS];
        for (int i = 0; i < WHEELS; i++) {
            least[i] = Double.POSITIVE_INFINITY;
            for (double depth : depthMm[i]) {
                least[i] = Math.min(least[i], depth);
            }
        }
        return least;
    }

    static double spread(double[] leastMm) {
        double low = Math.min(Math.min(leastMm[0], leastMm[1]), Math.min(leastMm[2], leastMm[3]));
        double high = Math.max(Math.max(leastMm[0], leastMm[1]), Math.max(leastMm[2], leastMm[3]));
        return high - low;
    }

    private static double unlimitedWhenNull(@Nullable Double limitMm) {
        return limitMm == null ? Double.POSITIVE_INFINITY : limitMm;
    }

    private int[] allowed(PlanRequest request) {
        var found = new int[Assignments.COUNT];
        int count = 0;
        for (int a = 0; a < Assignments.COUNT; a++) {
            boolean keeps = true;
            for (int i = 0; i < WHEELS && keeps; i++) {
                var wheel = request.wheels().get(i);
                var corner = Corner.values()[Assignments.corner(a, i)];
                if (request.rules().directional() && wheel.directional()) {
                    keeps = corner.side() == sideOf(wheel, i);
                }
                if (request.rules().size()) {
                    keeps &= request.sizeAt()
                            .getOrDefault(corner.axle(), wheel.tyreSize())
                            .equals(wheel.tyreSize());
                }
            }
            if (keeps) {
                found[count++] = a;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** A tyre that never ran keeps the side where the least moving puts it. */
    private Side sideOf(WheelState wheel, int index) {
        var last = wheel.lastCorner();
        return last != null ? last.side() : Corner.values()[Assignments.corner(unmoved, index)].side();
    }

    private int classify() {
        int count = 0;
        for (int c = 0; c < WHEELS; c++) {
            int like = 0;
            while (like < c && !alike(like, c)) {
                like++;
            }
            classOf[c] = like < c ? classOf[like] : count++;
            classSize[classOf[c]]++;
        }
        return count;
    }

    private boolean alike(int one, int other) {
        for (int g = 0; g < grooves; g++) {
            if (Math.abs(rate[one][g] - rate[other][g]) > SAME_RATE) {
                return false;
            }
        }
        for (int i = 0; i < WHEELS; i++) {
            if (mayStand[i][one] != mayStand[i][other]) {
                return false;
            }
        }
        return true;
    }
}
