package cornerbook.core.wheelplan.search;

/**
 * How many seasons a wheel ran in each corner class, packed into one long: a field for each class and each group of whole
 * seasons with the same distance, and one for the last season. One class is left out, because the counts of a group sum
 * to its seasons. Each field has a guard bit, so that four wheels' counts can be compared with what a class can take in
 * one subtraction.
 */
final class CountLayout {
    private final SetNumbers numbers;
    private final int groups;
    private final int[] groupOf;
    private final double[] distance;
    private final int leftOut;
    private final int[][] shift;
    private final int[][] mask;
    private final int[][] seasonsByLayer;
    private final long guards;
    private final long capacity;

    /** A layout for {@code whole} whole seasons and a last one. */
    CountLayout(SetNumbers numbers, int whole) {
        this.numbers = numbers;
        groupOf = new int[whole];
        distance = new double[whole];
        seasonsByLayer = new int[whole + 1][whole + 1];
        int found = 0;
        for (int s = 0; s < whole; s++) {
            int group = 0;
            while (group < found && distance[group] != numbers.season[s]) {
                group++;
            }
            if (group == found) {
                distance[found++] = numbers.season[s];
            }
            groupOf[s] = group;
            seasonsByLayer[s + 1] = seasonsByLayer[s].clone();
            seasonsByLayer[s + 1][group]++;
        }
        groups = found;
        int largest = 0;
        for (int c = 1; c < numbers.classes; c++) {
            largest = numbers.classSize[c] > numbers.classSize[largest] ? c : largest;
        }
        leftOut = largest;
        shift = new int[groups + 1][numbers.classes];
        mask = new int[groups + 1][numbers.classes];
        int used = 0;
        long guarded = 0;
        long full = 0;
        for (int group = 0; group <= groups; group++) {
            int seasons = group == groups ? 1 : seasonsByLayer[whole][group];
            for (int c = 0; c < numbers.classes; c++) {
                if (c != leftOut) {
                    int most = seasons * numbers.classSize[c];
                    int bits = Integer.SIZE - Integer.numberOfLeadingZeros(most);
                    shift[group][c] = used;
                    mask[group][c] = (1 << bits) - 1;
                    full |= (long) most << used;
                    guarded |= 1L << (used + bits);
                    used += bits + 1;
                }
            }
        }
        guards = guarded;
        capacity = full;
    }

    int wholeSeasons() {
        return groupOf.length;
    }

    int groups() {
        return groups;
    }

    int groupOf(int season) {
        return groupOf[season];
    }

    double distance(int group) {
        return distance[group];
    }

    int seasons(int layer, int group) {
        return seasonsByLayer[layer][group];
    }

    /** What all four wheels together have to take. */
    long capacity() {
        return capacity;
    }

    /** One season of the group in the class; the group after all others is the last season. */
    long one(int group, int cornerClass) {
        return cornerClass == leftOut ? 0 : 1L << shift[group][cornerClass];
    }

    /** Whether no count is greater than what remains. */
    boolean fits(long counts, long remaining) {
        return ((remaining | guards) - counts & guards) == guards;
    }

    /** How many of the group's seasons among the first {@code layer} the wheel ran in the class. */
    int count(long counts, int layer, int group, int cornerClass) {
        if (cornerClass != leftOut) {
            return (int) (counts >>> shift[group][cornerClass]) & mask[group][cornerClass];
        }
        int others = 0;
        for (int c = 0; c < numbers.classes; c++) {
            others += c == leftOut ? 0 : count(counts, layer, group, c);
        }
        return seasonsByLayer[layer][group] - others;
    }

    /** The classes that the wheel ran in during {@code layer} seasons, as bits. */
    int classesUsed(long counts, int layer) {
        int classes = 0;
        for (int group = 0; group < groups; group++) {
            for (int c = 0; c < numbers.classes; c++) {
                classes |= count(counts, layer, group, c) == 0 ? 0 : 1 << c;
            }
        }
        return classes;
    }

    /** Depths of the wheel above the limit after {@code layer} seasons, by groove, mm. */
    void depthsMm(int wheel, long counts, int layer, double[] into) {
        System.arraycopy(numbers.slackMm[wheel], 0, into, 0, numbers.grooves);
        for (int group = 0; group < groups; group++) {
            for (int c = 0; c < numbers.classes; c++) {
                double run = distance[group] * count(counts, layer, group, c);
                for (int g = 0; run != 0 && g < numbers.grooves; g++) {
                    into[g] -= run * numbers.classRate[c][g];
                }
            }
        }
    }
}
