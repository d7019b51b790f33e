package cornerbook.app.desk.visit;

import cornerbook.app.request.Told;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Whether a torque can have been measured by one of the shop's wrenches. A shop that keeps no wrench is not asked. */
final class WrenchCheck {
    private WrenchCheck() {}

    /** Why no wrench of the shop can have set it on that day, in one sentence; empty when one can, or none is kept. */
    static Optional<String> refuse(List<ShopTool> tools, double torqueNm, LocalDate day, UnitSystem system) {
        var wrenches = tools.stream()
                .filter(tool -> tool.kind() == ShopTool.Kind.TORQUE_WRENCH)
                .toList();
        if (wrenches.isEmpty()
                || wrenches.stream()
                        .anyMatch(wrench ->
                                !wrench.due(day) && wrench.lowest() <= torqueNm && torqueNm <= wrench.highest())) {
            return Optional.empty();
        }
        var found = wrenches.stream()
                .map(wrench -> wrench.due(day)
                        ? new VisitSaid.WrenchDue(wrench.id(), wrench.calibrationDue())
                        : new VisitSaid.WrenchGoes(
                                wrench.id(), Amount.of(wrench.lowest(), "N·m"), Amount.of(wrench.highest(), "N·m")))
                .<Said>map(said -> said)
                .toList();
        return Optional.of(Told.reader().in(system).say(new VisitSaid.NoWrenchSets(Amount.of(torqueNm, "N·m"), found)));
    }
}
