package cornerbook.app.bay;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.CornerName;
import cornerbook.core.finding.Citation;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What the bay sheet says, and why an entry cannot stand. */
public interface BaySaid extends Said {
    /** The work at the brake of one corner. */
    record BrakeOf(CornerName corner) implements BaySaid {}

    /** The same where there is room for a few letters. */
    record BrakeAt(Corner corner) implements BaySaid {}

    /** What goes on one place, and why. */
    record Lubricate(Said place, Said kind, Said reason) implements BaySaid {}

    /** Work that nobody may begin: an estimate was given, and the customer has not agreed to this, or declined it. */
    record NotAgreed(boolean declined, Said work) implements BaySaid {}

    /** Work for which no estimate was given, at a place that asks for one in writing. */
    record NoEstimate(Said work, Citation source) implements BaySaid {}

    /** What the customer would pay for it. */
    record WithTaxes(Price total) implements BaySaid {}

    /** How far the bill may go by what was agreed until now. */
    record MostByNow(Price agreed, Price most, Citation source) implements BaySaid {}

    /** Who agreed, and by which way. */
    record AgreedBy(String name, Agreement.Way way) implements BaySaid {}

    /** It was done without charge. */
    record DoneFree(Said reason, String person) implements BaySaid {}

    /** What the gauge has to show. */
    record AirToSee(Amount gauge) implements BaySaid {}

    /**
     * Where that comes from.
     *
     * @param outside null while a temperature is not read
     * @param tyre null while a temperature is not read
     * @param tooMuch what the gauge shows too much; null when it does not
     * @param tooLittle what the gauge shows too little; null when it does not
     */
    record AirFrom(
            Amount placard,
            @Nullable Amount outside,
            @Nullable Amount tyre,
            @Nullable Amount tooMuch,
            @Nullable Amount tooLittle)
            implements BaySaid {}

    /** A part of what a tablet sent. */
    record NotUnderstood(String part, Said expected) implements BaySaid {}

    /** A text with a character that cannot stand in one. */
    record NoPhotoHere() implements BaySaid {}

    record UnfitText(String part, Said unfit) implements BaySaid {}

    /** The tablet's clock is not right. */
    record TimeAhead(Instant madeAt, Instant now) implements BaySaid {}

    /** Whose entries wait. */
    record PinNotTyped(String person) implements BaySaid {}

    /** The car leaves with something open. */
    record StillOpen(Said caution) implements BaySaid {}

    /** The car leaves with something unsafe, and nobody of the customer's side was told. */
    record CustomerMustKnow(Said point) implements BaySaid {}

    /** The program's own mistake. */
    record EntryFault(String fault) implements BaySaid {}

    /** Words of one line. */
    record Line(int longest) implements BaySaid {}

    /** A list of such. */
    record Lines(int most) implements BaySaid {}

    /** A word of a list. */
    record OneOf(String words) implements BaySaid {}

    /** What else is expected in what a tablet sends. */
    enum Wanted implements BaySaid {
        IDENTITY,
        MOMENT,
        FLAG,
        OBJECT,
        STEP,
        WHEEL,
        WORK,
        MONEY,
        /** What is done is not left open. */
        NO_REASON
    }

    /** Why nothing of what was sent can be taken. */
    enum Unreadable implements BaySaid {
        TOO_LARGE,
        EMPTY,
        NO_JSON,
        NO_LIST
    }

    /** Why a value that the book had was changed at a tablet. */
    enum ChangeReason implements BaySaid {
        MISREAD,
        TYPED_WRONG,
        MEASURED_AGAIN,
        /** The first value was unlikely. */
        READ_AGAIN,
        /** It was entered at the wrong corner or car. */
        WRONG_PLACE,
        /** Work that is not done after all, as the customer did not agree to it. */
        TAKEN_BACK,
        NOT_SAID
    }
}
