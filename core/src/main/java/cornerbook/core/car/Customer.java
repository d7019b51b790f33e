package cornerbook.core.car;

import org.jspecify.annotations.Nullable;

/** The person whose car it is. */
public record Customer(
        String id,
        String name,
        @Nullable String phone,
        @Nullable String email) {}
