package cornerbook.app.book.record;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.bay.RivalAnswer;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.release.OpenPoint;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All that was entered at one visit beside its readings, earliest first.
 *
 * @param rivals readings taken where another stood, answered or not
 * @param departures hand-overs; the last one counts
 * @param authors of the readings that were taken at a tablet
 * @param remarks all of them; of each topic the last one counts
 * @param declined all of it; of each advice the last one counts
 */
public record VisitNotes(
        List<WorkTick> ticks,
        List<RivalReading> rivals,
        List<RivalAnswer> answers,
        List<Departure> departures,
        List<KeptPhoto> photos,
        List<ReadingAuthor> authors,
        List<Remark> remarks,
        List<Declined> declined) {
    public static final VisitNotes NONE =
            new VisitNotes(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public VisitNotes {
        ticks = List.copyOf(ticks);
        rivals = List.copyOf(rivals);
        answers = List.copyOf(answers);
        departures = List.copyOf(departures);
        photos = List.copyOf(photos);
        authors = List.copyOf(authors);
        remarks = List.copyOf(remarks);
        declined = List.copyOf(declined);
    }

    public boolean isEmpty() {
        return equals(NONE);
    }

    /** Those that a person chose for the hand-over sheet. */
    public List<KeptPhoto> photosOnSheet() {
        return photos.stream().filter(kept -> kept.photo().onSheet()).toList();
    }

    /** Who entered anything, in the order in which they first did. */
    public List<String> people() {
        var entered = Stream.of(
                        authors.stream().map(each -> Map.entry(each.madeAt(), each.person())),
                        ticks.stream().map(each -> Map.entry(each.madeAt(), each.person())),
                        departures.stream().map(each -> Map.entry(each.madeAt(), each.person())))
                .flatMap(each -> each);
        return entered.sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
    }

    /** What stands written on a topic. */
    public Optional<String> remark(Remark.Topic topic) {
        return Remark.standing(remarks).stream()
                .filter(remark -> remark.topic() == topic)
                .map(Remark::words)
                .findFirst();
    }

    /** Those that nobody let the car go with. */
    public List<OpenPoint> unanswered(List<OpenPoint> open) {
        return lastDeparture().map(departure -> departure.unanswered(open)).orElse(open);
    }

    /** The hand-over that counts; empty while the car is in the bay. */
    public Optional<Departure> lastDeparture() {
        return departures.isEmpty() ? Optional.empty() : Optional.of(departures.getLast());
    }
}
