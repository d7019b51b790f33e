package cornerbook.app.book.knowledge;

import cornerbook.core.say.Day;
import cornerbook.core.say.Said;

/** What is refused about other shops' knowledge, and what is wrong with it. */
sealed interface OthersSaid extends Said {
    /** What counts was learned later. */
    record Older(Day learnedOn, Day standing) implements OthersSaid {}

    record StandsAlready() implements OthersSaid {}

    /** There is nothing to be taken back. */
    record NothingStands() implements OthersSaid {}

    /** A key needs a name of so many signs at most. */
    record NoName(int most) implements OthersSaid {}

    record TrustedAlready(String name) implements OthersSaid {}

    record NoSuchKey() implements OthersSaid {}

    /** A kept file is not as it was signed. */
    record Unsound(String id, Said why) implements OthersSaid {}
}
