package cornerbook.app.sheet;

import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.book.work.Remark.Topic;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WorkStep;
import cornerbook.core.corner.Corner;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Which steps a visit had, who worked in each, and when by the tablets' clocks. */
public final class StepTimes {
    private static final Map<String, WorkStep> STEP_OF_TICK = Map.of(
            WorkTick.RECEIVED, WorkStep.RECEIVE,
            WorkTick.ROCKED, WorkStep.LIFT,
            WorkTick.SECOND_CHECK, WorkStep.TORQUE,
            WorkTick.BURNISHED, WorkStep.AFTER_THE_DRIVE);

    private static final Map<Corner, Topic> BRAKE = Map.of(
            Corner.LF, Topic.BRAKE_LF, Corner.RF, Topic.BRAKE_RF, Corner.LR, Topic.BRAKE_LR, Corner.RR, Topic.BRAKE_RR);

    private final Visit visit;
    private final VisitNotes notes;
    private final Reader reader;
    private final Labels labels;
    private final Set<WorkStep> worked = EnumSet.noneOf(WorkStep.class);
    private final Map<Topic, Times> timed = new EnumMap<>(Topic.class);

    StepTimes(Visit visit, VisitNotes notes, Reader reader) {
        this.visit = visit;
        this.notes = notes;
        this.reader = reader;
        this.labels = reader.labels(SheetPage.ROOM);
        var readings = visit.readings().stream().collect(Collectors.toMap(Reading::id, reading -> reading));
        notes.authors()
                .forEach(author -> Optional.ofNullable(readings.get(author.readingId()))
                        .ifPresent(reading -> take(step(reading), reading.corner(), author.person(), author.madeAt())));
        notes.ticks().stream()
                .filter(tick -> tick.reason() == null)
                .forEach(tick -> step(tick).ifPresent(step -> take(step, null, tick.person(), tick.madeAt())));
        new StandingReadings(visit).all().forEach(reading -> worked.add(step(reading)));
    }

    /** One line of the table. */
    public record Line(String what, String when, String who) {}

    private static final class Times {
        private Instant first = Instant.MAX;
        private Instant last = Instant.MIN;
        private final Set<String> people = new LinkedHashSet<>();

        private void take(String person, Instant moment) {
            first = moment.isBefore(first) ? moment : first;
            last = moment.isAfter(last) ? moment : last;
            people.add(person);
        }
    }

    private void take(WorkStep step, @Nullable Corner corner, String person, Instant moment) {
        worked.add(step);
        timed.computeIfAbsent(topic(step, corner), unused -> new Times()).take(person, moment);
    }

    /** The tablet's step. */
    private static Topic topic(WorkStep step, @Nullable Corner corner) {
        return switch (step) {
            case RECEIVE -> Topic.RECEIVE;
            case LOOK_ROUND, LIFT, BEFORE_THE_BRAKES -> Topic.LIFT;
            case PEDAL_AND_PARKING_BRAKE, BRAKE_FLUID -> Topic.PEDAL;
            case WHEELS_OFF -> Topic.OFF;
            case WHEELS_ON, LOOK_OVER_STORED, SIDEWALLS -> Topic.ON;
            case TEMPERATURES, PRESSURE, SENSORS -> Topic.PRESSURE;
            case TORQUE -> Topic.TORQUE;
            case BATTERY, BATTERY_CHARGED -> Topic.BATTERY;
            case AFTER_THE_DRIVE -> Topic.BURNISH;
            // What is looked at, measured and done at one corner.
            default -> corner == null ? Topic.LIFT : BRAKE.getOrDefault(corner, Topic.LIFT);
        };
    }

    /** A wheel that came on the car is read as it comes off, any other before it goes on. */
    private WorkStep step(Reading reading) {
        var steps = Arrays.stream(WorkStep.values())
                .filter(reading.measure()::isReadIn)
                .toList();
        boolean goesOn = reading.wheelTag() != null && !visit.arrivedOn().containsValue(reading.wheelTag());
        return steps.stream()
                .filter(step -> (step.wheels() == WorkStep.Wheels.FROM_STORE) == goesOn)
                .findFirst()
                .orElse(steps.getFirst());
    }

    private static Optional<WorkStep> step(WorkTick tick) {
        return Optional.ofNullable(
                tick.tick().startsWith(WorkTick.FASTENER) ? WorkStep.TORQUE : STEP_OF_TICK.get(tick.tick()));
    }

    /** In the order of the work, then the hand-over; empty when nothing was entered at a tablet. */
    List<Line> lines() {
        var lines = new ArrayList<Line>();
        timed.forEach((topic, times) -> lines.add(
                new Line(reader.say(topic), between(times.first, times.last), String.join(", ", times.people))));
        notes.lastDeparture().ifPresent(departure -> lines.add(handedOver(departure)));
        return lines;
    }

    private Line handedOver(Departure departure) {
        return new Line(reader.say(Topic.DEPART), at(departure.madeAt()), departure.person());
    }

    private String between(Instant first, Instant last) {
        var from = at(first);
        var until = reader.date(first).equals(reader.date(last)) ? reader.time(last) : at(last);
        return reader.time(first).equals(reader.time(last))
                ? from
                : labels.of("from-until", "from", from, "until", until);
    }

    /** The time of day; with its day where that is not the visit's. */
    private String at(Instant moment) {
        return reader.date(moment).equals(visit.date()) ? reader.time(moment) : labels.of("moment", "moment", moment);
    }

    /** What somebody worked in, and what has to come before it. */
    Set<WorkStep> worked() {
        var all = EnumSet.noneOf(WorkStep.class);
        all.addAll(worked);
        if (worked.stream().anyMatch(step -> isBetween(step, WorkStep.PADS_AND_MOVEMENT, WorkStep.CLOSED))) {
            all.add(WorkStep.BEFORE_THE_BRAKES);
        }
        if (worked.stream()
                .anyMatch(step -> isBetween(step, WorkStep.BEFORE_THE_BRAKES, WorkStep.CLOSED)
                        || step == WorkStep.WHEELS_ON
                        || step == WorkStep.WHEELS_OFF)) {
            all.add(WorkStep.LIFT);
        }
        return all;
    }

    private static boolean isBetween(WorkStep step, WorkStep first, WorkStep last) {
        return step.compareTo(first) >= 0 && step.compareTo(last) <= 0;
    }
}
