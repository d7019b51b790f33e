package cornerbook.core.say;

/** Text that is the same in every language: what a person typed, a name, a citation, a formula without words. */
public record Verbatim(String text) implements Said {}
