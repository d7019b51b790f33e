package cornerbook.core.wheelplan;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Refused;
import cornerbook.core.wheelplan.PlanSaid.Input;
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
 * @param frontDeeperMm how much deeper than the rear pair the front pair may be, on average, when fitted; 0 when the deeper
 *     pair always goes to the rear, null when not limited
 */
public record PlanRules(
        boolean directional,
        boolean size,
        @Nullable Double sameAxleMm,
        @Nullable AllWheelLimit allWheel,
        @Nullable Double frontDeeperMm) {
    /** Only what the tyres themselves ask. */
    public static final PlanRules TYRES_ONLY = new PlanRules(true, true, null, null, null);

    public PlanRules {
        if (sameAxleMm != null) {
            positive(Input.SAME_AXLE_LIMIT, sameAxleMm);
        }
        if (frontDeeperMm != null && !(frontDeeperMm >= 0 && frontDeeperMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "depth that the front pair may be deeper is %s mm, expected 0 or more".formatted(frontDeeperMm));
        }
    }

    /** The rules that are kept. */
    public Set<Rule> kept() {
        var kept = EnumSet.noneOf(Rule.class);
        add(kept, Rule.DIRECTIONAL, directional);
        add(kept, Rule.SIZE, size);
        add(kept, Rule.SAME_AXLE, sameAxleMm != null);
        add(kept, Rule.ALL_WHEEL, allWheel != null);
        add(kept, Rule.DEEPER_PAIR_REAR, frontDeeperMm != null);
        return kept;
    }

    /** The same rules but one. */
    public PlanRules without(Rule rule) {
        return new PlanRules(
                directional && rule != Rule.DIRECTIONAL,
                size && rule != Rule.SIZE,
                rule == Rule.SAME_AXLE ? null : sameAxleMm,
                rule == Rule.ALL_WHEEL ? null : allWheel,
                rule == Rule.DEEPER_PAIR_REAR ? null : frontDeeperMm);
    }

    private static void add(Set<Rule> kept, Rule rule, boolean keep) {
        if (keep) {
            kept.add(rule);
        }
    }

    static void positive(Input what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new Refused(new PlanSaid.NotPositive(what, Amount.significant(value, "mm", 4)));
        }
    }
}
