package cornerbook.app.desk.visit;

import cornerbook.app.book.Book;
import cornerbook.app.book.bay.Misplaced;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.visit.VisitSaid.StepTicked;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.PhotoWords;
import cornerbook.app.request.Told;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.MeasureAt;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What can be put right of a visit beside its readings.
 *
 * @param visit as it stands
 * @param fields what stands in each field, by its name; of the reason and the person too, once they are typed
 * @param person who works on the tablet that asks; null where the name is typed
 * @param error one sentence, may be empty
 * @param asked the odometer that is asked about
 * @param changes what was put right of this visit before, earliest first
 * @param movable what may stand in the wrong place
 */
public record VisitDataPage(
        CarHistory history,
        Visit visit,
        Map<String, String> fields,
        @Nullable String person,
        String error,
        AskedOdometer asked,
        List<VisitChange> changes,
        Movable movable) {
    /** Name of a field before the id of the reading that it chooses. */
    private static final String READING = "reading.";

    /** Name of a field before the step whose readings it chooses. */
    private static final String STEP = "step.";

    /** Name of a field before the id of the tick that it chooses, or before the corner whose fasteners it chooses. */
    private static final String TICK = "tick.";

    /** Name of a field before the id of the photo that it chooses. */
    private static final String PHOTO = "photo.";

    private static final String TICKS = "ticks";

    private static final String PHOTOS = "photos";

    public VisitDataPage {
        fields = Map.copyOf(fields);
        changes = List.copyOf(changes);
    }

    public String field(String name) {
        return fields.getOrDefault(name, "");
    }

    /** Whether a tick of the form was set when it was sent. */
    public boolean has(String name) {
        return fields.containsKey(name);
    }

    /** Whether something of a kind was chosen one by one: it opens by itself. */
    public boolean opens(Entered entered) {
        return entered.choices().stream().map(Choice::field).anyMatch(this::has);
    }

    public String came(Corner corner) {
        return field(VisitForm.CAME + corner);
    }

    public String left(Corner corner) {
        return field(VisitForm.LEFT + corner);
    }

    /** What the form brings back of the visit as it was shown, by name of the hidden field. */
    public Map<String, String> seen() {
        return VisitForm.seenFields(visit);
    }

    /**
     * What of the visit may stand in the wrong place, beside its readings.
     *
     * @param ticks that stand and say that a step is done
     * @param others visits of other cars on the same day, one of which may be that of the right car
     */
    public record Movable(List<WorkTick> ticks, List<Photo> photos, List<VisitSummary> others) {
        public Movable {
            ticks = List.copyOf(ticks);
            photos = List.copyOf(photos);
            others = List.copyOf(others);
        }

        static Movable of(Book book, OpenVisit open) {
            var visit = open.visit();
            return new Movable(
                    StandingTicks.of(book.bay().read(visit.id()).ticks()).on(visit.leftOn()).stream()
                            .filter(WorkTick::done)
                            .toList(),
                    book.photos().list(visit.id()),
                    book.visits().list(visit.date()).stream()
                            .filter(other -> !other.vehicleId()
                                    .equals(open.history().vehicle().id()))
                            .toList());
        }
    }

    /**
     * What was entered of one kind.
     *
     * @param field chooses all of it
     */
    public record Entered(String field, String title, List<Choice> choices) {}

    /** One thing, or the fasteners of one wheel, and the field that chooses it. */
    public record Choice(String field, String words) {}

    /** All that stands: the readings by the step in which each is read, then ticks and photos. */
    public List<Entered> entered() {
        var readings = Arrays.stream(WorkStep.values())
                .map(step -> new Entered(
                        STEP + step,
                        Told.begin(step),
                        standing(visit)
                                .filter(reading -> stepOf(reading) == step)
                                .map(reading -> new Choice(READING + reading.id(), words(reading)))
                                .toList()));
        var labels = Told.labels("app/desk/visit");
        var rest = Stream.of(
                new Entered(TICKS, labels.of("ticks-here"), ticks()),
                new Entered(
                        PHOTOS,
                        labels.of("photos-here"),
                        movable.photos().stream()
                                .map(photo -> new Choice(PHOTO + photo.id(), PhotoWords.of(photo)))
                                .toList()));
        return Stream.concat(readings, rest)
                .filter(entered -> !entered.choices().isEmpty())
                .toList();
    }

    private List<Choice> ticks() {
        var byField = movable.ticks().stream()
                .collect(Collectors.groupingBy(VisitDataPage::fieldOf, LinkedHashMap::new, Collectors.toList()));
        return byField.entrySet().stream()
                .map(each -> new Choice(each.getKey(), words(each.getValue())))
                .toList();
    }

    /** All fasteners of a wheel are one thing. */
    private static String fieldOf(WorkTick tick) {
        return TICK + (tick.corner() == null ? tick.id() : tick.corner());
    }

    private static String words(List<WorkTick> ticks) {
        var first = ticks.getFirst();
        return Told.begin(
                first.corner() == null
                        ? new StepTicked(first.tick())
                        : new VisitSaid.FastenersAt(first.corner(), ticks.size()));
    }

    private static String words(Reading reading) {
        return Told.say(Listed.commas(Stream.of(
                        reading.corner(),
                        new MeasureAt(reading.measure(), reading.spot()),
                        Said.verbatim(reading.asWritten()))
                .filter(Objects::nonNull)
                .map(Said.class::cast)
                .toList()));
    }

    /** What was chosen: one by one, by its kind, or all. */
    static Misplaced.Things chosen(Visit visit, Movable movable, Form typed) {
        boolean all = typed.has("all");
        return new Misplaced.Things(
                standing(visit)
                        .filter(reading ->
                                all || typed.has(STEP + stepOf(reading)) || typed.has(READING + reading.id()))
                        .map(Reading::id)
                        .collect(Collectors.toSet()),
                movable.ticks().stream()
                        .filter(tick -> all || typed.has(TICKS) || typed.has(fieldOf(tick)))
                        .map(WorkTick::id)
                        .collect(Collectors.toSet()),
                movable.photos().stream()
                        .filter(photo -> all || typed.has(PHOTOS) || typed.has(PHOTO + photo.id()))
                        .map(Photo::id)
                        .collect(Collectors.toSet()));
    }

    private static Stream<Reading> standing(Visit visit) {
        return new StandingReadings(visit).all().stream();
    }

    private static WorkStep stepOf(Reading reading) {
        return Arrays.stream(WorkStep.values())
                .filter(reading.measure()::isReadIn)
                .findFirst()
                .orElseThrow();
    }

    /** What was put right of a visit, earliest first. */
    static List<VisitChange> changes(Book book, OpenVisit open) {
        return book.visits().listChanges(open.history().vehicle().id()).stream()
                .filter(change -> change.visitId().equals(open.visit().id()))
                .toList();
    }

    /** The visits before and after, which it must fit between; empty for an only one. */
    public String neighbours() {
        int place = history.visits().indexOf(visit);
        return history.visits().stream()
                .filter(other -> Math.abs(history.visits().indexOf(other) - place) == 1)
                .map(other -> Told.say(new VisitSaid.Neighbour(
                        history.visits().indexOf(other) < place, other.date(), Amount.of(other.odometerKm(), "km"))))
                .collect(Collectors.joining(" "));
    }
}
