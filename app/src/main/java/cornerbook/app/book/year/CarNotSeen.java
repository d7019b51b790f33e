package cornerbook.app.book.year;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A car whose latest visit is long ago.
 *
 * @param phone null where none is known
 */
public record CarNotSeen(
        String vehicleId,
        String name,
        String plate,
        String customerId,
        String customer,
        @Nullable String phone,
        LocalDate last) {}
