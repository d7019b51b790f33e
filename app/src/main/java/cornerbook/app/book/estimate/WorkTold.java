package cornerbook.app.book.estimate;

import cornerbook.core.car.Visit;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was agreed of a visit's work and what was not, as its page and its papers tell it. */
public sealed interface WorkTold extends Said {
    /**
     * What one person agreed to at once.
     *
     * @param total with taxes
     * @param contact the number or place; null where none was noted
     */
    record Agreed(
            Said work,
            Price total,
            String name,
            Agreement.Way way,
            @Nullable String contact,
            Instant moment) implements WorkTold {}

    /** What one person declined. */
    record NotWanted(Said work, String name, Agreement.Way way, Instant moment) implements WorkTold {}

    /** What was done and costs nothing. */
    record Free(Said work, Said reason, String person, Instant moment) implements WorkTold {}

    /** What was agreed, in the order in which it was said, and what was done without charge. */
    static List<Said> agreedAndFree(WorkOfVisit work, Visit visit) {
        var told = new ArrayList<Said>();
        for (var agreement : work.agreements()) {
            var lines = work.agreed().stream()
                    .filter(each -> agreement.equals(each.agreement()))
                    .toList();
            if (!lines.isEmpty()) {
                var estimate = lines.getFirst().estimate();
                told.add(new Agreed(
                        words(lines),
                        new Price(estimate.total(lines.stream()
                                        .map(WorkOfVisit.Standing::line)
                                        .toList())
                                .total()),
                        agreement.name(),
                        agreement.way(),
                        agreement.contact().isEmpty() ? null : agreement.contact(),
                        agreement.madeAt()));
            }
        }
        work.free(visit).forEach(each -> told.add(free(each)));
        return told;
    }

    /** One answer that work costs nothing. */
    static Said free(WorkAnswer answer) {
        return new Free(answer.work(), FreeReason.said(answer.reason()), answer.person(), answer.madeAt());
    }

    /**
     * What was declined.
     *
     * @param lines those that are told
     */
    static List<Said> declined(WorkOfVisit work, Stream<WorkOfVisit.Standing> lines) {
        var standing =
                lines.filter(each -> each.isDeclined() && !each.isOtherTaken()).toList();
        return work.agreements().stream()
                .flatMap(agreement -> {
                    var of = standing.stream()
                            .filter(each -> agreement.equals(each.agreement()))
                            .toList();
                    return of.isEmpty()
                            ? Stream.<Said>empty()
                            : Stream.<Said>of(
                                    new NotWanted(words(of), agreement.name(), agreement.way(), agreement.madeAt()));
                })
                .toList();
    }

    private static Said words(List<WorkOfVisit.Standing> lines) {
        return Listed.semicolons(lines.stream()
                .map(each -> Said.verbatim(each.line().said().brief()))
                .toList());
    }
}
