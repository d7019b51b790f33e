package cornerbook.core.finding;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/**
 * What a finding asks for.
 *
 * @param by until when
 */
public record Todo(Action action, Said by) implements Said {
    /** What is to be done: one verb of the trade for each. */
    public enum Action implements Said {
        REPLACE,
        /** Both sides of the axle. */
        REPLACE_PAIR,
        /** Have it at hand before it runs out. */
        ORDER,
        SET_PRESSURE,
        FIND_LEAK,
        TORQUE_AGAIN,
        /** Free, clean and lubricate. */
        SERVICE_BRAKE,
        /** Find out why, and repair. */
        REPAIR,
        END_SERVICE_MODE,
        MEASURE_AGAIN,
        MEASURE_ALIGNMENT,
        CHECK_PRESSURE,
        CHARGE_AND_TEST,
        /** A battery that must not be charged as cold as it is. */
        WARM_UP_FIRST,
        INSPECT,
        FIT_ANOTHER_WHEEL,
        SWAP_WHEELS,
        REFIT,
        FIT_LAWFUL_TYRES,
        FIND_KEY,
        LIFT_OTHERWISE,
        /** On the hoist that is there, with a caution. */
        LIFT_WITH_CARE,
        CHECK_TOOL
    }

    /** A day of its own. */
    public record ByDay(LocalDate day) implements Said {}

    /** When it has no day of its own. */
    public enum When implements Said {
        BEFORE_DRIVING,
        /** Or somebody says why it leaves all the same. */
        BEFORE_LEAVING,
        NOW,
        BEFORE_FITTING,
        BEFORE_NEXT_VISIT,
        AT_NEXT_VISIT,
        /** When the wheels are tightened once more. */
        AT_RETORQUE,
        BEFORE_LIFTING
    }
}
