package cornerbook.core.say;

/**
 * A sentence, or a part of one, as data. It is one of
 * <ul>
 * <li>a record whose components are the facts: its words are the message of that name in the catalogue of its package;
 * <li>a constant of an enum: its words are the message "Type.CONSTANT" there;
 * <li>a value of this package, which a reader knows how to write: an {@link Amount}, a {@link Day}, a {@link Verbatim} …
 * </ul>
 * A fact is a {@code Said}, a {@code String} (a name, or what a person typed: shown as it stands), a {@code LocalDate}, a
 * {@code MonthDay}, an {@code int} or {@code long} (a count, for plurals too), a {@code boolean} or an enum (to choose by), or a
 * list of {@code Said}. A fact that is null chooses "none".
 */
public interface Said {
    /** What a person typed, or a name: shown as it stands in every language. */
    static Said verbatim(String text) {
        return new Verbatim(text);
    }
}
