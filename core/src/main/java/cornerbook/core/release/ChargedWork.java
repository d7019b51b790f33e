package cornerbook.core.release;

import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.price.Job;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Work at one place of a car that a customer pays for by itself: a part that was fitted or repaired, of which the price list has a line.
 * What is measured, and what every visit does of itself, as freeing and lubricating, is none.
 *
 * @param axle where it is one job for both of its sides; else null
 * @param corner where it is done at one corner; null for what is done at an axle or once for the car
 */
public record ChargedWork(
        Job job, @Nullable Axle axle, @Nullable CornerName corner) implements Said {
    /** The readings that say that it was done. */
    private static final Map<Measure, Job> DONE_BY = Map.of(
            Measure.PADS_REPLACED, Job.PADS,
            Measure.DISC_REPLACED, Job.DISCS,
            Measure.SHOES_REPLACED, Job.SHOES,
            Measure.DRUM_REPLACED, Job.DRUMS,
            Measure.BRAKE_HOSE_REPLACED, Job.BRAKE_HOSE,
            Measure.BRAKE_FLUID_REPLACED, Job.BRAKE_FLUID,
            Measure.PUNCTURE_REPAIRED, Job.TYRE_REPAIR);

    /** What an advice to replace a part comes to. */
    private static final Map<Subject.Part, Job> REPLACED = Map.of(
            Subject.Part.PAD, Job.PADS,
            Subject.Part.DISC, Job.DISCS,
            Subject.Part.SHOE, Job.SHOES,
            Subject.Part.DRUM, Job.DRUMS,
            Subject.Part.BRAKE_LINE, Job.BRAKE_HOSE,
            Subject.Part.BRAKE_FLUID, Job.BRAKE_FLUID);

    /** The work that a reading of this measure says was done; empty where it says nothing of the kind. */
    public static Optional<ChargedWork> of(Measure measure, @Nullable Corner corner) {
        return Optional.ofNullable(DONE_BY.get(measure)).map(job -> at(job, corner));
    }

    /** The same job at each of these corners, axles or once for the car; all of them where none is named. */
    public static List<ChargedWork> of(Job job, Collection<Corner> corners) {
        if (!DONE_BY.containsValue(job)) {
            return List.of();
        }
        var places = corners.isEmpty() ? List.of(Corner.values()) : corners;
        return places.stream().map(corner -> at(job, corner)).distinct().toList();
    }

    private static ChargedWork at(Job job, @Nullable Corner corner) {
        return switch (job.per()) {
            case CAR -> new ChargedWork(job, null, null);
            case AXLE -> new ChargedWork(job, Objects.requireNonNull(corner).axle(), null);
            case CORNER, TYRE -> new ChargedWork(job, null, new CornerName(Objects.requireNonNull(corner)));
        };
    }

    /**
     * What an advice asks for, by its key alone: the part, its corner where it has one, and the action. An advice for several corners
     * names the first.
     */
    public static List<ChargedWork> ofAdvice(String key) {
        var words = List.of(key.split("\\.", -1));
        var corners = Arrays.stream(Corner.values())
                .filter(corner -> words.contains(corner.name()))
                .toList();
        return jobOf(words).map(job -> of(job, corners)).orElse(List.of());
    }

    private static Optional<Job> jobOf(List<String> words) {
        var part = words.getFirst();
        if (words.contains(Todo.Action.FIND_LEAK.name())
                || (part.equals(Subject.Part.TYRE_DAMAGE.name()) && words.contains(Todo.Action.REPAIR.name()))) {
            return Optional.of(Job.TYRE_REPAIR);
        }
        return Stream.of(Todo.Action.REPLACE, Todo.Action.REPLACE_PAIR)
                        .anyMatch(action -> words.contains(action.name()))
                ? REPLACED.entrySet().stream()
                        .filter(each -> each.getKey().name().equals(part))
                        .map(Map.Entry::getValue)
                        .findFirst()
                : Optional.empty();
    }

    /** All of it that a car can have, in the order of the price list. */
    public static List<ChargedWork> possible(Vehicle vehicle) {
        return Arrays.stream(Job.values())
                .flatMap(job -> of(job, List.of()).stream())
                .filter(work -> work.measures()
                        .anyMatch(measure -> work.corners().stream()
                                .anyMatch(corner -> measure.isOn(
                                        vehicle, measure.carrier() == Measure.Carrier.VEHICLE ? null : corner.axle()))))
                .toList();
    }

    /** What was done of it at a visit, by the readings that stand. */
    public static List<ChargedWork> done(Visit visit) {
        return new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> DONE_BY.containsKey(reading.measure()) && !isNotDone(reading))
                        .map(reading -> at(Objects.requireNonNull(DONE_BY.get(reading.measure())), reading.corner()))
                        .distinct()
                        .toList();
    }

    private static boolean isNotDone(Reading reading) {
        var scale = reading.measure().scale();
        return scale != null && scale.saysNotDone(reading.value());
    }

    /** By its key; empty where there is no such work. */
    public static Optional<ChargedWork> find(String key) {
        return Arrays.stream(Job.values())
                .flatMap(job -> of(job, List.of()).stream())
                .filter(work -> work.key().equals(key))
                .findFirst();
    }

    /** As the book and the bay sheet name it: "PADS.FRONT", "BRAKE_HOSE.LF", "BRAKE_FLUID". */
    public String key() {
        return Stream.of(job, axle, corner == null ? null : corner.corner())
                .filter(Objects::nonNull)
                .map(Enum::name)
                .collect(Collectors.joining("."));
    }

    /** Where it is done: one corner, both of an axle, or all of them. */
    public List<Corner> corners() {
        return Arrays.stream(Corner.values())
                .filter(each -> axle == null || each.axle() == axle)
                .filter(each -> corner == null || each == corner.corner())
                .toList();
    }

    /** The places of the bay sheet that say that it was done, as a release rule names them. */
    public List<String> places() {
        return measures()
                .flatMap(measure -> measure.carrier() == Measure.Carrier.VEHICLE
                        ? Stream.of(ReleaseRule.place(measure, null))
                        : corners().stream().map(each -> ReleaseRule.place(measure, each)))
                .toList();
    }

    private Stream<Measure> measures() {
        return DONE_BY.entrySet().stream()
                .filter(each -> each.getValue() == job)
                .map(Map.Entry::getKey);
    }

    /** What keeps a car from leaving while nobody has agreed to it. */
    public OpenPoint notAgreed() {
        return OpenPoint.notAgreed(this);
    }
}
