package cornerbook.core.torque;

import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is said about fasteners, torque and wrenches. */
public interface TorqueSaid extends Said {
    /** Parts of an input, as a refusal names them. */
    enum Part implements TorqueSaid {
        TORQUE,
        TORQUE_OF_BAR,
        SPREAD_OF_BAR,
        WRENCH_LENGTH,
        ADAPTER_LENGTH,
        ADAPTER_ANGLE,
        OFFSET_OF_WRENCH,
        SETTING_OF_WRENCH,
        TOP_OF_SCALE,
        BOTTOM_OF_SCALE,
        HIGHEST_FRICTION,
        LOWEST_FRICTION,
        THREAD_DIAMETER,
        THREAD_PITCH,
        MEAN_DIAMETER_OF_SEAT,
        GRIP_OF_SEAT,
        OUTER_DIAMETER_OF_SEAT,
        INCLUDED_ANGLE,
        RADIUS_OF_BALL,
        FASTENERS_PER_WHEEL,
        WHEEL_TORQUE,
        RETORQUE_DISTANCE
    }

    /** Names of steps and evidence, and where they come from. */
    enum Label implements TorqueSaid {
        STRESS_AREA,
        LEAST_CLAMP_LOAD,
        MOST_CLAMP_LOAD,
        TORQUE_AT_YIELD,
        THREAD_FORMULA_SOURCE,
        VDI_SECTION,
        PITCH_SOURCE,
        METRIC_AREA_SOURCE,
        UNIFIED_AREA_SOURCE,
        GRADE_SOURCE,
        CLASS_SOURCE,
        TO_READ_ON_WRENCH,
        SETTING_SOURCE,
        MOST_OF_PROOF_LOAD,
        COUNT_FORMULA,
        COUNT_SOURCE,
        LEAST_OF_BAR,
        MOST_OF_BAR,
        LEAST_OF_BAR_FORMULA,
        MOST_OF_BAR_FORMULA,
        SPREAD_ENTERED,
        SPREAD_ENTERED_AND_SHARE,
        BETWEEN_CALIBRATIONS,
        CYCLES_LEFT,
        CALIBRATION_SOURCE,
        SETTING,
        MOMENTS,
        RECORDED,
        ASKED,
        SPECIFICATION_CLEAN,
        SPECIFICATION,
        RETORQUE_AFTER,
        CLAMP_LOAD_DRY,
        CLAMP_LOAD_SOURCE,
        LUBRICATED,
        LUBRICATED_SOURCE,
        WRENCH_ACCURACY,
        WRENCH_ACCURACY_SOURCE,
        TORQUE_SOURCE
    }

    /** What to mind, whatever the numbers. */
    enum Caution implements TorqueSaid {
        LOWEST_FIFTH,
        GO_ROUND_TWICE,
        BAR_RUNS_UP,
        DUE_FOR_CALIBRATION,
        HOLD_IN_THE_MIDDLE,
        CLICKS_WITHOUT_TURNING
    }

    /** A property class or grade by what stands on the head: "class 10.9", "grade 8". */
    record Strength(String number, boolean grade) implements TorqueSaid {}

    record PassesProofLoad(String thread, Strength strength) implements TorqueSaid {}

    record PassesYield(String thread, Strength strength) implements TorqueSaid {}

    record PitchDiameter(String thread) implements TorqueSaid {}

    record ProofLoad(Strength strength) implements TorqueSaid {}

    record SettingFormula(Amount click, Amount offset) implements TorqueSaid {}

    record ClampsMore(Amount least, Amount most, ThreadState state) implements TorqueSaid {}

    record CanPassProofLoad(String thread, Strength strength, ThreadState state) implements TorqueSaid {}

    record ShortFormSource(ThreadState state) implements TorqueSaid {}

    record LeastClampLoad(ThreadState state) implements TorqueSaid {}

    record MostClampLoad(ThreadState state) implements TorqueSaid {}

    record BarTooStrong(Amount share) implements TorqueSaid {}

    /**
     * To what a wheel is tightened.
     *
     * @param torque null while nobody has looked it up
     */
    record TightenedTo(@Nullable Amount torque) implements TorqueSaid {}

    record CyclesLeft(int cycles) implements TorqueSaid {}

    record CalibratedAfter(LocalDate calibratedOn, LocalDate day) implements TorqueSaid {}

    record NegativeCycles(int cycles) implements TorqueSaid {}

    record AdapterTooLong(Amount adapter, Amount angle, Amount wrench) implements TorqueSaid {}

    record FastenerCount(int count, int fewest, int most) implements TorqueSaid {}

    record NoThread(Quoted written) implements TorqueSaid {}

    record NoInchThread(Quoted written) implements TorqueSaid {}

    record NoCoarsePitch(Quoted written) implements TorqueSaid {}

    record NoPropertyClass(Quoted written, List<Said> known) implements TorqueSaid {
        public NoPropertyClass {
            known = List.copyOf(known);
        }
    }

    record NoSeat(Quoted written) implements TorqueSaid {}

    record NoThreadState(Quoted written) implements TorqueSaid {}

    record NotRecorded(Corner corner, String tag) implements TorqueSaid {}

    record Ticked(int wheels, List<Corner> corners) implements TorqueSaid {
        public Ticked {
            corners = List.copyOf(corners);
        }
    }

    record Recorded(Corner corner, Amount torque, Amount asked) implements TorqueSaid {}

    record NotTight(Corner corner) implements TorqueSaid {}

    record UnderTorque(Corner corner, Amount under, Amount percent, Amount asked) implements TorqueSaid {}

    record TooTight(Corner corner, Amount over, Amount percent, Amount asked) implements TorqueSaid {}

    /** More off than a wrench in order may be, and within the band yet. */
    record NearTorque(Corner corner, Amount off, Amount percent, boolean under, Amount asked) implements TorqueSaid {}

    record AtTorque(Corner corner) implements TorqueSaid {}

    /** While the wrench is in the hand. */
    record TightenOn(Amount asked) implements TorqueSaid {}

    /** The same of a wheel that was overtightened. */
    record LoosenFirst(Amount asked) implements TorqueSaid {}

    record AskedFor(Amount torque, String thread, int count) implements TorqueSaid {}

    record ClampsBetween(Between percent) implements TorqueSaid {}
}
