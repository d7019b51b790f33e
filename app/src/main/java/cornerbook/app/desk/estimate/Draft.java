package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.price.PriceList;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import cornerbook.core.price.Job;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The lines that an estimate of a visit may have: the planned work, and what its findings ask for, each with its price. What the price
 * list says nothing of stays without one.
 */
final class Draft {
    private static final List<Job> PLANNED = List.of(Job.WHEELS, Job.BRAKES, Job.WHEELS_AND_BRAKES, Job.RETORQUE);

    /** Before the name of a planned job, in the key of its line. */
    private static final String OF_THE_VISIT = "JOB.";

    private Draft() {}

    /** Whether a line is what the car came for: of that everybody knows what it is about. */
    static boolean isPlanned(EstimateLine line) {
        return line.key().startsWith(OF_THE_VISIT);
    }

    /** @param planned what the car came for, as it was agreed; null where nobody has said */
    static List<DraftLine> of(Assessment assessment, PriceList prices, @Nullable PlannedWork planned, Reader reader) {
        var lines = new ArrayList<DraftLine>();
        for (var job : PLANNED) {
            boolean chosen = planned != null && planned.name().equals(job.name());
            var charge = Charge.of(job, 1, prices, reader);
            if (chosen || charge.isPresent()) {
                lines.add(new DraftLine(
                        line(OF_THE_VISIT + job.name(), null, reader.begin(job), false, charge.orElse(null), List.of()),
                        chosen));
            }
        }
        var tyres = new TyreLines(assessment, prices, reader);
        var once = EnumSet.noneOf(Job.class);
        var parts = assessment.advice().stream()
                .filter(Draft::asksForPair)
                .flatMap(advice -> works(advice).stream())
                .toList();
        for (var advice : assessment.advice()) {
            if (advice.mayBeDeclined() && !(isOfPair(advice) && !parts.isEmpty() && parts.containsAll(works(advice)))) {
                add(lines, advice, once, tyres, prices, reader);
            }
        }
        return lines;
    }

    /** A worn part of one side: its line is for both sides of the axle. */
    private static boolean asksForPair(Advice advice) {
        return !isOfPair(advice)
                && advice.todo()
                        .filter(todo -> todo.action() == Todo.Action.REPLACE_PAIR)
                        .isPresent();
    }

    /** As the bay sheet knows what is asked for; none where it leaves open what is to be done. */
    private static List<ChargedWork> works(Advice advice) {
        return JobOf.find(advice).map(JobOf::works).orElse(List.of());
    }

    /** That both sides belong together: of an axle of which a worn part asks for it the same work as the line of the part that asks for it. */
    static boolean isOfPair(Advice advice) {
        return advice.first().subject().part() == Subject.Part.BRAKE_PAIR;
    }

    /** @param once jobs that are done once for the car, and were asked for already: a second advice offers none again */
    private static void add(
            List<DraftLine> lines, Advice advice, Set<Job> once, TyreLines tyres, PriceList prices, Reader reader) {
        var words = reader.begin(advice.asked());
        boolean safety = advice.first().verdict().compareTo(Verdict.SPENT) >= 0;
        var choice = TyreLines.asksForTyres(advice) ? tyres.of(advice, words, safety) : List.<EstimateLine>of();
        if (choice.isEmpty()) {
            var asked = JobOf.find(advice);
            var charge = asked.flatMap(job -> Charge.of(job.job(), job.times(), prices, reader))
                    .orElse(null);
            var works = asked.map(JobOf::works).orElseGet(() -> ChargedWork.ofAdvice(advice.key()));
            boolean again = asked.map(JobOf::job)
                    .filter(job -> job.per() == Job.Per.CAR)
                    .map(job -> !once.add(job))
                    .orElse(false);
            lines.add(new DraftLine(line(advice.key(), advice.key(), words, safety, charge, works), !again));
        }
        choice.forEach(line -> lines.add(new DraftLine(line, true)));
    }

    private static EstimateLine line(
            String key,
            @Nullable String advice,
            String words,
            boolean safety,
            @Nullable Charge charge,
            List<ChargedWork> works) {
        return new EstimateLine(
                key,
                "",
                advice,
                words,
                charge == null ? "" : charge.detail(),
                "",
                safety,
                charge == null ? null : charge.amount(),
                works);
    }
}
