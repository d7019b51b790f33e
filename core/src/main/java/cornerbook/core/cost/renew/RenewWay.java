package cornerbook.core.cost.renew;

import cornerbook.core.say.Said;

/** A way to go on with tyres that are not all worn alike. After it each pair is replaced at the visit at which it is due. */
public enum RenewWay implements Said {
    /** The pair that ends first now, the other at the visit at which it is due. */
    TWO_AS_DUE,
    /** Nothing now, and each pair at the visit at which it is due. */
    EACH_WHEN_DUE,
    FOUR_NOW,
    FOUR_NEXT_SEASON,
    /** Front and rear change places, and all four are bought at the visit at which one of them is due. */
    MOVE_THEN_FOUR;

    boolean fourTogether() {
        return this != TWO_AS_DUE && this != EACH_WHEN_DUE;
    }
}
