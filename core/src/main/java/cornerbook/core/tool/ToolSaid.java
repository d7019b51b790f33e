package cornerbook.core.tool;

import cornerbook.core.corner.Corner;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What is said of the tools of the shop. */
public interface ToolSaid extends Said {
    /** Numbers of a tool that have a range. */
    enum ToolNumber implements ToolSaid {
        RAISED_PADS,
        LOWERED_PADS,
        OFFSET,
        TOP_OF_SCALE,
        BOTTOM_OF_SCALE
    }

    /** What stands beside a value as evidence, and how it was come by. */
    enum ToolEvidence implements ToolSaid {
        USED,
        DAY_OF_THE_VISIT,
        AS_THE_SHOP_KEEPS_IT,
        SHOWS_TOO_MUCH,
        READ
    }

    /** Where the rules come from. */
    enum ToolSource implements ToolSaid {
        WRENCH_CALIBRATION,
        GAUGE_CALIBRATION,
        HOIST_INSPECTION,
        WRENCH_SCALE,
        GAUGE_SCALE
    }

    record UnfitMark(Quoted mark) implements ToolSaid {}

    record UnfitName() implements ToolSaid {}

    record HoistWithoutRatings() implements ToolSaid {}

    record RatingsWithoutHoist() implements ToolSaid {}

    record WasDue(ShopTool.Kind kind, String id, String name, LocalDate on) implements ToolSaid {}

    record NotDueBefore(ShopTool.Kind kind, String id, String name, LocalDate on) implements ToolSaid {}

    record PastItsTime(ShopTool.Kind kind) implements ToolSaid {}

    record WithinTheirTime() implements ToolSaid {}

    /** The next calibration, or inspection, as a label. */
    record NextCheck(ShopTool.Kind kind) implements ToolSaid {}

    /** What is done about an offset. */
    record AgainstAMaster(ShopTool.Kind kind) implements ToolSaid {}

    record OffTheScale(Corner corner, Amount value, ShopTool.Kind kind, String id, Between scale) implements ToolSaid {}

    record ToBeDoneAgain(Corner corner) implements ToolSaid {}

    record ScaleOf(String id) implements ToolSaid {}
}
