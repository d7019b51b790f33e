package cornerbook.app.desk.visit;

import cornerbook.app.desk.Words;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.UnitSystem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
        return Optional.of("No calibrated wrench of the shop sets %s: %s."
                .formatted(
                        system.show(torqueNm, "N·m"),
                        wrenches.stream()
                                .map(wrench -> wrench.due(day)
                                        ? "%s was due for calibration on %s"
                                                .formatted(wrench.id(), Words.day(wrench.calibrationDue()))
                                        : "%s goes from %s to %s"
                                                .formatted(
                                                        wrench.id(),
                                                        system.show(wrench.lowest(), "N·m"),
                                                        system.show(wrench.highest(), "N·m")))
                                .collect(Collectors.joining("; "))));
    }
}
