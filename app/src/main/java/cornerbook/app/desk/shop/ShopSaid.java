package cornerbook.app.desk.shop;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What is refused about the rules and the climate of the shop. */
sealed interface ShopSaid extends Said {
    record SecondCheckNotUnderstood() implements ShopSaid {}

    record StepNotUnderstood() implements ShopSaid {}

    record NoSuchCar(String car) implements ShopSaid {}

    record NoSuchKind(String kind) implements ShopSaid {}

    /** A temperature was left out. */
    record Missing(Said what) implements ShopSaid {}

    /** What is wrong with one of the temperatures. */
    record Of(Said what, Said why) implements ShopSaid {}

    /** What is wrong with the hours of a weekday. */
    record HoursOf(String weekday, Said why) implements ShopSaid {}

    record NobodyOfThatName(String person) implements ShopSaid {}

    /** Days away that are over. */
    record AwayIsOver(LocalDate last) implements ShopSaid {}

    /** Without encryption, and to another machine. */
    record MailInTheOpen() implements ShopSaid {}

    record ReasonTooLong(int most) implements ShopSaid {}

    record ColdestMorning() implements ShopSaid {}

    record MeanDaily(boolean maximum, String month) implements ShopSaid {}
}
