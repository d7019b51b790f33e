package cornerbook.app.book.coming;

import cornerbook.app.book.visit.CallAnswer;
import cornerbook.core.coming.Matter;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A car that is to come back.
 *
 * @param lastVisit day of the latest visit
 * @param matters for what, the first due first
 * @param missed the appointment to which it did not come, after its latest visit; null when there was none
 */
public record ComingCar(
        String id,
        String name,
        String plate,
        LocalDate lastVisit,
        List<Due> matters,
        @Nullable Missed missed) {
    public ComingCar {
        matters = List.copyOf(matters);
    }

    /**
     * Something for which it is to come back.
     *
     * @param visitId by which it is known
     * @param day by which
     * @param last what came of asking last; null before anybody did
     */
    public record Due(
            String visitId,
            Matter matter,
            LocalDate day,
            @Nullable CallAnswer last) {
        public AskedMatter asked() {
            return new AskedMatter(visitId, matter);
        }
    }

    /**
     * A day on which it was to come and did not.
     *
     * @param reason as it was written; null where nobody wrote one
     */
    public record Missed(LocalDate day, @Nullable String reason) {}
}
