package cornerbook.core.wheelplan;

/**
 * What keeping a rule costs.
 *
 * @param costKm how much farther the set would run over the same seasons with only this rule left out, 0 or more
 */
public record RuleCost(Rule rule, double costKm) {}
