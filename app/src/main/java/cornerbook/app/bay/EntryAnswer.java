package cornerbook.app.bay;

import cornerbook.app.book.store.Arrival;
import cornerbook.app.desk.Typed;
import cornerbook.app.request.Told;
import cornerbook.core.say.Said;

/**
 * What became of one entry.
 *
 * @param status stored, already, conflict or refused
 * @param sentence why it was refused, in the language of who sent it; else empty
 * @param pointer JSON pointer (RFC 6901) into the request to what was refused, else empty
 */
record EntryAnswer(String id, String status, String sentence, String pointer) {
    static EntryAnswer of(String id, Arrival arrival) {
        var status = switch (arrival) {
            case STORED -> "stored";
            case ALREADY -> "already";
            case CONFLICT -> "conflict";
        };
        return new EntryAnswer(id, status, "", "");
    }

    static EntryAnswer refused(String id, Said said, String pointer) {
        return new EntryAnswer(id, "refused", sentence(said), pointer);
    }

    /** In words for who asks. */
    static String sentence(Said said) {
        return Typed.sentence(Told.say(said));
    }
}
