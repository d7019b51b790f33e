package cornerbook.app.book.visit;

import org.jspecify.annotations.Nullable;

/**
 * Wheels that somebody said were tightened again to the torque that is asked for, without figures.
 *
 * @param visitId the visit that fitted them
 * @param person who said so; null where nobody was named
 */
public record ConfirmedRetorque(
        String visitId,
        String vehicleName,
        String plate,
        @Nullable String person) {}
