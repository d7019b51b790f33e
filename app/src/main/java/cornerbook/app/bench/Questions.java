package cornerbook.app.bench;

import java.util.List;
import java.util.Optional;

/** All calculators, in the order of the work. */
public final class Questions {
    /** In the order of the work. */
    public static final List<Question> ALL = List.of(
            LiftQuestion.QUESTION,
            PressureQuestion.QUESTION,
            TorqueQuestion.QUESTION,
            TyreQuestion.QUESTION,
            CostQuestion.QUESTION,
            RenewQuestion.QUESTION,
            BatteryQuestion.QUESTION,
            BurnishQuestion.QUESTION,
            DragQuestion.QUESTION,
            GuidesQuestion.QUESTION,
            ChangeOverQuestion.QUESTION);

    private Questions() {}

    /** The calculator of this name. */
    public static Optional<Question> find(String name) {
        return ALL.stream().filter(question -> question.name().equals(name)).findFirst();
    }
}
