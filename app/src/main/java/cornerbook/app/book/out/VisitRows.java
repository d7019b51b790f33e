package cornerbook.app.book.out;

import cornerbook.app.book.out.CarRows.WheelRow;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Reading;
import cornerbook.core.tool.ShopTool;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A visit with all that was read and ticked at it.
 *
 * @param number of the visit at its car, from 1
 * @param readings in the order in which they came into the book
 * @param ticks in the order in which they came into the book
 * @param tools that it was worked with, each as it was on the day
 */
public record VisitRows(
        int number,
        String id,
        LocalDate day,
        double odometerKm,
        @Nullable Person technician,
        boolean cancelled,
        List<ReadingRow> readings,
        List<TickRow> ticks,
        List<ShopTool> tools) {
    public VisitRows {
        readings = List.copyOf(readings);
        ticks = List.copyOf(ticks);
        tools = List.copyOf(tools);
    }

    public Optional<ShopTool> findTool(ShopTool.Kind kind) {
        return tools.stream().filter(tool -> tool.kind() == kind).findFirst();
    }

    /**
     * Somebody who works in the shop.
     *
     * @param code number of the person, from 1, in the order in which people first worked
     */
    public record Person(int code, String name) {}

    /** What became of a reading. */
    public enum State {
        /** It is what the book goes by. */
        COUNTS,
        /** It was right, and the same place was read again later at the visit. */
        READ_AGAIN,
        /** Another reading was put in its place. */
        CORRECTED,
        /** It was entered at the wrong corner or car, and stands at the right one now. */
        MOVED,
        /** Its visit was cancelled. */
        VISIT_CANCELLED
    }

    /**
     * A reading.
     *
     * @param number of the reading at its visit, from 1
     * @param corrects number of the reading at the same visit that it takes the place of
     * @param wheel null where it belongs to none
     * @param person who entered it at a tablet; null where it was entered at the desk
     * @param enteredAt the same
     */
    public record ReadingRow(
            int number,
            Reading reading,
            @Nullable Integer corrects,
            State state,
            @Nullable WheelRow wheel,
            @Nullable Person person,
            @Nullable Instant enteredAt) {}

    /**
     * A step of the work that was ticked, or whose tick was taken back.
     *
     * @param number of the tick at its visit, from 1
     */
    public record TickRow(
            int number, WorkTick tick, @Nullable WheelRow wheel, Person person) {}
}
