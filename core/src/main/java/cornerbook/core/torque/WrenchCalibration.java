package cornerbook.core.torque;

import cornerbook.core.say.Refused;
import cornerbook.core.torque.TorqueSaid.Label;
import cornerbook.core.why.Basis;
import cornerbook.core.why.Explained;
import cornerbook.core.why.Explanation;
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
        Explanation explanation)
        implements Explained {
    private static final int MONTHS = 12;
    private static final int CYCLES = 5000;

    /** Judged on a day that is not before the last calibration. */
    public static WrenchCalibration of(LocalDate calibratedOn, int cyclesSince, LocalDate day) {
        if (day.isBefore(calibratedOn)) {
            throw new Refused(new TorqueSaid.CalibratedAfter(calibratedOn, day));
        }
        if (cyclesSince < 0) {
            throw new Refused(new TorqueSaid.NegativeCycles(cyclesSince));
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
                new Explanation(
                        due ? List.of(TorqueSaid.Caution.DUE_FOR_CALIBRATION) : List.of(),
                        List.of(
                                new Step(
                                        Label.BETWEEN_CALIBRATIONS,
                                        Basis.TABLE,
                                        MONTHS,
                                        "months",
                                        Label.CALIBRATION_SOURCE),
                                new Step(
                                        Label.CYCLES_LEFT,
                                        new TorqueSaid.CyclesLeft(cyclesSince),
                                        left,
                                        "cycles",
                                        Label.CALIBRATION_SOURCE))));
    }
}
