package cornerbook.app.book.appointment;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An appointment, as it stands or stood from a moment on.
 *
 * @param turn 0 as it was made, and one more with each change
 * @param because who brought it there and why
 * @param visitId of the visit that the car has on that day; null when it has none
 */
public record Appointment(
        String id,
        int turn,
        Car car,
        AppointmentState state,
        Plan plan,
        Because because,
        @Nullable String visitId) {
    /**
     * The car that is to come.
     *
     * @param phone of its customer; null where none is known
     * @param mayHaveHighVoltage whether it has a high-voltage battery, or nobody has said what drives it
     */
    public record Car(
            String id,
            String name,
            String plate,
            String customerId,
            String customerName,
            @Nullable String phone,
            boolean mayHaveHighVoltage) {}

    /**
     * Why it stands so.
     *
     * @param reason null for what needs none
     * @param person null where nobody was named
     */
    public record Because(@Nullable String reason, @Nullable String person, Instant madeAt) {}
}
