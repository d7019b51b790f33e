package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.LineWords;
import cornerbook.app.book.price.PriceList;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.finding.Verdict;
import cornerbook.core.price.Job;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
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
                        line(
                                OF_THE_VISIT + job.name(),
                                null,
                                LineWords.of(reader.begin(job)),
                                false,
                                charge.orElse(null),
                                List.of()),
                        chosen));
            }
        }
        var tyres = new TyreLines(assessment, prices, reader);
        var once = new ArrayList<JobOf>();
        for (var advice : assessment.advice()) {
            if (advice.mayBeDeclined() && !advice.isForNextVisit()) {
                add(lines, advice, once, tyres, prices, reader);
            }
        }
        return lines;
    }

    /** @param once work that was asked for already, as both discs of an axle ask for both: a second advice offers none again */
    private static void add(
            List<DraftLine> lines, Advice advice, List<JobOf> once, TyreLines tyres, PriceList prices, Reader reader) {
        var words = words(advice, reader);
        boolean safety = advice.first().verdict().compareTo(Verdict.SPENT) >= 0;
        var choice = TyreLines.asksForTyres(advice) ? tyres.of(advice, words.whole(), safety) : List.<EstimateLine>of();
        if (choice.isEmpty()) {
            var asked = JobOf.find(advice);
            var charge = asked.flatMap(job -> Charge.of(job.job(), job.times(), prices, reader))
                    .orElse(null);
            var works = asked.map(JobOf::works).orElseGet(() -> ChargedWork.ofAdvice(advice.key()));
            boolean again =
                    asked.filter(job -> once.stream().anyMatch(job::isSame)).isPresent();
            asked.ifPresent(once::add);
            lines.add(new DraftLine(line(advice.key(), advice.key(), words, safety, charge, works), !again));
        }
        choice.forEach(line -> lines.add(new DraftLine(line, true)));
    }

    static LineWords words(Advice advice, Reader reader) {
        return new LineWords(reader.begin(advice.asked()), reader.begin(advice.task()));
    }

    private static EstimateLine line(
            String key,
            @Nullable String advice,
            LineWords words,
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
