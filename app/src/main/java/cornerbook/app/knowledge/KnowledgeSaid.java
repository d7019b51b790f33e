package cornerbook.app.knowledge;

import cornerbook.core.say.Day;
import cornerbook.core.say.Said;

/** What is refused about knowledge files and the keys that sign them. */
public sealed interface KnowledgeSaid extends Said {
    /** Something else than a knowledge file. */
    record NoKnowledge() implements KnowledgeSaid {}

    /** Of another version of the form. */
    record OtherForm(String found, int known) implements KnowledgeSaid {}

    record NotSigned() implements KnowledgeSaid {}

    /** Signed, but not by a key that is trusted. */
    record NotTrusted(String fingerprint) implements KnowledgeSaid {}

    /** Not what was signed. */
    record Altered() implements KnowledgeSaid {}

    record TooLong(int mostMegabytes) implements KnowledgeSaid {}

    /** A value that cannot be. */
    record Impossible(String place, String found) implements KnowledgeSaid {}

    /** A part that is not there, or there twice, or that nobody knows. */
    record Misshapen(String place) implements KnowledgeSaid {}

    /** Learned on a day that has not come. */
    record NotYet(Day learnedOn) implements KnowledgeSaid {}

    /** Too few cars to hide each of them among the others. */
    record TooFewCars(int least) implements KnowledgeSaid {}

    /** No public key. */
    record NoPublicKey() implements KnowledgeSaid {}

    /** No pair of keys. */
    record NoKeyPair(String file) implements KnowledgeSaid {}

    /** A file of a private key that others may read. */
    record ReadByOthers(String file) implements KnowledgeSaid {}

    record KeyIsThere(String file) implements KnowledgeSaid {}

    record KeyNotWritten(String file) implements KnowledgeSaid {}
}
