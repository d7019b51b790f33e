package cornerbook.core.wheelplan.search;

import cornerbook.core.wheelplan.Gain;
import cornerbook.core.wheelplan.Gain.Interval;
import cornerbook.core.wheelplan.PlanRequest;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.RuleCost;
import cornerbook.core.wheelplan.search.PlanSearch.Sequence;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The sentences of a plan. */
final class Reasons {
    private static final double SAME_KM = 1;

    private Reasons() {}

    static String choice(Sequence best, Gain gain, boolean stays) {
        if (stays) {
            return say(
                    "Moving wheels would gain about %,.0f km%s, which may as well be nothing, so each wheel goes back to"
                            + " where it ran.",
                    gain.likelyKm(), between(gain.interval()));
        }
        if (best.moves() == 0) {
            return "No move lets the set run longer, so each wheel goes back to where it ran.";
        }
        if (gain.gainKm() >= SAME_KM) {
            return say(
                    "The set runs about %,.0f km longer than with each wheel where it ran%s.",
                    gain.likelyKm(), between(gain.interval()));
        }
        if (gain.gainKm() > -SAME_KM) {
            return "The set runs as far either way; this way its depths end closer together.";
        }
        return say("Leaving each wheel where it ran would get %,.0f km farther, but breaks a rule.", -gain.gainKm());
    }

    /** Said where the first season's wheels stay and later ones' move. */
    static String later(int seasonsUntilMove) {
        return say(
                "No wheel moves now: the gain comes from moving wheels %s.",
                seasonsUntilMove == 1 ? "at the next fitting" : "in " + seasonsUntilMove + " seasons");
    }

    static String pattern(Gain gain) {
        if (gain.mayBeNone()) {
            return say(
                    "With %s at each change-over the set may well run as far%s.",
                    gain.over(), between(gain.interval()));
        }
        return gain.likelyKm() > 0
                ? say(
                        "The plan runs about %,.0f km longer than %s at each change-over%s.",
                        gain.likelyKm(), gain.over(), between(gain.interval()))
                : say(
                        "With %s at each change-over the set would get %,.0f km farther, but that breaks a rule.",
                        gain.over(), -gain.likelyKm());
    }

    static String cost(RuleCost cost) {
        return say("%s: that costs about %,.0f km.", cost.rule().words(), cost.costKm());
    }

    /** Names the rules each of which, left out, would let the next season be planned too. */
    static String rulesEnd(PlanRequest oneMore, int seasons) {
        var binding = oneMore.rules().kept().stream()
                .filter(rule -> PlanSearch.canBePlanned(
                        oneMore.withRules(oneMore.rules().without(rule))))
                .map(Reasons::clause)
                .toList();
        var what = binding.isEmpty() ? "the rules together" : "the rule that " + String.join(", or that ", binding);
        return say(
                "After %d %s %s cannot be kept by any assignment.", seasons, seasons == 1 ? "season" : "seasons", what);
    }

    /** Said where the plan was made without rules that cannot be kept. */
    static String leftOut(List<Rule> rules) {
        return say(
                "No assignment keeps the rule that %s, so this plan is made without it; new tyres would mend that.",
                rules.stream().map(Reasons::clause).collect(Collectors.joining(", and that ")));
    }

    private static String clause(Rule rule) {
        return rule.words().substring(0, 1).toLowerCase(Locale.ROOT)
                + rule.words().substring(1);
    }

    private static String between(@Nullable Interval interval) {
        return interval == null
                ? ""
                : say(
                        " (difference in 90 %% of the cases between %,.0f and %,.0f km)",
                        interval.lowKm(), interval.highKm());
    }

    private static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
