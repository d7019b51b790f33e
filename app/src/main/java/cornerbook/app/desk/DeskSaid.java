package cornerbook.app.desk;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What every page may have to say. */
public sealed interface DeskSaid extends Said {
    /** No car has that address. */
    record NoCar() implements DeskSaid {}

    /** No visit has that address. */
    record NoVisit() implements DeskSaid {}

    /** A visit that was opened by mistake. */
    record VisitCancelled(LocalDate on, @Nullable String person, String reason) implements DeskSaid {}

    /** No file of the program has that name. */
    record NoFile() implements DeskSaid {}

    /** A field holds what no line of text can hold. */
    record UnfitField(String field, Said unfit) implements DeskSaid {}

    record FormNotUnderstood() implements DeskSaid {}

    record FormTooLarge() implements DeskSaid {}

    /** An address names a rule of wheel plans that there is not. */
    record NoSuchRule(String word, String expected) implements DeskSaid {}

    /** A value that cannot be a reading. */
    record CannotBe(Said value, Between range) implements DeskSaid {}

    /** A day that lies after today. */
    record InTheFuture(LocalDate day, LocalDate today) implements DeskSaid {}

    /** Something that is no day, with one as it is written. */
    record NoDay(String example) implements DeskSaid {}

    /** Something that is no day in an address. */
    record NoDayInAddress(String example) implements DeskSaid {}

    record OdometerMissing(Amount example) implements DeskSaid {}

    /** How many brake pairs a week had, and what that asks for. */
    record BrakePairs(int pairs, boolean over) implements DeskSaid {}

    /** What a photo shows and who took it. */
    record PhotoOf(@Nullable Said corner, @Nullable Said part, String person) implements DeskSaid {}

    /** The customer's answer to nothing that was found. */
    record NoAdvice() implements DeskSaid {}

    record NameTooLong(int most) implements DeskSaid {}

    /** Labels were asked for on paper that is not known. */
    record NoSuchPaper(String paper) implements DeskSaid {}

    record NoNumber(String text, Amount example) implements DeskSaid {}

    /** What was written is no amount of this coin. */
    record NoMoney(String typed, String currency) implements DeskSaid {}
}
