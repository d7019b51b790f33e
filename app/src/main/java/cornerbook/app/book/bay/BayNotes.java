package cornerbook.app.book.bay;

import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.WorkTick;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the book has of a visit beside its readings, as it stands at one moment.
 *
 * @param rivals readings that wait for a person's answer, earliest first
 * @param ticks every tick, earliest first: the last of each step says whether it is done
 * @param photos earliest first
 * @param authors of the readings that were taken at a tablet, by the reading's identity
 * @param departure the last hand-over; empty while the car is in the bay
 * @param remarks those that count
 * @param declined what the customer does not want
 */
public record BayNotes(
        List<RivalReading> rivals,
        List<WorkTick> ticks,
        List<Photo> photos,
        Map<String, ReadingAuthor> authors,
        Optional<Departure> departure,
        List<Remark> remarks,
        List<Declined> declined) {
    public BayNotes {
        rivals = List.copyOf(rivals);
        ticks = List.copyOf(ticks);
        photos = List.copyOf(photos);
        authors = Map.copyOf(authors);
        remarks = List.copyOf(remarks);
        declined = List.copyOf(declined);
    }
}
