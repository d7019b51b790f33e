package cornerbook.core.wheelplan.search;

import java.util.Arrays;

/** Pairs of options of two wheels, looked up by what the two ran together; chained under a hash of it. */
final class OptionPairs {
    private static final int FIRST_CAPACITY = 1024;

    private long[] counts = new long[FIRST_CAPACITY];
    private int[] one = new int[FIRST_CAPACITY];
    private int[] other = new int[FIRST_CAPACITY];
    private int[] nextInChain = new int[FIRST_CAPACITY];
    private int[] chain = emptyChains(FIRST_CAPACITY);
    private int size;

    /** Adds a pair by the place of each option among its wheel's, and what the two ran together. */
    void add(int first, int second, long ran) {
        if (size == counts.length) {
            grow();
        }
        counts[size] = ran;
        one[size] = first;
        other[size] = second;
        hang(size++);
    }

    /** The first pair that ran so much; below 0 when there is none. */
    int first(long ran) {
        return like(chain[place(ran)], ran);
    }

    /** The pair after it that ran as much; below 0 when there is none. */
    int next(int pair, long ran) {
        return like(nextInChain[pair], ran);
    }

    /** Place of the first wheel's option. */
    int one(int pair) {
        return one[pair];
    }

    /** Place of the second wheel's option. */
    int other(int pair) {
        return other[pair];
    }

    private int like(int from, long ran) {
        int pair = from;
        while (pair >= 0 && counts[pair] != ran) {
            pair = nextInChain[pair];
        }
        return pair;
    }

    private void hang(int pair) {
        int place = place(counts[pair]);
        nextInChain[pair] = chain[place];
        chain[place] = pair;
    }

    private int place(long ran) {
        return (int) ((ran * Ran.SPREAD) >>> Integer.SIZE) & (chain.length - 1);
    }

    private void grow() {
        int capacity = 2 * counts.length;
        counts = Arrays.copyOf(counts, capacity);
        one = Arrays.copyOf(one, capacity);
        other = Arrays.copyOf(other, capacity);
        nextInChain = Arrays.copyOf(nextInChain, capacity);
        chain = emptyChains(capacity);
        for (int pair = 0; pair < size; pair++) {
            hang(pair);
        }
    }

    private static int[] emptyChains(int capacity) {
        var empty = new int[capacity];
        Arrays.fill(empty, -1);
        return empty;
    }
}
