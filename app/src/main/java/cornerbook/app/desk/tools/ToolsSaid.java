package cornerbook.app.desk.tools;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Said;
import org.jspecify.annotations.Nullable;

/** What is told and refused about a tool. */
sealed interface ToolsSaid extends Said {
    record MissingValue(ToolField field) implements ToolsSaid {}

    record NotSoManyArms(String typed) implements ToolsSaid {}

    /** What a hoist may carry; null for what was not read. */
    record Carries(
            Amount rating,
            @Nullable Amount front,
            @Nullable Amount rear,
            @Nullable Amount adapter,
            @Nullable Amount ceiling)
            implements ToolsSaid {}

    record NoCalibrationDay(String example) implements ToolsSaid {}
}
