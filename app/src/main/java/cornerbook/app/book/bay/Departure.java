package cornerbook.app.book.bay;

import cornerbook.core.release.OpenPoint;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The car was handed over.
 *
 * @param id unique in the book, born at the tablet
 * @param reasons one for each point that was still open
 * @param acknowledgedBy who of the customer's side was told what is unsafe, and took the car all the same; null when nothing was
 */
public record Departure(
        String id,
        String person,
        Instant madeAt,
        List<Reason> reasons,
        @Nullable String acknowledgedBy) {
    private static final Set<OpenPoint.Kind> ONLY_WHILE_HERE =
            EnumSet.of(OpenPoint.Kind.SECOND_CHECK, OpenPoint.Kind.RETORQUE);

    public Departure {
        reasons = List.copyOf(reasons);
    }

    /**
     * What was left open, one sentence each, with who let the car go and why.
     *
     * @param open what is open still, which is told in the words of this reader; anything else as it was told then
     */
    public List<Said> leftOpen(List<OpenPoint> open, Reader reader) {
        return reasons.stream()
                .<Said>map(reason -> new BaySaid.LeftOpen(
                        person,
                        open.stream()
                                .filter(point -> point.key().equals(reason.caution()))
                                .map(reader::say)
                                .findFirst()
                                .orElse(reason.sentence()),
                        ended(reason.reason()),
                        told(reason)))
                .toList();
    }

    /** Those that nobody let it go with. Once it has gone, nobody can check its torque, nor record what was due before. */
    public List<OpenPoint> unanswered(List<OpenPoint> open) {
        return open.stream()
                .filter(point -> !ONLY_WHILE_HERE.contains(point.kind()) && !answers(point))
                .toList();
    }

    /** Whether somebody said why the car leaves with this open. */
    public boolean answers(OpenPoint point) {
        return reasons.stream().map(Reason::caution).anyMatch(point.key()::equals);
    }

    /** As a sentence among others, whether or not it was typed with its stop. */
    static String ended(String words) {
        return words.isEmpty() || ".!?…".indexOf(words.charAt(words.length() - 1)) >= 0 ? words : words + ".";
    }

    private @Nullable String told(Reason reason) {
        return reason.unsafe() ? acknowledgedBy : null;
    }

    /**
     * Why the car leaves all the same.
     *
     * @param caution which point, as the bay sheet names it
     * @param sentence what was open, as it was told to that person
     */
    public record Reason(String caution, String sentence, String reason) {
        private boolean unsafe() {
            return caution.startsWith(OpenPoint.Kind.UNSAFE + ".");
        }
    }
}
