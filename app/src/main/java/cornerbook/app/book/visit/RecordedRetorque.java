package cornerbook.app.book.visit;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Wheels that were tightened again.
 *
 * @param odometerKm null where nobody read it
 * @param torqueNm the lowest that was read; null where the torque that is asked for was confirmed
 * @param person who did it; null where nobody was named
 */
public record RecordedRetorque(
        LocalDate date,
        @Nullable Double odometerKm,
        @Nullable Double torqueNm,
        @Nullable String person) {}
