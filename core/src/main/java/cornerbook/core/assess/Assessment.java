package cornerbook.core.assess;

import cornerbook.core.air.judge.PressureOutlook;
import cornerbook.core.battery.judge.BatteryCurve;
import cornerbook.core.brake.seizing.judge.SeizingCurve;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import cornerbook.core.changeover.ChangeOverBetween;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.say.Said;
import cornerbook.core.torque.judge.Retorque;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.wheelplan.WheelPlan;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * All that was found out at one visit: a part for what each room has found.
 *
 * @param nextVisit the day that everything has to hold to
 * @param findings gravest first
 * @param open what keeps the car from leaving, as far as the visit itself says
 * @param forecasts the set that goes on first
 * @param plan where each wheel of the set going on belongs; null when no four wheels go on
 * @param retorque null when no wheel went on
 * @param notJudged what could not be judged, and what is missing for it
 * @param doubted readings that the wear model finds incredible; they count all the same
 * @param seizing how likely a pad seizes over the months
 * @param battery health of the 12 V battery over the visits
 * @param pressure of the tyre nearest to its warning; null when none was set at a temperature that was read
 * @param changeOver when the wheels that go on are changed over with the least risk; null where the climate of the place is not known
 * @param workDone what was done at the visit, as {@link cornerbook.core.finding.Case#workDone} has it
 */
public record Assessment(
        CarHistory history,
        Visit visit,
        LocalDate nextVisit,
        List<Finding> findings,
        List<OpenPoint> open,
        List<SetForecast> forecasts,
        @Nullable WheelPlan plan,
        @Nullable Retorque retorque,
        List<Said> notJudged,
        List<TreadPrediction> doubted,
        SeizingCurve seizing,
        BatteryCurve battery,
        @Nullable PressureOutlook pressure,
        @Nullable ChangeOverBetween changeOver,
        List<Said> workDone) {
    private static final Set<Todo.When> NOW = Set.of(Todo.When.NOW, Todo.When.BEFORE_LEAVING, Todo.When.BEFORE_DRIVING);

    public Assessment {
        findings = List.copyOf(findings);
        open = List.copyOf(open);
        forecasts = List.copyOf(forecasts);
        notJudged = List.copyOf(notJudged);
        doubted = List.copyOf(doubted);
        workDone = List.copyOf(workDone);
    }

    /** The same with what keeps the car from leaving by more than the visit itself says. */
    public Assessment withOpen(List<OpenPoint> points) {
        return new Assessment(
                history,
                visit,
                nextVisit,
                findings,
                points,
                forecasts,
                plan,
                retorque,
                notJudged,
                doubted,
                seizing,
                battery,
                pressure,
                changeOver,
                workDone);
    }

    /** What is said of the car: not of the shop's own tools and hoist. */
    public List<Finding> ofCar() {
        return findings.stream()
                .filter(finding -> !finding.subject().part().isOfShop())
                .toList();
    }

    /** What the car's findings ask for, gravest first. */
    public List<Advice> advice() {
        return Advice.of(history, visit, findings);
    }

    /** The gravest of what is said of the car as it drives away, not of a set that lies in the store; empty when nothing is. */
    public Optional<Finding> gravest() {
        return ofCar().stream()
                .filter(finding -> !isStored(finding.subject()))
                .max(Comparator.comparing(Finding::verdict));
    }

    /** Whether anything on the car as it drives away is to be done now, whatever its verdict. */
    public boolean asksNow() {
        return ofCar().stream()
                .filter(finding -> !isStored(finding.subject()))
                .map(Finding::todo)
                .anyMatch(todo -> todo != null && todo.by() instanceof Todo.When when && NOW.contains(when));
    }

    private boolean isStored(Subject subject) {
        var wheels = wheels(subject);
        return !wheels.isEmpty()
                && !visit.leftOn().isEmpty()
                && wheels.stream().noneMatch(visit.leftOn()::containsValue);
    }

    private Collection<String> wheels(Subject subject) {
        var tag = subject.wheelTag();
        if (tag != null) {
            return List.of(tag);
        }
        return history.sets().stream()
                .filter(set -> set.id().equals(subject.setId()))
                .flatMap(set -> set.wheels().stream())
                .map(wheel -> wheel.tag())
                .toList();
    }
}
