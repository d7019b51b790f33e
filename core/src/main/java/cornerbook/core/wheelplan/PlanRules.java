package cornerbook.core.wheelplan;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which rules a plan keeps. A wheel's depth is that of its least groove.
 *
 * @param directional directional tyres stay on their side
 * @param size each tyre size stays on its axle
 * @param sameAxleMm greatest difference of depth on one axle, when fitted and at the end of each season; null when not limited
 * @param allWheel greatest difference among the four, at the same times; null when not limited
 * @param deeperPairRear when fitted, the rear pair is at least as deep as the front pair, on average
 */
public record PlanRules(
        boolean directional,
        boolean size,
        @Nullable Double sameAxleMm,
        @Nullable AllWheelLimit allWheel,
        boolean deeperPairRear) {
    /** Only what the tyres themselves ask. */
    public static final PlanRules TYRES_ONLY = new PlanRules(true, true, null, null, false);

    public PlanRules {
        if (sameAxleMm != null) {
            positive("same-axle difference limit", sameAxleMm);
        }
    }

    /** The rules that are kept. */
    public Set<Rule> kept() {
        var kept = EnumSet.noneOf(Rule.class);
        add(kept, Rule.DIRECTIONAL, directional);
        add(kept, Rule.SIZE, size);
        add(kept, Rule.SAME_AXLE, sameAxleMm != null);
        add(kept, Rule.ALL_WHEEL, allWheel != null);
        add(kept, Rule.DEEPER_PAIR_REAR, deeperPairRear);
        return kept;
    }

    /** The same rules but one. */
    public PlanRules without(Rule rule) {
        return new PlanRules(
                directional && rule != Rule.DIRECTIONAL,
                size && rule != Rule.SIZE,
                rule == Rule.SAME_AXLE ? null : sameAxleMm,
                rule == Rule.ALL_WHEEL ? null : allWheel,
                deeperPairRear && rule != Rule.DEEPER_PAIR_REAR);
    }

    private static void add(Set<Rule> kept, Rule rule, boolean keep) {
        if (keep) {
            kept.add(rule);
        }
    }

    static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("%s is %s mm, expected above 0".formatted(what, value));
        }
    }
}
