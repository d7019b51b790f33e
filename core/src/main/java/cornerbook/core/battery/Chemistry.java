package cornerbook.core.battery;

import cornerbook.core.say.Said;

/** What the cells of a 12 V battery are made of; a voltage table holds for one of them only. */
public enum Chemistry implements Said {
    FLOODED,
    EFB,
    AGM,
    LITHIUM;

    boolean isLead() {
        return this != LITHIUM;
    }
}
