package cornerbook.core.finding;

import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What was done at a visit, from what was recorded there: the wheels that it left on, its readings and its ticks. A visit that came
 * as a file may say more in words of its own; they stand behind, as they are.
 */
final class WorkDone {
    private final CarHistory history;
    private final Visit visit;
    private final StandingReadings readings;
    private final List<Said> done = new ArrayList<>();

    private WorkDone(CarHistory history, Visit visit, StandingReadings readings) {
        this.history = history;
        this.visit = visit;
        this.readings = readings;
    }

    static List<Said> of(CarHistory history, Visit visit, StandingReadings readings) {
        var work = new WorkDone(history, visit, readings);
        work.addWheels();
        work.addBrakes();
        work.addPunctures();
        work.addAir();
        work.addTightening();
        visit.card().workDone().forEach(line -> work.done.add(Said.verbatim(line)));
        return List.copyOf(work.done);
    }

    private void addWheels() {
        var arrived = visit.arrivedOn();
        var left = visit.leftOn();
        if (left.isEmpty() || left.equals(arrived)) {
            return;
        }
        var off = history.findSetOn(arrived);
        var on = history.findSetOn(left);
        if (on.isPresent() && !on.equals(off)) {
            var fitted = new SetOf(on.get().season());
            done.add(off.<Work>map(set -> new Work.WheelsChanged(new SetOf(set.season()), fitted))
                    .orElse(new Work.WheelsFitted(fitted)));
        } else if (new HashSet<>(left.values()).equals(new HashSet<>(arrived.values()))) {
            done.add(new Work.WheelsRotated());
        } else {
            addAt(
                    corner -> left.containsKey(corner) && !arrived.containsValue(left.get(corner)),
                    Work.WheelsExchanged::new);
        }
    }

    private void addBrakes() {
        addAt(corner -> isDone(Measure.PADS_REPLACED, corner), Work.PadsReplaced::new);
        addAt(corner -> isDone(Measure.DISC_REPLACED, corner), Work.DiscsReplaced::new);
        addAt(corner -> isDone(Measure.SHOES_REPLACED, corner), Work.ShoesReplaced::new);
        addAt(corner -> isDone(Measure.DRUM_REPLACED, corner), Work.DrumsReplaced::new);
        addAt(corner -> isDone(Measure.WHEEL_CYLINDER_REPLACED, corner), Work.WheelCylindersReplaced::new);
        addAt(corner -> isDone(Measure.BRAKE_HOSE_REPLACED, corner), Work.HosesReplaced::new);
        addAt(corner -> isDone(Measure.BRAKE_HARDWARE_REPLACED, corner), Work.HardwareReplaced::new);
        addAt(corner -> isCleaned(corner) && isLubricated(corner), Work.CleanedAndLubricated::new);
        addAt(corner -> isCleaned(corner) && !isLubricated(corner), Work.Cleaned::new);
        addAt(corner -> !isCleaned(corner) && isLubricated(corner), Work.Lubricated::new);
        addAt(corner -> at(Measure.DISC_MOVED_BY, corner).isPresent(), Work.DiscsMovedOn::new);
        if (readings.ofVehicle(Measure.BRAKE_FLUID_REPLACED)
                .filter(WorkDone::isYes)
                .isPresent()) {
            done.add(new Work.FluidReplaced());
        }
    }

    /** Movement that was read after service says that the guides of the pads were cleaned and lubricated. */
    private boolean isCleaned(Corner corner) {
        return isDone(Measure.BRACKET_CLEANED, corner)
                || isDone(Measure.SHOES_CLEANED, corner)
                || at(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner).isPresent();
    }

    private boolean isLubricated(Corner corner) {
        return isDone(Measure.PIN_LUBRICANT, corner)
                || isDone(Measure.ABUTMENT_LUBRICANT, corner)
                || at(Measure.PAD_MOVEMENT_AFTER_SERVICE, corner).isPresent();
    }

    private void addPunctures() {
        var tags = readings.all(Measure.PUNCTURE_REPAIRED).stream()
                .filter(WorkDone::isYes)
                .map(Reading::wheelTag)
                .filter(Objects::nonNull)
                .map(Said::verbatim)
                .toList();
        if (!tags.isEmpty()) {
            done.add(new Work.PuncturesRepaired(Listed.and(tags)));
        }
    }

    private void addAir() {
        var set = ofWheels(
                Measure.PRESSURE_SET,
                (corner, reading) -> new Work.PressureAt(corner, Amount.of(reading.value(), "kPa")));
        if (!set.isEmpty()) {
            done.add(new Work.PressuresSet(Listed.commas(set)));
        }
    }

    private void addTightening() {
        var torqued = ofWheels(
                Measure.WHEEL_TORQUE,
                (corner, reading) -> new Work.TorqueAt(corner, Amount.of(reading.value(), "N·m")));
        if (!torqued.isEmpty()) {
            done.add(new Work.WheelsTorqued(Listed.commas(torqued)));
        }
        addAt(
                corner -> visit.tightened().contains(corner)
                        && at(Measure.WHEEL_TORQUE, corner).isEmpty(),
                Work.WheelsTightened::new);
    }

    private interface Told {
        Said at(Corner corner, Reading reading);
    }

    private List<Said> ofWheels(Measure measure, Told told) {
        return Arrays.stream(Corner.values())
                .flatMap(corner -> at(measure, corner).map(reading -> told.at(corner, reading)).stream())
                .toList();
    }

    private void addAt(Predicate<Corner> where, Function<Listed, Work> work) {
        var corners = Arrays.stream(Corner.values()).filter(where).toList();
        if (!corners.isEmpty()) {
            done.add(work.apply(Listed.and(corners)));
        }
    }

    private boolean isDone(Measure measure, Corner corner) {
        return at(measure, corner).filter(WorkDone::isYes).isPresent();
    }

    /** The first word of a scale says that nothing was done, or that nothing went on. */
    private static boolean isYes(Reading reading) {
        return Math.round(reading.value()) > 0;
    }

    private Optional<Reading> at(Measure measure, Corner corner) {
        return readings.ofCorner(measure, corner, null);
    }
}
