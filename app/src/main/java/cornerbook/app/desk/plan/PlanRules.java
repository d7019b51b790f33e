package cornerbook.app.desk.plan;

import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.request.PageException;
import cornerbook.core.wheelplan.Rule;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Rules that a plan is asked to leave out, as its address names them. */
public final class PlanRules {
    private PlanRules() {}

    /** The plan as it would be without some rules. */
    public static String planWithout(String visitId, Set<Rule> without) {
        return without.isEmpty()
                ? VisitLinks.plan(visitId)
                : VisitLinks.plan(visitId) + "?without="
                        + without.stream().map(PlanRules::word).sorted().collect(Collectors.joining(","));
    }

    /**
     * The rules that such an address names.
     *
     * @throws PageException when it names one that there is not
     */
    public static Set<Rule> rules(String words) {
        var rules = EnumSet.noneOf(Rule.class);
        for (var word : words.isBlank() ? new String[0] : words.split(",", -1)) {
            rules.add(Arrays.stream(Rule.values())
                    .filter(rule -> word(rule).equals(word))
                    .findFirst()
                    .orElseThrow(() -> new PageException(
                            400,
                            new DeskSaid.NoSuchRule(
                                    word,
                                    Arrays.stream(Rule.values())
                                            .map(PlanRules::word)
                                            .collect(Collectors.joining(", "))))));
        }
        return rules;
    }

    private static String word(Rule rule) {
        return rule.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
