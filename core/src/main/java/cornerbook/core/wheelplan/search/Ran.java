package cornerbook.core.wheelplan.search;

import org.jspecify.annotations.Nullable;

/** What each wheel has run, as counts of a layout; of four wheels the fifth is 0. */
record Ran(long one, long two, long three, long four, long five) {
    /** 2^64 over the golden ratio, odd (Knuth, The Art of Computer Programming, volume 3, section 6.4). */
    static final long SPREAD = 0x9E3779B97F4A7C15L;

    static final Ran NOTHING = new Ran(0, 0, 0, 0, 0);

    /** With one season more under the assignment. */
    Ran more(CountLayout layout, int group, int assignment, SetNumbers numbers) {
        return new Ran(
                one + season(layout, group, assignment, 0, numbers),
                two + season(layout, group, assignment, 1, numbers),
                three + season(layout, group, assignment, 2, numbers),
                four + season(layout, group, assignment, 3, numbers),
                numbers.wheels > Assignments.CORNERS ? five + season(layout, group, assignment, 4, numbers) : 0);
    }

    /** With one season less under the assignment. */
    Ran less(CountLayout layout, int group, int assignment, SetNumbers numbers) {
        return new Ran(
                one - season(layout, group, assignment, 0, numbers),
                two - season(layout, group, assignment, 1, numbers),
                three - season(layout, group, assignment, 2, numbers),
                four - season(layout, group, assignment, 3, numbers),
                numbers.wheels > Assignments.CORNERS ? five - season(layout, group, assignment, 4, numbers) : 0);
    }

    /** As a record's, written out: it is asked for each N that is looked up, and the generated one is slower. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ran ran
                && one == ran.one
                && two == ran.two
                && three == ran.three
                && four == ran.four
                && five == ran.five;
    }

    /** Counts are small numbers in a few bits, which the hash of a record lets fall on each other; these are spread. */
    @Override
    public int hashCode() {
        long mixed = one;
        mixed = mixed * SPREAD + two;
        mixed = mixed * SPREAD + three;
        mixed = mixed * SPREAD + four;
        mixed = mixed * SPREAD + five;
        mixed *= SPREAD;
        return (int) (mixed >>> Integer.SIZE);
    }

    long counts(int wheel) {
        return switch (wheel) {
            case 0 -> one;
            case 1 -> two;
            case 2 -> three;
            case 3 -> four;
            default -> five;
        };
    }

    private static long season(CountLayout layout, int group, int assignment, int wheel, SetNumbers numbers) {
        return layout.one(group, numbers.classOf[Assignments.corner(assignment, wheel)]);
    }
}
