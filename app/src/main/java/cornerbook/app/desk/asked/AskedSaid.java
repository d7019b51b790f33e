package cornerbook.app.desk.asked;

import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Said;
import cornerbook.core.tool.ShopTool;
import java.time.LocalDate;

/** What stands beside what is asked: where wheels that are filled in come from, and the tools that may be chosen. */
sealed interface AskedSaid extends Said {
    record AsRecorded() implements AskedSaid {}

    record AsItCame() implements AskedSaid {}

    record AsPlanned(SetOf set) implements AskedSaid {}

    record WhereItRan(SetOf set) implements AskedSaid {}

    /** Of a set that has never run. */
    record InItsOrder(SetOf set) implements AskedSaid {}

    /**
     * A tool in a list, with the day of its calibration.
     *
     * @param past whether that is past
     */
    record ToolDue(String id, String name, ShopTool.Kind kind, boolean past, LocalDate due) implements AskedSaid {}
}
