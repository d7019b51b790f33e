package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Corner;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The ways to put wheels to places: four to the corners, or five to the corners and the place of the spare. They are numbered in
 * lexicographic order of the places by wheel, those first that leave the fifth wheel as the spare: the first 24 are those of four.
 */
final class Assignments {
    /** Places where a wheel rolls, numbered as the constants of {@link Corner}. */
    static final int CORNERS = Corner.values().length;
    /** Place of the spare; the fifth wheel of a request lies there before its first season. */
    static final int SPARE = CORNERS;

    private static final int PLACES = CORNERS + 1;
    private static final int[][] PLACE_OF_WHEEL = all();
    private static final int[][] WHEEL_AT_PLACE = inverse();
    private static final int[][] MOVES = moves();

    private Assignments() {}

    /** How many there are. */
    static int count(int wheels) {
        return IntStream.rangeClosed(2, wheels).reduce(1, (one, other) -> one * other);
    }

    /** Ordinal of the corner where a wheel stands, or the place of the spare. */
    static int corner(int assignment, int wheel) {
        return PLACE_OF_WHEEL[assignment][wheel];
    }

    /** Which wheel stands at a corner. */
    static int wheelAt(int assignment, int corner) {
        return WHEEL_AT_PLACE[assignment][corner];
    }

    /** How many wheels change their place between two assignments. */
    static int moves(int from, int to) {
        return MOVES[from][to];
    }

    private static int[][] all() {
        return IntStream.range(0, (int) Math.pow(PLACES, PLACES))
                .mapToObj(Assignments::digits)
                .filter(places -> IntStream.of(places).distinct().count() == PLACES)
                .sorted(Comparator.comparing((int[] places) -> places[SPARE] != SPARE))
                .toArray(int[][]::new);
    }

    private static int[] digits(int code) {
        var digits = new int[PLACES];
        int rest = code;
        for (int i = PLACES - 1; i >= 0; i--) {
            digits[i] = rest % PLACES;
            rest /= PLACES;
        }
        return digits;
    }

    private static int[][] inverse() {
        var wheelAt = new int[PLACE_OF_WHEEL.length][PLACES];
        for (int assignment = 0; assignment < wheelAt.length; assignment++) {
            for (int wheel = 0; wheel < PLACES; wheel++) {
                wheelAt[assignment][PLACE_OF_WHEEL[assignment][wheel]] = wheel;
            }
        }
        return wheelAt;
    }

    private static int[][] moves() {
        int count = PLACE_OF_WHEEL.length;
        var moves = new int[count][count];
        for (int from = 0; from < count; from++) {
            for (int to = 0; to < count; to++) {
                for (int wheel = 0; wheel < PLACES; wheel++) {
                    moves[from][to] += PLACE_OF_WHEEL[from][wheel] == PLACE_OF_WHEEL[to][wheel] ? 0 : 1;
                }
            }
        }
        return moves;
    }
}
