package cornerbook.core.finding;

import cornerbook.core.say.Said;

/**
 * Something in the input that cannot stand.
 *
 * @param where JSON pointer into the visit file
 * @param message one sentence: what it is, and what was expected
 */
public record Problem(String where, Said message) {}
