package cornerbook.app.book.bay;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Visit;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.ReleaseRule;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
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
            EnumSet.of(OpenPoint.Kind.SECOND_CHECK, OpenPoint.Kind.RETORQUE, OpenPoint.Kind.NOT_AGREED);

    private record Why(boolean unsafe, String reason) {}

    public Departure {
        reasons = List.copyOf(reasons);
    }

    /**
     * What the car left with, and what hands left open: one line for what one person said one reason for. What hands left open and a
     * person then let the car go with is told once, by the hand-over.
     *
     * @param departure the last one; null while the car is in the bay
     * @param open what is open still, which is told in the words of this reader; anything else as it was told then
     */
    public static List<Said> leftOpen(
            @Nullable Departure departure, Visit visit, List<WorkTick> ticks, List<OpenPoint> open, Reader reader) {
        return Stream.concat(
                        departure == null ? Stream.empty() : departure.leftOpen(open, reader).stream(),
                        LeftTogether.lines(visit, ticks, left -> departure == null || !departure.tells(left), reader)
                                .stream())
                .toList();
    }

    /**
     * What the car left with, with who let it go and why: one line for all that has the same reason.
     *
     * @param open what is open still, which is told in the words of this reader; anything else as it was told then
     */
    public List<Said> leftOpen(List<OpenPoint> open, Reader reader) {
        return reasons.stream().collect(groupingBy(Reason::why, LinkedHashMap::new, toList())).values().stream()
                .<Said>map(same -> new BaySaid.LeftOpen(
                        person,
                        whatIsOpen(same, open, reader),
                        ended(same.getFirst().reason()),
                        told(same.getFirst())))
                .toList();
    }

    private static String whatIsOpen(List<Reason> reasons, List<OpenPoint> open, Reader reader) {
        var names = reasons.stream().map(Reason::caution).toList();
        return Stream.concat(
                        OpenPoint.together(open.stream()
                                        .filter(point -> names.contains(point.key()))
                                        .toList())
                                .stream()
                                .map(reader::say),
                        reasons.stream()
                                .filter(reason ->
                                        open.stream().map(OpenPoint::key).noneMatch(reason.caution()::equals))
                                .map(Reason::sentence))
                .distinct()
                .collect(joining(" "));
    }

    /** Whether it is what the car was let go with, by the name of the point that it closes. */
    public boolean tells(LeftOpen left) {
        return ReleaseRule.all(true, true).stream()
                .filter(rule -> rule.closedBy().equals(left.closedBy()))
                .anyMatch(rule -> answers(rule.point()));
    }

    /** Those that nobody let it go with. Once it has gone, nobody can check its torque, record what was due before, or take work back. */
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
        /** Those of one why are told in one line; what the customer had to be told stands by itself. */
        private Why why() {
            return new Why(unsafe(), reason);
        }

        private boolean unsafe() {
            return caution.startsWith(OpenPoint.Kind.UNSAFE + ".");
        }
    }
}
