package cornerbook.app.desk.asked;

import cornerbook.app.book.Book;
import cornerbook.core.car.Visit;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The tools of one kind that a visit may be worked with.
 *
 * @param options the one that was used last first
 * @param chosen mark of the tool that the visit names, empty when it names none
 */
public record ToolChoice(ShopTool.Kind kind, List<Option> options, String chosen) {
    public ToolChoice {
        options = List.copyOf(options);
    }

    /**
     * One tool.
     *
     * @param label with the day of its calibration, and whether that is past on the day of the visit
     * @param past whether it is
     */
    public record Option(String id, Said label, boolean past) {}

    /** For each kind of which the shop keeps a tool, or the visit names one. */
    public static List<ToolChoice> of(Book book, Visit visit) {
        return Arrays.stream(ShopTool.Kind.values())
                .map(kind -> of(book.usedTools().offer(kind), visit, kind))
                .filter(choice -> !choice.options().isEmpty())
                .toList();
    }

    private static ToolChoice of(List<ShopTool> offered, Visit visit, ShopTool.Kind kind) {
        var chosen = visit.card().findTool(kind);
        var tools = new ArrayList<>(offered);
        // As it was on the day: the shop may have changed it since, or have it no longer.
        chosen.ifPresent(used -> {
            tools.removeIf(tool -> tool.id().equals(used.id()));
            tools.addFirst(used);
        });
        return new ToolChoice(
                kind,
                tools.stream().map(tool -> option(tool, visit)).toList(),
                chosen.map(ShopTool::id).orElse(""));
    }

    private static Option option(ShopTool tool, Visit visit) {
        boolean past = tool.due(visit.date());
        return new Option(
                tool.id(),
                new AskedSaid.ToolDue(tool.id(), tool.name(), tool.kind(), past, tool.calibrationDue()),
                past);
    }

    /** Name of its field in a form. */
    public String field() {
        return "tool." + kind.name();
    }
}
