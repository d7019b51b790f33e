package cornerbook.core.visit;

/** One thing that a finding rests on: what it is, its value with unit, and how it was come by (reading, rule, formula). */
public record Evidence(String what, String value, String how) {}
