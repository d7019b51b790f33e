package cornerbook.core.wheelplan;

/** What each of the four wheels has run, as counts of a layout. */
record Ran(long one, long two, long three, long four) {
    static final Ran NOTHING = new Ran(0, 0, 0, 0);

    /** With one season more under the assignment. */
    Ran more(CountLayout layout, int group, int assignment, SetNumbers numbers) {
        return new Ran(
                one + season(layout, group, assignment, 0, numbers),
                two + season(layout, group, assignment, 1, numbers),
                three + season(layout, group, assignment, 2, numbers),
                four + season(layout, group, assignment, 3, numbers));
    }

    /** With one season less under the assignment. */
    Ran less(CountLayout layout, int group, int assignment, SetNumbers numbers) {
        return new Ran(
                one - season(layout, group, assignment, 0, numbers),
                two - season(layout, group, assignment, 1, numbers),
                three - season(layout, group, assignment, 2, numbers),
                four - season(layout, group, assignment, 3, numbers));
    }

    /** Whether one of the first {@code layer} seasons may have been run under the assignment. */
    boolean has(CountLayout layout, int layer, int group, int assignment, SetNumbers numbers) {
        for (int i = 0; i < Assignments.WHEELS; i++) {
            int cornerClass = numbers.classOf[Assignments.corner(assignment, i)];
            if (layout.count(counts(i), layer, group, cornerClass) == 0) {
                return false;
            }
        }
        return true;
    }

    double[] leastMm(CountLayout layout, int layer) {
        var least = new double[Assignments.WHEELS];
        for (int i = 0; i < least.length; i++) {
            least[i] = layout.leastMm(i, counts(i), layer);
        }
        return least;
    }

    private long counts(int wheel) {
        return switch (wheel) {
            case 0 -> one;
            case 1 -> two;
            case 2 -> three;
            default -> four;
        };
    }

    private static long season(CountLayout layout, int group, int assignment, int wheel, SetNumbers numbers) {
        return layout.one(group, numbers.classOf[Assignments.corner(assignment, wheel)]);
    }
}
