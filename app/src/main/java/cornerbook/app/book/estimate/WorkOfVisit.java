package cornerbook.app.book.estimate;

import cornerbook.core.assess.Advice;
import cornerbook.core.car.Visit;
import cornerbook.core.price.Total;
import cornerbook.core.release.ChargedWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was estimated and agreed at one visit, as it stands: of each matter the last estimate, and of that the last answer.
 *
 * @param estimates earliest first
 * @param agreements earliest first
 * @param answers to work that no agreed line stands for, earliest first
 */
public record WorkOfVisit(List<Estimate> estimates, List<Agreement> agreements, List<WorkAnswer> answers) {
    public static final WorkOfVisit NONE = new WorkOfVisit(List.of(), List.of(), List.of());

    public WorkOfVisit {
        estimates = List.copyOf(estimates);
        agreements = List.copyOf(agreements);
        answers = List.copyOf(answers);
    }

    /**
     * A line with what was said to it.
     *
     * @param place in its estimate
     * @param agreement the one that answered it last; null while none did
     */
    public record Standing(
            Estimate estimate,
            int place,
            EstimateLine line,
            @Nullable Agreement agreement) {
        public boolean isAgreed() {
            return agreement != null && Boolean.TRUE.equals(agreement.answers().get(place));
        }

        public boolean isDeclined() {
            return agreement != null && Boolean.FALSE.equals(agreement.answers().get(place));
        }

        /** Whether another one of its choice was taken. */
        public boolean isOtherTaken() {
            return isDeclined()
                    && agreement != null
                    && agreement.answers().entrySet().stream()
                            .filter(Map.Entry::getValue)
                            .map(answer -> estimate.lines().get(answer.getKey()))
                            .anyMatch(taken -> taken.matter().equals(line.matter()));
        }

        public boolean isOpen() {
            return agreement == null;
        }
    }

    /**
     * The lines that stand, in the order in which their matters first came up. What a later estimate left out before anybody had answered
     * it is offered no more: only the last estimate can be answered.
     */
    public List<Standing> standing() {
        var byMatter = new LinkedHashMap<String, List<Standing>>();
        for (var estimate : estimates) {
            Map<String, List<Standing>> own = new LinkedHashMap<>();
            for (int place = 0; place < estimate.lines().size(); place++) {
                var line = estimate.lines().get(place);
                own.computeIfAbsent(line.matter(), matter -> new ArrayList<>())
                        .add(new Standing(
                                estimate,
                                place,
                                line,
                                findAnswer(estimate, place).orElse(null)));
            }
            byMatter.putAll(own);
        }
        return byMatter.values().stream()
                .flatMap(List::stream)
                .filter(each -> !each.isOpen() || each.estimate().equals(estimates.getLast()))
                .toList();
    }

    /** What answered a line of an estimate last. */
    public Optional<Agreement> findAnswer(Estimate estimate, int place) {
        return agreements.stream()
                .filter(each -> each.estimateId().equals(estimate.id())
                        && each.answers().containsKey(place))
                .reduce((before, after) -> after);
    }

    public List<Standing> agreed() {
        return standing().stream().filter(Standing::isAgreed).toList();
    }

    /** The last estimate; empty before there is one. */
    public Optional<Estimate> last() {
        return estimates.isEmpty() ? Optional.empty() : Optional.of(estimates.getLast());
    }

    /** What was agreed, with the taxes of the last estimate; empty before there is one. */
    public Optional<Total> totalAgreed() {
        return last().map(estimate ->
                estimate.total(agreed().stream().map(Standing::line).toList()));
    }

    /** The line that stands for an advice of the visit, agreed before others; empty where none was estimated. */
    public List<Standing> of(String advice) {
        return standing().stream()
                .filter(each -> Optional.ofNullable(each.line().advice())
                        .filter(asked -> Advice.isSameWork(asked, advice))
                        .isPresent())
                .toList();
    }

    /** The lines that stand for work of the bay sheet. */
    public List<Standing> of(ChargedWork work) {
        return standing().stream()
                .filter(each -> each.line().works().contains(work))
                .toList();
    }

    /** The line by which work was agreed: one that is about it, or the one that somebody named; empty while none is. */
    public Optional<Standing> findAgreed(ChargedWork work) {
        var named = findAnswer(work)
                .filter(answer -> answer.kind() == WorkAnswer.Kind.AS_LINE)
                .map(WorkAnswer::line);
        return agreed().stream()
                .filter(each -> each.line().works().contains(work)
                        || named.filter(each.line().key()::equals).isPresent())
                .findFirst();
    }

    /** Who said that work was done without charge, while it is not agreed. */
    public Optional<WorkAnswer> findFree(ChargedWork work) {
        return findAnswer(work)
                .filter(answer -> answer.kind() == WorkAnswer.Kind.WITHOUT_CHARGE
                        && findAgreed(work).isEmpty());
    }

    private Optional<WorkAnswer> findAnswer(ChargedWork work) {
        return answers.stream().filter(answer -> answer.work().equals(work)).reduce((before, after) -> after);
    }

    /** What was done at the visit and is neither agreed nor without charge. Nothing before there is an estimate. */
    public List<ChargedWork> held(Visit visit) {
        return estimates.isEmpty()
                ? List.of()
                : ChargedWork.done(visit).stream()
                        .filter(work ->
                                findAgreed(work).isEmpty() && findFree(work).isEmpty())
                        .toList();
    }

    /** What was done at the visit without charge. */
    public List<WorkAnswer> free(Visit visit) {
        return ChargedWork.done(visit).stream()
                .flatMap(work -> findFree(work).stream())
                .toList();
    }
}
