package cornerbook.core.wheelplan.search;

import cornerbook.core.corner.Corner;

/** The 24 ways to put four wheels to four corners, numbered in lexicographic order of the corners by wheel. */
final class Assignments {
    static final int WHEELS = Corner.values().length;
    static final int COUNT = 24;

    private static final int[][] CORNER_OF_WHEEL = all();
    private static final int[][] WHEEL_AT_CORNER = inverse();
    private static final int[][] MOVES = moves();

    private Assignments() {}

    /** Ordinal of the corner where a wheel stands. */
    static int corner(int assignment, int wheel) {
        return CORNER_OF_WHEEL[assignment][wheel];
    }

    /** Which wheel stands at a corner. */
    static int wheelAt(int assignment, int corner) {
        return WHEEL_AT_CORNER[assignment][corner];
    }

    /** How many wheels change their corner between two assignments. */
    static int moves(int from, int to) {
        return MOVES[from][to];
    }

    private static int[][] all() {
        var found = new int[COUNT][];
        int count = 0;
        for (int code = 0; code < 256; code++) {
            int[] corners = {code >> 6, code >> 4 & 3, code >> 2 & 3, code & 3};
            if ((1 << corners[0] | 1 << corners[1] | 1 << corners[2] | 1 << corners[3]) == 0b1111) {
                found[count++] = corners;
            }
        }
        return found;
    }

    private static int[][] inverse() {
        var wheelAt = new int[COUNT][WHEELS];
        for (int assignment = 0; assignment < COUNT; assignment++) {
            for (int wheel = 0; wheel < WHEELS; wheel++) {
                wheelAt[assignment][CORNER_OF_WHEEL[assignment][wheel]] = wheel;
            }
        }
        return wheelAt;
    }

    private static int[][] moves() {
        var moves = new int[COUNT][COUNT];
        for (int from = 0; from < COUNT; from++) {
            for (int to = 0; to < COUNT; to++) {
                for (int wheel = 0; wheel < WHEELS; wheel++) {
                    moves[from][to] += CORNER_OF_WHEEL[from][wheel] == CORNER_OF_WHEEL[to][wheel] ? 0 : 1;
                }
            }
        }
        return moves;
    }
}
