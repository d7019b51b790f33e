package cornerbook.app.demo;

import cornerbook.core.days.PlannedWork;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * A day that the invented shop has agreed with a customer.
 *
 * @param time null for any
 * @param worker one of its people; null for anybody
 * @param note may be empty
 * @param missed whether the car did not come
 */
public record AgreedDay(
        String carId,
        LocalDate day,
        @Nullable LocalTime time,
        PlannedWork work,
        @Nullable String worker,
        String note,
        boolean missed) {}
