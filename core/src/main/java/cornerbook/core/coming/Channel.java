package cornerbook.core.coming;

import cornerbook.core.say.Said;

/** How a customer is reached. */
public enum Channel implements Said {
    TELEPHONE,
    /** Text to a telephone. */
    MESSAGE,
    E_MAIL
}
