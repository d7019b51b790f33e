package cornerbook.app.desk.findings;

import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.say.Said;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * A finding as the page shows it.
 *
 * @param patterns how the wheels of the set wear across, when the finding is on a set
 * @param advice what the patterns ask for and no graver finding has asked for yet
 */
public record FoundThing(Finding finding, List<Finding> patterns, List<Said> advice) {
    public FoundThing {
        patterns = List.copyOf(patterns);
        advice = List.copyOf(advice);
    }

    /** Its evidence, then that of the patterns: what only one wheel shows says which wheel that is. */
    public List<Evidence> evidence() {
        var all = new LinkedHashSet<>(finding.evidence());
        for (var pattern : patterns) {
            for (var evidence : pattern.evidence()) {
                boolean shared = patterns.size() > 1
                        && patterns.stream().allMatch(other -> other.evidence().contains(evidence));
                all.add(
                        shared
                                ? evidence
                                : new Evidence(
                                        new FindingsSaid.OfWheel(
                                                String.valueOf(pattern.subject().wheelTag()), evidence.what()),
                                        evidence.value(),
                                        evidence.how()));
            }
        }
        return List.copyOf(all);
    }

    boolean isOfSet() {
        return finding.subject().setId() != null;
    }
}
