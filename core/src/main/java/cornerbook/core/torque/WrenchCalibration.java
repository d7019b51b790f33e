package cornerbook.core.torque;

import cornerbook.core.say.Said;

import cornerbook.core.why.Explained;
import cornerbook.core.why.Step;
import java.time.LocalDate;
import java.util.List;

/**
 * When a torque wrench has to be calibrated again: 12 months or 5000 cycles after the last time, whichever comes first,
 * unless the shop has a rule of its own (ISO 6789:2003 as quoted by a maker of wrenches).
 *
 * @param cyclesSince clicks since the last calibration
 * @param askedOn the day asked
 * @param dueOn latest day
 * @param cyclesLeft 0 when used up
 * @param due on the day asked
 */
public record WrenchCalibration(
        LocalDate calibratedOn,
        int cyclesSince,
        LocalDate askedOn,
        LocalDate dueOn,
        int cyclesLeft,
        boolean due,
        List<Said> cautions,
        List<Step> steps)
        implements Explained {
    private static final int MONTHS = 12;
    private static final int CYCLES = 5000;
    private static final String SOURCE = "ISO 6789:2003, quoted by a maker of wrenches: 12 months or 5000 cycles";

    public WrenchCalibration {
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
    }

    /** Judged on a day that is not before the last calibration. */
    public static WrenchCalibration of(LocalDate calibratedOn, int cyclesSince, LocalDate day) {
        if (day.isBefore(calibratedOn)) {
            throw new IllegalArgumentException(
                    "wrench was calibrated on %s, expected a day not after %s".formatted(calibratedOn, day));
        }
        if (cyclesSince < 0) {
            throw new IllegalArgumentException(
                    "cycles of the wrench are %d, expected 0 or more".formatted(cyclesSince));
        }
        var dueOn = calibratedOn.plusMonths(MONTHS);
        int left = Math.max(0, CYCLES - cyclesSince);
        boolean due = left == 0 || !day.isBefore(dueOn);
        return new WrenchCalibration(
                calibratedOn,
                cyclesSince,
                day,
                dueOn,
                left,
                due,
                due ? Said.verbatims("The wrench is due for calibration: do not trust its setting.") : List.of(),
                List.of(
                        new Step("time between calibrations", "table", MONTHS, "months", SOURCE),
                        new Step(
                                "cycles left",
                                "5000 − cycles since, %d".formatted(cyclesSince),
                                left,
                                "cycles",
                                SOURCE)));
    }
}
