package cornerbook.app.desk.tools;

import cornerbook.core.say.Said;

/** What is refused about a tool. */
sealed interface ToolsSaid extends Said {
    record MissingValue(ToolField field) implements ToolsSaid {}

    record NotSoManyArms(String typed) implements ToolsSaid {}

    record NoCalibrationDay(String example) implements ToolsSaid {}
}
