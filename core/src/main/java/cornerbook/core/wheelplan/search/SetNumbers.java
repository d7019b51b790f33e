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
    /** By place: how a wheel there counts for the front pair being deeper than the rear pair. */
    private static final int[] FRONT_OVER_REAR = new int[Assignments.SPARE + 1];

    static {
        for (var corner : Corner.values()) {
            FRONT_OVER_REAR[corner.ordinal()] = corner.axle() == Axle.FRONT ? 1 : -1;
        }
    }

    /** Depth above the limit by wheel and groove, mm. */
    final double[][] slackMm;
    /** Wear rate by place and groove, mm per 1000 km. */
    final double[][] rate;

    /** Four, or five with one that lies as the spare. */
    final int wheels;
    /** How many there are of so many wheels. */
    final int assignments;

    final int grooves;
    final int seasons;
    /** Distance of each season, and the distance at which it starts, thousand km. */
    final double[] season;

    final double[] start;
    /** Assignment with the fewest moves from where the wheels ran last, and the moves to each assignment. */
    final int unmoved;

    final int[] firstMoves;
    /** Assignments that keep each tyre on its side and axle. */
    final int[] allowed;
    /** Corners with the same rates and the same allowed wheels are one class: where in it a wheel ran does not matter. */
    final int[] classOf;

    final int classes;
    final int[] classSize;
    /** Rate by class and groove, mm per 1000 km. */
    final double[][] classRate;
    /** Classes that each wheel may run in, and the class where it ran last, as bits. */
    final int[] classesFor;

    final int[] startClass;
    /** How much deeper the two front wheels together may be than the rear ones when fitted, mm. */
    final double mostFrontOverRearMm;

    private final boolean[][] mayStand;
    private final double sameAxleMm;
    private final double allWheelMm;

    SetNumbers(PlanRequest request) {
        var states = request.wheels();
        wheels = states.size();
        assignments = Assignments.count(wheels);
        firstMoves = new int[assignments];
        classOf = new int[wheels];
        classSize = new int[wheels];
        classesFor = new int[wheels];
        startClass = new int[wheels];
        mayStand = new boolean[wheels][wheels];
        grooves = states.getFirst().depthsMm().size();
        slackMm = new double[wheels][grooves];
        rate = new double[wheels][grooves];
        for (int i = 0; i < wheels; i++) {
            for (int g = 0; g < grooves; g++) {
                slackMm[i][g] = states.get(i).depthsMm().get(g) - request.limitMm();
                rate[i][g] = i == Assignments.SPARE ? 0 : request.rate(Corner.values()[i], g);
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
        for (int a = 0; a < assignments; a++) {
            for (int i = 0; i < wheels; i++) {
                int stands = startPlace(states.get(i), i);
                firstMoves[a] += stands < 0 || stands == Assignments.corner(a, i) ? 0 : 1;
            }
            least = firstMoves[a] < firstMoves[least] ? a : least;
        }
        unmoved = least;
        allowed = allowed(request);
        for (int a : allowed) {
            for (int i = 0; i < wheels; i++) {
                mayStand[i][Assignments.corner(a, i)] = true;
            }
        }
        classes = classify();
        classRate = new double[classes][];
        for (int c = 0; c < wheels; c++) {
            classRate[classOf[c]] = rate[c];
            for (int i = 0; i < wheels; i++) {
                classesFor[i] |= mayStand[i][c] ? 1 << classOf[c] : 0;
            }
        }
        for (int i = 0; i < wheels; i++) {
            int stands = startPlace(states.get(i), i);
            startClass[i] = stands < 0 ? 0 : 1 << classOf[stands];
        }
        var rules = request.rules();
        sameAxleMm = unlimitedWhenNull(rules.sameAxleMm());
        var allWheel = rules.allWheel();
        allWheelMm = unlimitedWhenNull(allWheel == null ? null : allWheel.depthMm());
        mostFrontOverRearMm = 2 * unlimitedWhenNull(rules.frontDeeperMm()) + TOLERANCE_MM;
    }

    /** Whether a groove is at its limit already. */
    boolean spent() {
        return Arrays.stream(slackMm).flatMapToDouble(Arrays::stream).anyMatch(slack -> slack <= 0);
    }

    /** Whether any rule looks at depths, so that the order of the seasons matters. */
    boolean rulesOnDepth() {
        return Math.min(mostFrontOverRearMm, Math.min(sameAxleMm, allWheelMm)) < Double.POSITIVE_INFINITY;
    }

    /** What a wheel in the class counts for the front wheels being deeper than the rear ones, or less where the class is on both. */
    double frontOverRear(int cornerClass, double leastMm) {
        double counts = Double.POSITIVE_INFINITY;
        for (int c = 0; c < wheels; c++) {
            if (classOf[c] == cornerClass) {
                counts = Math.min(counts, FRONT_OVER_REAR[c] * leastMm);
            }
        }
        return counts;
    }

    /** Whether the wheels may be fitted so; {@code leastMm} is each wheel's least groove above the limit. */
    boolean mayFit(int assignment, double[] leastMm) {
        double frontOverRear = 0;
        for (int i = 0; i < wheels; i++) {
            frontOverRear += FRONT_OVER_REAR[Assignments.corner(assignment, i)] * leastMm[i];
        }
        return frontOverRear <= mostFrontOverRearMm && withinDifferences(assignment, leastMm);
    }

    /** Whether depths keep the difference limits. */
    boolean withinDifferences(int assignment, double[] leastMm) {
        double front = leastMm[Assignments.wheelAt(assignment, 0)] - leastMm[Assignments.wheelAt(assignment, 1)];
        double rear = leastMm[Assignments.wheelAt(assignment, 2)] - leastMm[Assignments.wheelAt(assignment, 3)];
        return Math.max(Math.abs(front), Math.abs(rear)) <= sameAxleMm + TOLERANCE_MM
                && spreadOnCar(assignment, leastMm) <= allWheelMm + TOLERANCE_MM;
    }

    /** Distance until a groove reaches its limit, thousand km; never where nothing wears it. */
    static double reach(double slackMm, double rate) {
        return rate > 0 ? slackMm / rate : Double.POSITIVE_INFINITY;
    }

    /** Distance until the first groove reaches its limit, thousand km. */
    double reach(int assignment, double[][] depthMm) {
        double reach = Double.POSITIVE_INFINITY;
        for (int i = 0; i < wheels; i++) {
            double[] rates = rate[Assignments.corner(assignment, i)];
            for (int g = 0; g < grooves; g++) {
                reach = Math.min(reach, reach(depthMm[i][g], rates[g]));
            }
        }
        return reach;
    }

    /** Depths after a distance. */
    double[][] worn(int assignment, double[][] depthMm, double thousandKm) {
        var worn = new double[wheels][grooves];
        for (int i = 0; i < wheels; i++) {
            double[] rates = rate[Assignments.corner(assignment, i)];
            for (int g = 0; g < grooves; g++) {
                worn[i][g] = depthMm[i][g] - thousandKm * rates[g];
            }
        }
        return worn;
    }

    /** Each wheel's least groove. */
    static double[] least(double[][] depthMm) {
        var least = new double[depthMm.length];
        for (int i = 0; i < least.length; i++) {
            least[i] = Double.POSITIVE_INFINITY;
            for (double depth : depthMm[i]) {
                least[i] = Math.min(least[i], depth);
            }
        }
        return least;
    }

    /** Between the deepest and the shallowest of all wheels, the spare among them. */
    static double spread(double[] leastMm) {
        double low = Math.min(Math.min(leastMm[0], leastMm[1]), Math.min(leastMm[2], leastMm[3]));
        double high = Math.max(Math.max(leastMm[0], leastMm[1]), Math.max(leastMm[2], leastMm[3]));
        return leastMm.length == Assignments.CORNERS
                ? high - low
                : Math.max(high, leastMm[Assignments.SPARE]) - Math.min(low, leastMm[Assignments.SPARE]);
    }

    private double spreadOnCar(int assignment, double[] leastMm) {
        if (wheels == Assignments.CORNERS) {
            return spread(leastMm);
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int corner = 0; corner < Assignments.CORNERS; corner++) {
            double depth = leastMm[Assignments.wheelAt(assignment, corner)];
            low = Math.min(low, depth);
            high = Math.max(high, depth);
        }
        return high - low;
    }

    /** Place where a wheel ran last or lies; below 0 when it never ran. */
    private static int startPlace(WheelState wheel, int index) {
        if (index == Assignments.SPARE) {
            return index;
        }
        var last = wheel.lastCorner();
        return last == null ? -1 : last.ordinal();
    }

    private static double unlimitedWhenNull(@Nullable Double limitMm) {
        return limitMm == null ? Double.POSITIVE_INFINITY : limitMm;
    }

    private int[] allowed(PlanRequest request) {
        var found = new int[assignments];
        int count = 0;
        for (int a = 0; a < assignments; a++) {
            boolean keeps = true;
            for (int i = 0; i < wheels && keeps; i++) {
                int place = Assignments.corner(a, i);
                keeps = place == Assignments.SPARE || mayStand(request, i, Corner.values()[place]);
            }
            if (keeps) {
                found[count++] = a;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private boolean mayStand(PlanRequest request, int index, Corner corner) {
        var wheel = request.wheels().get(index);
        if (request.rules().directional() && wheel.directional() && corner.side() != sideOf(wheel, index)) {
            return false;
        }
        return !request.rules().size()
                || request.sizeAt()
                        .getOrDefault(corner.axle(), wheel.tyreSize())
                        .equals(wheel.tyreSize());
    }

    /** A tyre that never ran keeps the side where the least moving puts it; that of a spare is not known. */
    private @Nullable Side sideOf(WheelState wheel, int index) {
        var last = wheel.lastCorner();
        if (last != null) {
            return last.side();
        }
        int place = Assignments.corner(unmoved, index);
        return place == Assignments.SPARE ? null : Corner.values()[place].side();
    }

    private int classify() {
        int count = 0;
        for (int c = 0; c < wheels; c++) {
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
        for (int i = 0; i < wheels; i++) {
            if (mayStand[i][one] != mayStand[i][other]) {
                return false;
            }
        }
        return true;
    }
}
