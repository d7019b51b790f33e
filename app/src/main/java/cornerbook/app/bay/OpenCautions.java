package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Caution;
import cornerbook.app.book.BayNotes;
import cornerbook.app.book.WorkTick;
import cornerbook.core.corner.Corner;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.Scale;
import cornerbook.core.visit.Visit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What must be closed before a car leaves, or have a reason. Common practice, no source. */
final class OpenCautions {
    /** Opens a caution once the wheels that it leaves on are recorded. */
    private static final String WHEELS_ON = "WHEELS_ON";

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
     * Every caution, open or not.
     *
     * @param secondCheck whether the shop asks a second person to check the torque
     */
    static List<Caution> all(boolean secondCheck) {
        var cautions = new ArrayList<Caution>();
        cautions.add(new Caution(
                "SERVICE_MODE",
                "The parking brake is still in service mode.",
                List.of(Measure.PARKING_BRAKE_IN_SERVICE_MODE + "."),
                Measure.PARKING_BRAKE_CYCLED + "."));
        for (var corner : Corner.values()) {
            cautions.add(new Caution(
                    "CALIPER." + corner,
                    "The caliper at %s is not closed.".formatted(corner),
                    CALIPER_OFF.stream().map(measure -> measure + "." + corner).toList(),
                    Measure.CALIPER_CLOSED + "." + corner));
            cautions.add(new Caution(
                    "BRACKET." + corner,
                    "The bracket bolts at %s are not torqued.".formatted(corner),
                    List.of(Measure.DISC_REPLACED + "." + corner),
                    Measure.BRACKET_BOLTS_TORQUED + "." + corner));
        }
        cautions.add(new Caution(
                "PEDAL",
                "The pedal was not pumped.",
                Arrays.stream(Corner.values())
                        .flatMap(corner -> CALIPER_OFF.stream().map(measure -> measure + "." + corner))
                        .toList(),
                Measure.PEDAL_PUMPED + "."));
        for (var corner : Corner.values()) {
            cautions.add(new Caution(
                    "TORQUE." + corner,
                    "The wheel at %s is not torqued.".formatted(corner),
                    List.of(WHEELS_ON),
                    Measure.WHEEL_TORQUE + "." + corner));
        }
        if (secondCheck) {
            cautions.add(new Caution(
                    Ticks.SECOND_CHECK,
                    "Nobody but the one who tightened has checked the torque.",
                    List.of(WHEELS_ON),
                    Ticks.SECOND_CHECK));
        }
        return List.copyOf(cautions);
    }

    /** Those that are open by what the book has. */
    static List<Caution> of(Visit visit, BayNotes notes, boolean secondCheck) {
        var done = done(visit);
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
        var read = BayStates.standing(visit).stream()
                .filter(reading -> reading.wheelTag() == null || visit.leftOn().containsValue(reading.wheelTag()))
                .filter(reading -> reading.measure().scale() != Scale.DONE || reading.value() > 0)
                .map(OpenCautions::place);
        return new HashSet<>(Stream.concat(read, visit.leftOn().isEmpty() ? Stream.empty() : Stream.of(WHEELS_ON))
                .toList());
    }

    /** By another person than all who ticked a fastener or wrote a torque down, and after the last of them. */
    private static boolean isChecked(Visit visit, BayNotes notes) {
        var last = new HashMap<String, WorkTick>();
        notes.ticks().forEach(tick -> last.put(tick.tick(), tick));
        var check = last.get(Ticks.SECOND_CHECK);
        if (check == null || !check.done()) {
            return false;
        }
        boolean ticked = last.values().stream()
                .filter(tick -> tick.done() && tick.tick().startsWith(Ticks.FASTENER))
                .allMatch(tick -> checks(check, tick.person(), tick.madeAt()));
        return ticked
                && BayStates.standing(visit).stream()
                        .filter(reading -> reading.measure() == Measure.WHEEL_TORQUE)
                        .flatMap(reading -> Optional.ofNullable(notes.authors().get(reading.id())).stream())
                        .allMatch(author -> checks(check, author.person(), author.madeAt()));
    }

    /** The moments are those of the tablets: where their clocks differ it may be asked for once more than needed. */
    private static boolean checks(WorkTick check, String tightenedBy, Instant tightenedAt) {
        return !check.person().equals(tightenedBy) && !check.madeAt().isBefore(tightenedAt);
    }

    private static String place(Reading reading) {
        return reading.measure() + "." + (reading.corner() == null ? "" : reading.corner());
    }
}
