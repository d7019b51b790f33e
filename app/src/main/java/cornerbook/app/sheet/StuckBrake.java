package cornerbook.app.sheet;

import cornerbook.core.assess.NamedCorner;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Todo;
import cornerbook.core.finding.Verdict;
import java.util.EnumSet;
import java.util.Set;

/** A brake that has to be freed or repaired first: nobody beds it in, and nothing that moves in it is told to be good. */
final class StuckBrake {
    private static final Set<Subject.Part> MOVING = EnumSet.of(
            Subject.Part.PAD,
            Subject.Part.CALIPER,
            Subject.Part.DRUM_GEAR,
            Subject.Part.BRAKE_RELEASE,
            Subject.Part.BRAKE_PAIR);

    private static final Set<Todo.Action> FREED = EnumSet.of(Todo.Action.SERVICE_BRAKE, Todo.Action.REPAIR);

    private static final Set<Todo.When> FIRST =
            EnumSet.of(Todo.When.NOW, Todo.When.BEFORE_LEAVING, Todo.When.BEFORE_DRIVING);

    private StuckBrake() {}

    static boolean isTold(Finding finding) {
        var todo = finding.todo();
        return todo != null
                && finding.verdict() != Verdict.HOLDS
                && MOVING.contains(finding.subject().part())
                && FREED.contains(todo.action())
                && todo.by() instanceof Todo.When when
                && FIRST.contains(when);
    }

    static boolean isTold(Finding finding, Corner corner) {
        return isTold(finding)
                && (finding.subject().corner() == corner || NamedCorner.isNamed(corner, finding.plainWords()));
    }
}
