package cornerbook.core.reread;

import org.jspecify.annotations.Nullable;

/**
 * How one person reads.
 *
 * @param person empty for all readings of which nobody noted who took them
 * @param pairs grooves read twice of which this person took one reading at least
 * @param repeatabilityMm standard deviation of this person's readings at one visit; null where too few were read twice by
 *     this person alone
 * @param offset how much more than the others on average; null where nothing of it is known
 */
public record PersonReads(
        String person,
        int pairs,
        @Nullable Double repeatabilityMm,
        @Nullable Offset offset) {
    /** From where on an offset is one that a stored tyre would be taken for another by. */
    public static final double MATTERS_FROM_MM = 0.3;

    /**
     * What a person reads more than the mean of the others.
     *
     * @param mm below 0 where it is less
     * @param errorMm within which it lies with 95 %
     */
    public record Offset(double mm, double errorMm) {
        public double lowMm() {
            return mm - errorMm;
        }

        public double highMm() {
            return mm + errorMm;
        }

        /** Whether the whole of where it may lie is beyond what matters. */
        public boolean matters() {
            return Math.abs(mm) - errorMm > MATTERS_FROM_MM;
        }
    }
}
