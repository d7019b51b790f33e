package cornerbook.core.brake.pads;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The likely causes of what was seen at one corner, by Bayes' rule with signs taken as independent given the cause:
 * P(cause | signs) ∝ prior · Π P(sign | cause). A look that was not taken says nothing. The tables are {@link BrakeCause} and
 * {@link BrakeSign}. Signs of one cause go together more than the rule assumes, so a high probability is too high: it ranks
 * where to look first, and does not condemn a part.
 *
 * @param probabilities of every cause; they add up to 1
 */
public record BrakeDiagnosis(Map<BrakeCause, Double> probabilities) {
    /** What the corner has, and so what can fail. */
    public record Equipment(boolean slidingCaliper, boolean parkingBrake) {}

    /**
     * Causes that a hand has settled already: they are facts, and nothing is inferred of them. What is found explains the signs of
     * wear, so that another cause is inferred only from what it leaves unexplained.
     *
     * @param found that are there
     * @param disproved that are not
     */
    public record Settled(Set<BrakeCause> found, Set<BrakeCause> disproved) {
        public static final Settled NONE = new Settled(Set.of(), Set.of());

        public Settled {
            found = Set.copyOf(found);
            disproved = Set.copyOf(disproved);
        }

        private boolean isOpen(BrakeCause cause) {
            return !found.contains(cause) && !disproved.contains(cause);
        }

        /** How often a sign shows where nothing is wrong beside what was found. */
        private double percentWithoutMore(BrakeSign sign) {
            return Stream.concat(Stream.of(BrakeCause.NOTHING), found.stream())
                    .mapToDouble(sign::percentUnder)
                    .max()
                    .orElseThrow();
        }
    }

    public BrakeDiagnosis {
        probabilities = Map.copyOf(probabilities);
    }

    /** The diagnosis where no cause is settled. */
    public static BrakeDiagnosis of(Equipment equipment, Collection<BrakeSign> signs) {
        return of(equipment, signs, Settled.NONE);
    }

    /**
     * The diagnosis of what is not settled.
     *
     * @param signs at most one of each look
     * @throws IllegalArgumentException when two signs of one look contradict each other
     */
    public static BrakeDiagnosis of(Equipment equipment, Collection<BrakeSign> signs, Settled settled) {
        var looks = EnumSet.noneOf(BrakeSign.Look.class);
        for (var sign : signs) {
            if (!looks.add(sign.look())) {
                throw new IllegalArgumentException(
                        "two signs of the look %s, expected at most one".formatted(sign.look()));
            }
        }
        var weights = new EnumMap<BrakeCause, Double>(BrakeCause.class);
        double total = 0;
        for (var cause : BrakeCause.values()) {
            double weight = possible(cause, equipment) && settled.isOpen(cause) ? cause.priorPercent() : 0;
            for (var sign : signs) {
                weight *= (cause == BrakeCause.NOTHING ? settled.percentWithoutMore(sign) : sign.percentUnder(cause))
                        / 100;
            }
            weights.put(cause, weight);
            total += weight;
        }
        double all = total;
        weights.replaceAll((cause, weight) -> weight / all);
        return new BrakeDiagnosis(weights);
    }

    /** Probability of a cause. */
    public double probability(BrakeCause cause) {
        return probabilities.getOrDefault(cause, 0.0);
    }

    /** The likeliest. */
    public BrakeCause likeliest() {
        return ranked().findFirst().orElseThrow();
    }

    /** All causes that can be, likeliest first. */
    public Stream<BrakeCause> ranked() {
        return Stream.of(BrakeCause.values())
                .filter(cause -> probability(cause) > 0)
                .sorted(Comparator.comparingDouble(this::probability).reversed());
    }

    private static boolean possible(BrakeCause cause, Equipment equipment) {
        return switch (cause) {
            case SLIDE_PINS_SEIZED -> equipment.slidingCaliper();
            case PARKING_BRAKE_DRAGGING -> equipment.parkingBrake();
            default -> true;
        };
    }
}
