package cornerbook.core.reread;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How well a shop reads tread depths, in the terms of ISO 5725-1, with persons for its laboratories:
 *
 * <pre>
 *   repeatability variance    s_r² = Σ_k Σ_i (D_ki − m_k)²/Σ_k (n_k − 1)/2     of one person at one visit      (1)
 *   variance of occasions    τ²/2                                 one person at different visits
 *   reproducibility variance   s_R² = s_r² + τ²/2 + variance of persons       any person at any visit
 *   two readings lie within 2.8 s of each other in 95 of 100                          (2)
 * </pre>
 *
 * D are differences of two readings of a groove, so that each variance of theirs is twice that of a reading; what the grooves are
 * themselves falls out. τ² and the persons as {@link ReadingOffsets} has them; (2) is ISO 5725-6, from memory, 1.96 √2. Assumes that
 * an unchanged groove has not changed, and that its two readings err independently.
 *
 * @param pairs grooves read twice
 * @param leftOut pairs that differ by so much that another wheel or a slip is likelier than an error of reading
 * @param occasionsMm square root of τ²/2; null where too few sets were read twice
 * @param personsMm standard deviation of what persons read more or less; null where fewer than two were compared
 * @param persons in alphabetical order
 */
public record ReadingStudy(
        int pairs,
        int occasions,
        int leftOut,
        double repeatabilityMm,
        @Nullable Double occasionsMm,
        @Nullable Double personsMm,
        List<PersonReads> persons) {
    /** Two readings of one groove that differ by more are no readings of it. Common practice, no source. */
    public static final double SLIP_FROM_MM = 1.0;

    /** Square root of 2 times 1.96, as ISO 5725-6 rounds it. */
    private static final double LIMIT_FACTOR = 2.8;

    /** Fewer pairs beyond the first of each occasion tell nothing of a spread. */
    private static final int LEAST_FREEDOM = 3;

    /** Readings in tenths of a millimetre that all agree err by less than a tenth, and not by nothing. */
    private static final double LEAST_VARIANCE_MM2 = 2 * 0.1 * 0.1 / 12;

    public ReadingStudy {
        persons = List.copyOf(persons);
    }

    /** Null where too little was read twice. */
    public static @Nullable ReadingStudy find(List<ReadTwice> all) {
        var occasions = all.stream()
                .map(ReadingStudy::withoutSlips)
                .filter(occasion -> !occasion.differencesMm().isEmpty())
                .toList();
        int freedom = freedom(occasions.stream());
        if (freedom < LEAST_FREEDOM) {
            return null;
        }
        double withinMm2 = squares(occasions.stream()) / freedom;
        var names = ReadingOffsets.persons(occasions);
        var offsets = new ReadingOffsets(occasions, names, Math.max(withinMm2, LEAST_VARIANCE_MM2));
        var persons = new ArrayList<PersonReads>();
        for (var name : names) {
            persons.add(new PersonReads(
                    name, pairsOf(name, occasions), repeatabilityMm(name, occasions), offsets.offset(name)));
        }
        var personsMm2 = offsets.personsMm2();
        return new ReadingStudy(
                count(occasions),
                occasions.size(),
                count(all) - count(occasions),
                Math.sqrt(withinMm2 / 2),
                offsets.freedom() < 1 ? null : Double.valueOf(Math.sqrt(offsets.betweenMm2() / 2)),
                personsMm2 == null ? null : Double.valueOf(Math.sqrt(personsMm2)),
                persons);
    }

    private static ReadTwice withoutSlips(ReadTwice occasion) {
        return new ReadTwice(
                occasion.first(),
                occasion.second(),
                occasion.differencesMm().stream()
                        .filter(difference -> Math.abs(difference) <= SLIP_FROM_MM)
                        .toList());
    }

    private static int count(List<ReadTwice> occasions) {
        return occasions.stream()
                .mapToInt(occasion -> occasion.differencesMm().size())
                .sum();
    }

    private static int pairsOf(String name, List<ReadTwice> occasions) {
        return count(occasions.stream()
                .filter(occasion ->
                        occasion.first().equals(name) || occasion.second().equals(name))
                .toList());
    }

    /** (1) of the occasions that one person read both times. */
    private static @Nullable Double repeatabilityMm(String name, List<ReadTwice> occasions) {
        var own = occasions.stream()
                .filter(occasion -> occasion.bySamePerson() && occasion.first().equals(name))
                .toList();
        int freedom = freedom(own.stream());
        return freedom < LEAST_FREEDOM ? null : Math.sqrt(squares(own.stream()) / freedom / 2);
    }

    private static double squares(Stream<ReadTwice> occasions) {
        return occasions.mapToDouble(ReadTwice::squaresMm2).sum();
    }

    private static int freedom(Stream<ReadTwice> occasions) {
        return occasions.mapToInt(ReadTwice::freedom).sum();
    }

    /** Square root of s_R²; of what is not known nothing is added. */
    public double reproducibilityMm() {
        return Math.sqrt(square(repeatabilityMm) + square(occasionsMm) + square(personsMm));
    }

    private static double square(@Nullable Double value) {
        return value == null ? 0 : value * value;
    }

    /** (2). */
    static double limitMm(double standardDeviationMm) {
        return LIMIT_FACTOR * standardDeviationMm;
    }

    /** Two readings of a groove by one person at one visit lie within this in 95 of 100. */
    public double repeatabilityLimitMm() {
        return limitMm(repeatabilityMm);
    }

    /** The same of any two persons at any two visits. */
    public double reproducibilityLimitMm() {
        return limitMm(reproducibilityMm());
    }
}
