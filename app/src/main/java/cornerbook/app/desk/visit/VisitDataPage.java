package cornerbook.app.desk.visit;

import cornerbook.app.book.Book;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.visit.VisitSummary;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
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
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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
 * @param others visits of other cars on the same day, one of which may be that of the right car
 */
public record VisitDataPage(
        CarHistory history,
        Visit visit,
        Map<String, String> fields,
        @Nullable String person,
        String error,
        AskedOdometer asked,
        List<VisitChange> changes,
        List<VisitSummary> others) {
    /** Name of a field before the id of the reading that it chooses. */
    private static final String READING = "reading.";

    /** Name of a field before the step whose readings it chooses. */
    private static final String STEP = "step.";

    public VisitDataPage {
        fields = Map.copyOf(fields);
        changes = List.copyOf(changes);
        others = List.copyOf(others);
    }

    public String field(String name) {
        return fields.getOrDefault(name, "");
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
     * What was read in one step.
     *
     * @param field chooses all of it
     */
    public record ReadInStep(String field, WorkStep step, List<Choice> readings) {}

    /** One reading, and the field that chooses it. */
    public record Choice(String field, String words) {}

    /** All that stands, by the step in which it is read. */
    public List<ReadInStep> entered() {
        return Arrays.stream(WorkStep.values())
                .map(step -> new ReadInStep(
                        STEP + step,
                        step,
                        standing(visit)
                                .filter(reading -> stepOf(reading) == step)
                                .map(reading -> new Choice(READING + reading.id(), words(reading)))
                                .toList()))
                .filter(step -> !step.readings().isEmpty())
                .toList();
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

    /** The ids of the readings that were chosen: one by one, by their step, or all. */
    static Set<String> chosen(Visit visit, Form typed) {
        return standing(visit)
                .filter(reading ->
                        typed.has("all") || typed.has(STEP + stepOf(reading)) || typed.has(READING + reading.id()))
                .map(Reading::id)
                .collect(Collectors.toSet());
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
