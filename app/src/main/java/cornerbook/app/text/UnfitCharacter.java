package cornerbook.app.text;

import cornerbook.core.say.Said;

/**
 * A character that no book can keep or no page can show.
 *
 * @param code as "U+0000"
 */
public record UnfitCharacter(String code) implements Said {}
