package cornerbook.core.car;

import org.jspecify.annotations.Nullable;

/**
 * The person whose car it is.
 *
 * @param language tag of the language in which this person gets papers, as "fr"; null for the shop's usual one
 */
public record Customer(
        String id,
        String name,
        @Nullable String phone,
        @Nullable String email,
        @Nullable String language) {
    /** A customer who gets papers in the shop's usual language. */
    public Customer(String id, String name, @Nullable String phone, @Nullable String email) {
        this(id, name, phone, email, null);
    }
}
