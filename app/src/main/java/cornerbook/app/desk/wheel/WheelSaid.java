package cornerbook.app.desk.wheel;

import cornerbook.core.say.Said;

/** What is refused about wheels and their labels. */
sealed interface WheelSaid extends Said {
    record NoWheelToTag() implements WheelSaid {}

    record NoSuchDay(String day, String example) implements WheelSaid {}

    record NoSuchWheel(String tag) implements WheelSaid {}
}
