package cornerbook.core.visit;

/** Something in the input that cannot stand: where (a JSON pointer into the visit file), and one sentence of what and what was expected. */
public record Problem(String where, String message) {}
