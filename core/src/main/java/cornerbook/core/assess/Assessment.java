package cornerbook.core.assess;

import cornerbook.core.air.judge.PressureOutlook;
import cornerbook.core.battery.judge.BatteryCurve;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Finding;
import cornerbook.core.say.Said;
import cornerbook.core.torque.judge.Retorque;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.wheelplan.WheelPlan;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that was found out at one visit: a part for what each room has found.
 *
 * @param nextVisit the day that everything has to hold to
 * @param findings gravest first
 * @param forecasts the set that goes on first
 * @param plan where each wheel of the set going on belongs; null when no four wheels go on
 * @param retorque null when no wheel went on
 * @param notJudged what could not be judged, and what is missing for it
 * @param doubted readings that the wear model finds incredible; they count all the same
 * @param seizing how likely a pad seizes over the months
 * @param battery health of the 12 V battery over the visits
 * @param pressure of the tyre nearest to its warning; null when none was set at a temperature that was read
 * @param workDone what was done at the visit, as {@link cornerbook.core.finding.Case#workDone} has it
 */
public record Assessment(
        CarHistory history,
        Visit visit,
        LocalDate nextVisit,
        List<Finding> findings,
        List<SetForecast> forecasts,
        @Nullable WheelPlan plan,
        @Nullable Retorque retorque,
        List<Said> notJudged,
        List<TreadPrediction> doubted,
        SeizingCurve seizing,
        BatteryCurve battery,
        @Nullable PressureOutlook pressure,
        List<Said> workDone) {
    public Assessment {
        findings = List.copyOf(findings);
        forecasts = List.copyOf(forecasts);
        notJudged = List.copyOf(notJudged);
        doubted = List.copyOf(doubted);
        workDone = List.copyOf(workDone);
    }
}
