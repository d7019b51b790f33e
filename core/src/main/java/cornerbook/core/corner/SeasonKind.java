package cornerbook.core.corner;

import cornerbook.core.say.Said;

/** The season that a wheel set is meant for. */
public enum SeasonKind implements Said {
    SUMMER,
    WINTER,
    ALL_SEASON
}
