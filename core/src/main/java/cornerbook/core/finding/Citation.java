package cornerbook.core.finding;

import cornerbook.core.say.Said;

/** Where a limit comes from, as its file says it in each language. */
public record Citation(String english, String french) implements Said {}
