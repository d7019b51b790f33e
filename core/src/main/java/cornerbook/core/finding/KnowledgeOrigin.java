package cornerbook.core.finding;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/**
 * Where a number comes from that other shops' cars taught.
 *
 * @param cars that taught it, 1 or more
 * @param shops whose cars they are, 1 or more
 * @param signedBy as this shop calls who signed it
 * @param learnedOn the day
 */
public record KnowledgeOrigin(int cars, int shops, String signedBy, LocalDate learnedOn) implements Said {
    public KnowledgeOrigin {
        if (cars < 1 || shops < 1) {
            throw new IllegalArgumentException("%s cars of %s shops, expected 1 or more".formatted(cars, shops));
        }
    }

    /** The same of a number that so many of the cars taught. */
    KnowledgeOrigin of(int carsOfNumber) {
        return new KnowledgeOrigin(carsOfNumber, shops, signedBy, learnedOn);
    }
}
