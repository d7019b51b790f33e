package cornerbook.app.book.estimate;

import cornerbook.core.price.Total;
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
 */
public record WorkOfVisit(List<Estimate> estimates, List<Agreement> agreements) {
    public static final WorkOfVisit NONE = new WorkOfVisit(List.of(), List.of());

    public WorkOfVisit {
        estimates = List.copyOf(estimates);
        agreements = List.copyOf(agreements);
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

    /** The lines that stand, in the order in which their matters first came up. */
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
        return byMatter.values().stream().flatMap(List::stream).toList();
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
                .filter(each -> advice.equals(each.line().advice()))
                .toList();
    }
}
