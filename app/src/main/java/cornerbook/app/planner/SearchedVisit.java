package cornerbook.app.planner;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import cornerbook.core.days.plan.PlanProblem;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A visit that the solver gives a stretch. Those that are hard to lay, long ones with few places, are laid first. */
@PlanningEntity(comparatorClass = SearchedVisit.Easier.class)
public final class SearchedVisit {
    private final int place;
    private final int minutes;
    private final List<Integer> allowed;
    private @Nullable Integer stretch;

    SearchedVisit(int place, PlanProblem problem) {
        this(place, problem.visits().get(place).minutes(), problem.allowed(place), null);
    }

    private SearchedVisit(int place, int minutes, List<Integer> allowed, @Nullable Integer stretch) {
        this.place = place;
        this.minutes = minutes;
        this.allowed = allowed;
        this.stretch = stretch;
    }

    SearchedVisit copy() {
        return new SearchedVisit(place, minutes, allowed, stretch);
    }

    int place() {
        return place;
    }

    int minutes() {
        return minutes;
    }

    @ValueRangeProvider
    public List<Integer> getAllowed() {
        return allowed;
    }

    @PlanningVariable(allowsUnassigned = true)
    public @Nullable Integer getStretch() {
        return stretch;
    }

    public void setStretch(@Nullable Integer stretch) {
        this.stretch = stretch;
    }

    /** In the order of how hard they are to lay. */
    public static final class Easier implements Comparator<SearchedVisit> {
        @Override
        public int compare(SearchedVisit one, SearchedVisit other) {
            return Comparator.comparingInt((SearchedVisit visit) -> -visit.allowed.size())
                    .thenComparingInt(SearchedVisit::minutes)
                    .thenComparingInt(SearchedVisit::place)
                    .compare(one, other);
        }
    }
}
