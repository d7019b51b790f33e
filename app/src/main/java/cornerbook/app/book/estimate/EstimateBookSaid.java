package cornerbook.app.book.estimate;

import cornerbook.core.finding.Citation;
import cornerbook.core.say.Said;

/** What people are told when the book refuses an estimate or an agreement. */
sealed interface EstimateBookSaid extends Said {
    record NoLines() implements EstimateBookSaid {}

    record TooManyLines(int most) implements EstimateBookSaid {}

    record WordsTooLong(int most) implements EstimateBookSaid {}

    /** Another desk gave one while this was written. */
    record GivenMeanwhile(int turn) implements EstimateBookSaid {}

    record NoSuchEstimate() implements EstimateBookSaid {}

    /** Another one has been made since: its prices count. */
    record NotTheLast() implements EstimateBookSaid {}

    /** Its day is over. */
    record NoLongerValid() implements EstimateBookSaid {}

    record NoPriceYet() implements EstimateBookSaid {}

    /** Two that stand for each other. */
    record OnlyOneOfThem() implements EstimateBookSaid {}

    record NothingAnswered() implements EstimateBookSaid {}

    record NameMissing() implements EstimateBookSaid {}

    /** The law of the place asks for the number that was called. */
    record NumberMissing(Citation source) implements EstimateBookSaid {}

    /** Why nothing is charged. */
    record FreeReasonMissing() implements EstimateBookSaid {}

    record LineNotAgreed() implements EstimateBookSaid {}

    record SignatureMissing() implements EstimateBookSaid {}

    record SignatureNotUnderstood() implements EstimateBookSaid {}
}
