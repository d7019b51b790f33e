package cornerbook.core.wheelplan;

import java.util.List;

/**
 * One way to go on with a set: with or without new tyres at the start of one of the seasons asked for.
 *
 * @param kind which tyres are new
 * @param season the season, from 1, at whose start they are fitted; 0 for none
 * @param tags the wheels that get them, in order; empty for none
 * @param distanceKm from now until a groove reaches its limit, or to the end of the last season that the rules can be kept for
 * @param horizonKm the part of it within the seasons asked for
 * @param lasts whether that is all of them
 * @param endsByRules whether the rules end it, and not the tread
 * @param binding the rules that end it, each of which left out alone would let it go on; empty when only several would
 */
public record Replacement(
        Kind kind,
        int season,
        List<String> tags,
        double distanceKm,
        double horizonKm,
        boolean lasts,
        boolean endsByRules,
        List<Rule> binding) {
    /** Which tyres are new. */
    public enum Kind {
        NONE(0),
        /** That of any wheel, whichever makes the set run longest. */
        ONE_TYRE(1),
        FRONT_PAIR(2),
        REAR_PAIR(2),
        ALL_FOUR(4);

        private final int tyres;

        Kind(int tyres) {
            this.tyres = tyres;
        }

        /** How many tyres are bought. */
        public int tyres() {
            return tyres;
        }
    }

    public Replacement {
        tags = List.copyOf(tags);
        binding = List.copyOf(binding);
    }
}
