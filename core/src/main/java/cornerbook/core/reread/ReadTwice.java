package cornerbook.core.reread;

import java.util.List;

/**
 * Grooves of a set that one person read at one visit and one person, the same or another, at a later one, unchanged between.
 *
 * @param first who read them first; empty where nobody noted it
 * @param second who read them again
 * @param differencesMm second less first reading, groove by groove
 */
public record ReadTwice(String first, String second, List<Double> differencesMm) {
    public ReadTwice {
        differencesMm = List.copyOf(differencesMm);
    }

    boolean bySamePerson() {
        return first.equals(second);
    }

    /** By how much the second reading is more than the first, on average; of one that has grooves. */
    public double meanMm() {
        return differencesMm.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** Sum of squares about the mean, mm². */
    double squaresMm2() {
        double mean = meanMm();
        return differencesMm.stream()
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
    }

    int freedom() {
        return differencesMm.size() - 1;
    }
}
