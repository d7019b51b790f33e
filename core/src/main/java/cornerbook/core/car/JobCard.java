package cornerbook.core.car;

import cornerbook.core.say.Refused;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the shop writes down at a visit beside what it reads.
 *
 * @param technician who worked on the car
 * @param workDone what was done, one line each
 * @param nextVisitDue agreed date of the next visit; null when the season's rule gives it
 * @param tools what it was worked with, as the tool was on that day; one of a kind, in the order of the kinds
 */
public record JobCard(
        @Nullable String technician,
        List<String> workDone,
        @Nullable String notes,
        @Nullable LocalDate nextVisitDue,
        List<ShopTool> tools) {
    /** Nothing is written down. */
    public static final JobCard BLANK = new JobCard(null, List.of(), null, null, List.of());

    public JobCard {
        workDone = List.copyOf(workDone);
        tools = tools.stream().sorted(Comparator.comparing(ShopTool::kind)).toList();
        if (tools.stream().map(ShopTool::kind).distinct().count() < tools.size()) {
            throw new Refused(new CarSaid.TwoToolsOfAKind());
        }
    }

    /** The tool of a kind that was worked with. */
    public Optional<ShopTool> findTool(ShopTool.Kind kind) {
        return tools.stream().filter(tool -> tool.kind() == kind).findFirst();
    }
}
