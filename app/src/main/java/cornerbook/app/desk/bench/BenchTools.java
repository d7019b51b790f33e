package cornerbook.app.desk.bench;

import cornerbook.app.bench.Question;
import cornerbook.app.desk.Pages;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.UnitSystem;
import io.helidon.webserver.http.ServerRequest;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The tools of the shop that a calculator can be answered with.
 *
 * @param tools of the kind that the calculator asks about; empty when it asks about none
 * @param chosen the one in hand; null when nobody said
 * @param changed whether it is another one than the page was filled in with
 */
public record BenchTools(List<ShopTool> tools, @Nullable ShopTool chosen, boolean changed, LocalDate today) {
    public BenchTools {
        tools = List.copyOf(tools);
    }

    /** As the address says; the only one when it says nothing. */
    static BenchTools of(Question question, List<ShopTool> all, ServerRequest request, LocalDate today) {
        var kind = switch (question.name()) {
            case "torque" -> ShopTool.Kind.TORQUE_WRENCH;
            case "pressure" -> ShopTool.Kind.PRESSURE_GAUGE;
            default -> null;
        };
        var tools = all.stream().filter(tool -> tool.kind() == kind).toList();
        var id = Pages.queryValue(request, "tool");
        var chosen = request.query().contains("tool")
                ? tools.stream()
                        .filter(tool -> tool.id().equals(id))
                        .findFirst()
                        .orElse(null)
                : tools.size() == 1 ? tools.getFirst() : null;
        return new BenchTools(
                tools,
                chosen,
                request.query().contains("tool") && !id.equals(Pages.queryValue(request, "tool.was")),
                today);
    }

    /** Whether they are torque wrenches, not gauges. */
    public boolean wrenches() {
        return !tools.isEmpty() && tools.getFirst().kind() == ShopTool.Kind.TORQUE_WRENCH;
    }

    /** The same with none in hand. */
    BenchTools withoutChoice() {
        return new BenchTools(tools, null, false, today);
    }

    /** Mark of the tool in hand, empty without one. */
    public String chosenId() {
        return chosen == null ? "" : chosen.id();
    }

    /** Whether the tool in hand is due for calibration. */
    public boolean due() {
        return chosen != null && chosen.due(today);
    }

    /** What the tool in hand answers, by name of the question. */
    Map<String, List<String>> values(UnitSystem system) {
        if (chosen == null) {
            return Map.of();
        }
        var unit = chosen.kind().unit();
        var offset = List.of(system.field(chosen.offset(), unit));
        return chosen.kind() == ShopTool.Kind.TORQUE_WRENCH
                ? Map.of(
                        "wrench-from", List.of(system.field(chosen.lowest(), unit)),
                        "wrench-to", List.of(system.field(chosen.highest(), unit)),
                        "wrench-offset", offset)
                : Map.of("gauge-offset", offset);
    }

    /** The questions that a tool answers, for one laid down to leave nothing behind. */
    List<String> names() {
        return tools.isEmpty()
                ? List.of()
                : wrenches() ? List.of("wrench-from", "wrench-to", "wrench-offset") : List.of("gauge-offset");
    }

    /** Whether a tool of the list is due for calibration. */
    public boolean due(ShopTool tool) {
        return tool.due(today);
    }

    public boolean isChosen(ShopTool tool) {
        return Objects.equals(tool, chosen);
    }
}
