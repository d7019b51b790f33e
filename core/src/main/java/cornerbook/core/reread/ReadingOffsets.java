package cornerbook.core.reread;

import cornerbook.core.numeric.CholeskyFactor;
import cornerbook.core.numeric.StudentDistribution;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Offsets of persons and the spread of occasions, from the means of what was read twice:
 *
 * <pre>
 *   m_k = b_second − b_first + u_k,  Var u_k = τ² + s²/n_k                        (1)
 *   b by least squares, weighted with 1/(τ² + s²/n_k);  Σ b = 0 among persons who are compared at all   (2)
 *   τ² so that the weighted squares that are left are K − r, 0 where they are less at 0             (3)
 * </pre>
 *
 * s² is the variance of a difference within an occasion and τ² that of the occasions' means, K their number and r that of free
 * offsets. (3) is Paule and Mandel 1982, Journal of Research of the NBS 87:377, with offsets as in DerSimonian and Kacker 2007,
 * Contemporary Clinical Trials 28:105. The normal matrix of (2) is a graph's Laplacian, made regular by the means of its parts.
 */
final class ReadingOffsets {
    private static final double PROBABILITY = 0.95;
    private static final int HALVINGS = 80;

    private final List<ReadTwice> occasions;
    private final double withinMm2;
    private final List<String> persons;
    private final int[] part;
    private final int parts;
    private final double betweenMm2;
    private final double[] offsets;
    private final double[] covariance;

    /**
     * @param withinMm2 s² of (1)
     */
    ReadingOffsets(List<ReadTwice> occasions, List<String> persons, double withinMm2) {
        this.occasions = occasions;
        this.persons = persons;
        this.withinMm2 = withinMm2;
        part = parts();
        parts = (int) IntStream.of(part).distinct().count();
        betweenMm2 = freedom() > 0 ? between() : 0;
        covariance = covariance(betweenMm2);
        offsets = offsets(covariance, betweenMm2);
    }

    /** K − r of (3). */
    int freedom() {
        return occasions.size() - (persons.size() - parts);
    }

    /** τ² of (1), mm². */
    double betweenMm2() {
        return betweenMm2;
    }

    /** Which persons were compared with each other, straight or by others; the least index of each part. */
    private int[] parts() {
        var of = IntStream.range(0, persons.size()).toArray();
        for (var occasion : occasions) {
            int one = of[persons.indexOf(occasion.first())];
            int other = of[persons.indexOf(occasion.second())];
            for (int i = 0; i < of.length; i++) {
                if (of[i] == Math.max(one, other)) {
                    of[i] = Math.min(one, other);
                }
            }
        }
        return of;
    }

    private long inPart(int person) {
        return IntStream.of(part).filter(each -> each == part[person]).count();
    }

    private double weight(ReadTwice occasion, double between) {
        return 1 / (between + withinMm2 / occasion.differencesMm().size());
    }

    /** Inverse of the Laplacian with the mean of each part held, which leaves it as it is for all that sums to 0. */
    private double[] covariance(double between) {
        int size = persons.size();
        var normal = new double[size * size];
        for (var occasion : occasions) {
            int one = persons.indexOf(occasion.first());
            int other = persons.indexOf(occasion.second());
            if (one != other) {
                double weight = weight(occasion, between);
                normal[one * size + one] += weight;
                normal[other * size + other] += weight;
                normal[one * size + other] -= weight;
                normal[other * size + one] -= weight;
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                if (part[i] == part[j]) {
                    normal[i * size + j] += 1.0 / inPart(i);
                }
            }
        }
        return CholeskyFactor.nearest(normal, size).inverse();
    }

    private double[] offsets(double[] inverse, double between) {
        int size = persons.size();
        var right = new double[size];
        for (var occasion : occasions) {
            double weighted = weight(occasion, between) * occasion.meanMm();
            right[persons.indexOf(occasion.second())] += weighted;
            right[persons.indexOf(occasion.first())] -= weighted;
        }
        var solved = new double[size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                solved[i] += inverse[i * size + j] * right[j];
            }
        }
        return solved;
    }

    private double squaresLeft(double between) {
        var tried = offsets(covariance(between), between);
        double sum = 0;
        for (var occasion : occasions) {
            double left = occasion.meanMm()
                    - tried[persons.indexOf(occasion.second())]
                    + tried[persons.indexOf(occasion.first())];
            sum += weight(occasion, between) * left * left;
        }
        return sum;
    }

    private double between() {
        if (squaresLeft(0) <= freedom()) {
            return 0;
        }
        double high = 1e-6;
        while (squaresLeft(high) > freedom()) {
            high *= 4;
        }
        double low = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (squaresLeft(middle) > freedom()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Null where a person was compared with nobody, or nothing is left to tell the error from. */
    PersonReads.@Nullable Offset offset(String person) {
        int of = persons.indexOf(person);
        long others = inPart(of) - 1;
        if (others == 0 || freedom() < 1) {
            return null;
        }
        var contrast = new double[persons.size()];
        for (int i = 0; i < contrast.length; i++) {
            contrast[i] = i == of ? 1 : part[i] == part[of] ? -1.0 / others : 0;
        }
        double mm = 0;
        double variance = 0;
        for (int i = 0; i < contrast.length; i++) {
            mm += contrast[i] * offsets[i];
            for (int j = 0; j < contrast.length; j++) {
                variance += contrast[i] * covariance[i * contrast.length + j] * contrast[j];
            }
        }
        return new PersonReads.Offset(mm, StudentDistribution.within(PROBABILITY, freedom()) * Math.sqrt(variance));
    }

    /** Variance of persons, mm²: of their offsets less what the error of those adds; 0 where it is not more, null of one person. */
    @Nullable
    Double personsMm2() {
        int free = persons.size() - parts;
        if (free == 0) {
            return null;
        }
        double squares = 0;
        for (int i = 0; i < offsets.length; i++) {
            // What holds the mean of a part adds 1 over its number of persons to each of its variances.
            squares += offsets[i] * offsets[i] - covariance[i * offsets.length + i] + 1.0 / inPart(i);
        }
        return Math.max(0, squares / free);
    }

    /** All persons of these occasions, in alphabetical order. */
    static List<String> persons(List<ReadTwice> occasions) {
        var persons = new ArrayList<String>();
        occasions.forEach(occasion -> {
            persons.add(occasion.first());
            persons.add(occasion.second());
        });
        return persons.stream().distinct().sorted().toList();
    }
}
