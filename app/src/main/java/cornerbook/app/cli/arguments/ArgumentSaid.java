package cornerbook.app.cli.arguments;

import cornerbook.core.say.Listed;
import cornerbook.core.say.Said;

/** Why arguments are not understood. */
interface ArgumentSaid extends Said {
    /** Sentences without facts. */
    enum Plainly implements ArgumentSaid {
        NO_VERB
    }

    record Missing(Listed arguments) implements ArgumentSaid {}

    record Unknown(Listed arguments) implements ArgumentSaid {}

    record GivenTwice(String option) implements ArgumentSaid {}

    record CannotBe(String option, String value) implements ArgumentSaid {}

    record WrongUse(String told) implements ArgumentSaid {}
}
