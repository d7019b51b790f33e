package cornerbook.app.book.verdict;

import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Urgency;
import cornerbook.core.finding.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What a list shows of the gravest finding on a car.
 *
 * @param urgency the verdict in the word for what it is about
 * @param lifeLeft share of the usable life that is left, 0 to 1
 */
public record Gravest(Verdict verdict, Urgency urgency, double lifeLeft) {
    /**
     * Of what was found on a car; empty when nothing was.
     *
     * @param findings gravest first; what is the shop's own matter says nothing of the car
     */
    public static Optional<Gravest> of(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> !finding.subject().part().isOfShop())
                .findFirst()
                .map(finding -> new Gravest(finding.verdict(), finding.urgency(), finding.lifeLeft()));
    }
}
