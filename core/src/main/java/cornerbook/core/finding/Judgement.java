package cornerbook.core.finding;

import cornerbook.core.say.Said;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a judge makes of a case.
 *
 * @param findings in any order
 * @param notJudged a line for each thing that could not be judged, with what is missing for it
 */
public record Judgement(List<Finding> findings, List<Said> notJudged) {
    /** Nothing was found out, and nothing is missing. */
    public static final Judgement NONE = new Judgement(List.of(), List.of());

    public Judgement {
        findings = List.copyOf(findings);
        notJudged = List.copyOf(notJudged);
    }

    public static Judgement of(Finding finding) {
        return new Judgement(List.of(finding), List.of());
    }

    public static Judgement of(List<Finding> findings) {
        return new Judgement(findings, List.of());
    }

    /** Nothing could be judged. */
    public static Judgement missing(Said what) {
        return missing(List.of(what));
    }

    /** The same for several reasons. */
    public static Judgement missing(List<? extends Said> what) {
        return new Judgement(List.of(), List.copyOf(what));
    }

    /** What several judges say together, in their order. */
    public static Judgement together(Stream<Judgement> judged) {
        var all = judged.toList();
        return new Judgement(
                all.stream().flatMap(each -> each.findings.stream()).toList(),
                all.stream().flatMap(each -> each.notJudged.stream()).toList());
    }
}
