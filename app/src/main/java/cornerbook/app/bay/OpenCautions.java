package cornerbook.app.bay;

import cornerbook.app.book.bay.BayNotes;
import cornerbook.app.book.bay.OpenCaution;
import cornerbook.app.book.bay.OpenCaution.Kind;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Scale;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What must be closed before a car leaves, or have a reason. Common practice, no source. */
final class OpenCautions {
    /** Opens a caution once the wheels that it leaves on are recorded. */
    private static final String WHEELS_ON = "WHEELS_ON";

    /** Followed by the corner: every fastener was ticked, or a torque was read; and no tick was taken back. */
    private static final String TIGHT = "TIGHT.";

    /** Work for which the caliper comes off its pads. */
    private static final List<Measure> CALIPER_OFF = List.of(
            Measure.BRACKET_CLEANED,
            Measure.PAD_MOVEMENT_AFTER_SERVICE,
            Measure.PADS_REPLACED,
            Measure.DISC_REPLACED,
            Measure.BRAKE_HARDWARE_REPLACED,
            Measure.PISTON_MOVEMENT);

    private OpenCautions() {}

    /**
     * A caution of the work.
     *
     * @param openedBy any of these opens it: a reading by its field key up to the corner, or WHEELS_ON
     * @param closedBy the reading that closes it, the same way
     */
    record Caution(OpenCaution of, List<String> openedBy, String closedBy) {
        Caution {
            openedBy = List.copyOf(openedBy);
        }

        private Caution(Kind kind, @Nullable Corner corner, List<String> openedBy, String closedBy) {
            this(new OpenCaution(kind, corner), openedBy, closedBy);
        }
    }

    /**
     * Every caution, open or not.
     *
     * @param secondCheck whether the shop asks a second person to check the torque
     */
    static List<Caution> all(boolean secondCheck) {
        var cautions = new ArrayList<Caution>();
        cautions.add(new Caution(
                Kind.SERVICE_MODE,
                null,
                List.of(place(Measure.PARKING_BRAKE_IN_SERVICE_MODE, null)),
                place(Measure.PARKING_BRAKE_CYCLED, null)));
        for (var corner : Corner.values()) {
            cautions.add(new Caution(
                    Kind.CALIPER, corner, at(CALIPER_OFF, corner).toList(), place(Measure.CALIPER_CLOSED, corner)));
            cautions.add(new Caution(
                    Kind.BRACKET,
                    corner,
                    List.of(place(Measure.DISC_REPLACED, corner)),
                    place(Measure.BRACKET_BOLTS_TORQUED, corner)));
        }
        cautions.add(new Caution(
                Kind.PEDAL,
                null,
                Arrays.stream(Corner.values())
                        .flatMap(corner -> at(CALIPER_OFF, corner))
                        .toList(),
                place(Measure.PEDAL_PUMPED, null)));
        for (var corner : Corner.values()) {
            cautions.add(new Caution(Kind.TORQUE, corner, List.of(WHEELS_ON), TIGHT + corner));
        }
        if (secondCheck) {
            cautions.add(new Caution(Kind.SECOND_CHECK, null, List.of(WHEELS_ON), Ticks.SECOND_CHECK));
        }
        return List.copyOf(cautions);
    }

    private static Stream<String> at(List<Measure> measures, Corner corner) {
        return measures.stream().map(measure -> place(measure, corner));
    }

    /** Those that are open by what the book has. */
    static List<Caution> of(Visit visit, BayNotes notes, boolean secondCheck) {
        var done = done(visit);
        tight(visit, notes).forEach(corner -> done.add(TIGHT + corner));
        if (isChecked(visit, notes)) {
            done.add(Ticks.SECOND_CHECK);
        }
        return all(secondCheck).stream()
                .filter(caution -> caution.openedBy().stream().anyMatch(done::contains))
                .filter(caution -> !done.contains(caution.closedBy()))
                .toList();
    }

    /** What was read, by measure and corner; "not done" is nothing, and a wheel that came off closes nothing. */
    private static Set<String> done(Visit visit) {
        var read = new StandingReadings(visit)
                .all().stream()
                        .filter(reading ->
                                reading.wheelTag() == null || visit.leftOn().containsValue(reading.wheelTag()))
                        .filter(reading -> reading.measure().scale() != Scale.DONE || reading.value() > 0)
                        .map(OpenCautions::place);
        return new HashSet<>(Stream.concat(read, visit.leftOn().isEmpty() ? Stream.empty() : Stream.of(WHEELS_ON))
                .toList());
    }

    private static Set<Corner> tight(Visit visit, BayNotes notes) {
        var tight = EnumSet.noneOf(Corner.class);
        tight.addAll(visit.tightened());
        torques(visit).map(Reading::corner).filter(Objects::nonNull).forEach(tight::add);
        tight.removeAll(StandingTicks.of(notes.ticks()).loosened(visit.leftOn()));
        return tight;
    }

    /** The torques that stand of the wheels that it leaves on. */
    private static Stream<Reading> torques(Visit visit) {
        return new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> reading.measure() == Measure.WHEEL_TORQUE
                                && visit.leftOn().containsValue(reading.wheelTag()));
    }

    /**
     * By another person than all who ticked a fastener or wrote a torque down, who had each of these before the eyes: what
     * was tightened after, or on another tablet meanwhile, is not checked.
     */
    private static boolean isChecked(Visit visit, BayNotes notes) {
        var ticks = StandingTicks.of(notes.ticks());
        var check = ticks.find(Ticks.SECOND_CHECK, null).filter(WorkTick::done);
        if (check.isEmpty()) {
            return false;
        }
        var seen = check.get().seen();
        var checker = check.get().person();
        boolean byAnother = Stream.concat(
                        ticks.fasteners(visit.leftOn()).stream()
                                .filter(WorkTick::done)
                                .map(WorkTick::person),
                        torques(visit)
                                .flatMap(reading ->
                                        Optional.ofNullable(notes.authors().get(reading.id())).stream())
                                .map(ReadingAuthor::person))
                .noneMatch(checker::equals);
        return byAnother
                && ticks.on(visit.leftOn()).stream()
                        .filter(tick -> tick.done() && tick.tick().startsWith(WorkTick.FASTENER))
                        .allMatch(tick -> seen.contains(tick.id()))
                && torques(visit).allMatch(reading -> seen.contains(reading.id()));
    }

    private static String place(Reading reading) {
        return place(reading.measure(), reading.corner());
    }

    private static String place(Measure measure, @Nullable Corner corner) {
        return measure.name() + "." + (corner == null ? "" : corner.name());
    }
}
