package cornerbook.app.book.rack;

import cornerbook.app.book.visit.CallAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What came of calling about a car's stored sets since its latest visit.
 *
 * @param visitId the latest visit, by which it is kept
 * @param last null before anybody called
 */
public record CalledAbout(
        String vehicleId, String visitId, @Nullable CallAnswer last) {}
