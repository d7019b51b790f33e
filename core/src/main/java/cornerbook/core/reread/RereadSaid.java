package cornerbook.core.reread;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What is said of how well people read. */
public interface RereadSaid extends Said {
    /** Sentences without facts. */
    enum Plainly implements RereadSaid {
        TOO_FEW
    }

    /** What the study rests on. */
    record RestsOn(int pairs, int occasions, int leftOut) implements RereadSaid {}

    /** One person at one visit. */
    record Repeats(Amount limit) implements RereadSaid {}

    /** By how much all of a person's readings shift from one visit to another. */
    record OverVisits(Amount limit) implements RereadSaid {}

    /** Any two persons at any two visits. */
    record Reproduces(Amount limit) implements RereadSaid {}

    /**
     * How one person reads.
     *
     * @param person null where nobody noted who
     * @param limit within which two of their readings at one visit lie; null where too few were read twice by this person alone
     */
    record OfPerson(
            @Nullable String person, int pairs, @Nullable Amount limit) implements RereadSaid {}

    /** What a person reads more or less than the others, and within which limits it lies with 95 %. */
    record ReadsOff(@Nullable String person, boolean more, Amount by, Between limits) implements RereadSaid {}

    /** The same where it matters and has a name. */
    record PutRight(String person, boolean more) implements RereadSaid {}
}
