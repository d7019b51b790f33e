package cornerbook.app.book.bay;

import cornerbook.core.car.Reading;
import java.time.Instant;

/**
 * A reading that was taken where another stood that its tablet did not know of.
 *
 * @param reading as the tablet sent it; it does not count while it is a rival
 * @param standingId the reading that stood there when it arrived
 * @param person who took it
 */
public record RivalReading(Reading reading, String standingId, String person, Instant madeAt) {}
