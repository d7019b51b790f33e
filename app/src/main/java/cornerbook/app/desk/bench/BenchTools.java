package cornerbook.app.desk.bench;

import cornerbook.app.bench.Question;
import cornerbook.app.desk.Pages;
import cornerbook.core.say.Amount;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.UnitSystem;
import io.helidon.webserver.http.ServerRequest;
import java.time.LocalDate;
import java.util.LinkedHashMap;
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
            case "lift" -> ShopTool.Kind.HOIST;
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

    /** What they are, where there are any. */
    public ShopTool.Kind kind() {
        return tools.getFirst().kind();
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
        var values = new LinkedHashMap<String, List<String>>();
        if (chosen != null) {
            answers(chosen).forEach((name, answer) -> {
                if (answer != null) {
                    values.put(name, List.of(system.field(answer.value(), answer.unit())));
                }
            });
        }
        return values;
    }

    /** The questions that a tool answers, for one laid down to leave nothing behind. */
    List<String> names() {
        return tools.isEmpty()
                ? List.of()
                : List.copyOf(answers(tools.getFirst()).keySet());
    }

    /** By name of the question; null what is not known of this one. */
    private static Map<String, @Nullable Amount> answers(ShopTool tool) {
        var unit = tool.kind().unit();
        var answers = new LinkedHashMap<String, @Nullable Amount>();
        switch (tool.kind()) {
            case TORQUE_WRENCH -> {
                answers.put("wrench-from", Amount.exact(tool.lowest(), unit));
                answers.put("wrench-to", Amount.exact(tool.highest(), unit));
                answers.put("wrench-offset", Amount.exact(tool.offset(), unit));
            }
            case PRESSURE_GAUGE -> answers.put("gauge-offset", Amount.exact(tool.offset(), unit));
            case HOIST -> {
                answers.put("arm-height", Amount.exact(tool.lowest(), unit));
                answers.put("raised", Amount.exact(tool.highest(), unit));
                tool.findHoist().ifPresent(hoist -> {
                    answers.put("adapter-height", Amount.exact(hoist.lowestAdapterMm(), unit));
                    answers.put("drive-over", known(hoist.driveOverMm(), unit));
                    answers.put("ceiling", known(hoist.ceilingMm(), unit));
                    answers.put("hoist-rating", Amount.exact(hoist.rating().hoistKg(), "kg"));
                    answers.put("arm-rating", known(hoist.rating().weakestArmKg(), "kg"));
                });
            }
        }
        return answers;
    }

    private static @Nullable Amount known(@Nullable Double value, String unit) {
        return value == null ? null : Amount.exact(value, unit);
    }

    /** Whether a tool of the list is due for calibration. */
    public boolean due(ShopTool tool) {
        return tool.due(today);
    }

    public boolean isChosen(ShopTool tool) {
        return Objects.equals(tool, chosen);
    }
}
