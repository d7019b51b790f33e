package cornerbook.core.corner;

/** The season that a wheel set is meant for. */
public enum SeasonKind {
    SUMMER,
    WINTER,
    ALL_SEASON
}
